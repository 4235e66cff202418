/** Makes quantities of what was worked out, with no more figures than a shop can use. */
import type {Quantity, Unit} from '../quantity/model.js';
import {unit} from '../quantity/units.js';

/**
 * The quantity whose value in SI is `value`, in `to`, printed to `step`. Of a temperature, a point and not a
 * difference.
 */
export function fromSi(value: number, to: Unit, step: number): Quantity {
  // Twelve figures drop the noise of conversion, so that 2.5 in less 2.498 in is 0.002 in.
  return {value: clean((value - to.offset) / to.factor), unit: to, step};
}

/** A length of `metres` in the unit of the first reading, as fine as the finest of them. */
export function lengthLike(
  metres: number,
  readings: readonly [Quantity, ...(Quantity | undefined)[]],
): Quantity {
  const to = readings[0].unit;
  return fromSi(metres, to, finest(readings, to));
}

/** Where no reading is stated finer: a tenth of a thousandth of an inch, a thousandth of a millimetre. */
const SHOP_STEP = {inch: 2.54e-6, metric: 1e-6, both: 1e-6} as const;

/**
 * The finest step of the readings in a unit. `2.5` is how a shop writes 2.5000 on paper, so a step coarser than a
 * micrometer's is not taken for the doubt of a reading.
 */
function finest(readings: readonly (Quantity | undefined)[], to: Unit): number {
  const steps = readings.flatMap((reading) =>
    reading && reading.step > 0 ? [reading.step * reading.unit.factor] : [],
  );
  return tidy(Math.min(SHOP_STEP[to.system], ...steps) / to.factor);
}

/** `3.2` as a whole number of figures: three of 0.0123456 print as 0.0123. */
export function figures(value: number, symbol: Parameters<typeof unit>[0], count: number): Quantity {
  const shown = Number(value.toPrecision(count));
  const place = shown === 0 ? 0 : Math.floor(Math.log10(Math.abs(shown))) - count + 1;
  return {
    value: clean(value),
    unit: unit(symbol),
    step: Number(`1e${Math.min(place, 0)}`),
  };
}

/** A step that conversion has made 0.000099999 is 0.0001. */
function tidy(step: number): number {
  return Number(step.toPrecision(6));
}

/** Without noise, and nought without a sign. */
function clean(value: number): number {
  return Number(value.toPrecision(12));
}
