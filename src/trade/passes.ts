/** The torques of the passes that bring a joint up to its final one. */
import {decimalStep} from '../quantity/convert.js';
import type {Quantity} from '../quantity/model.js';
import {notOf, refused, type Worked} from './worked.js';

/** Shares of the final torque by number of passes. */
const SHARES: Readonly<Record<number, readonly number[]>> = {
  1: [1],
  2: [0.5, 1],
  3: [0.3, 0.6, 1],
  4: [0.25, 0.5, 0.75, 1],
};

/**
 * Passes to a final torque, one to four, rounded to marks that a wrench has; three go 30, 60, 100 %. Source: common practice for
 * gasketed joints (30/60/100 % at henniggasket.com and hswhite.com; ASME PCC-1 20–30, 50–70, 100 %, from memory).
 */
export function passesTo(final: Quantity, count = 3): Worked<readonly Quantity[]> {
  const refusal = notOf('torque', {'the final torque': final});
  if (refusal) return refusal;
  const shares = SHARES[count];
  if (shares === undefined) return refused(`${count} passes are not tabled`, 'take one to four');
  const mark = markOf(final.value);
  const passes = shares.map((share) => (share === 1 ? final : onMark(share * final.value, mark, final)));
  return {
    ok: true,
    result: passes,
    formula: `${shares.map((share) => Math.round(share * 100)).join(', ')} % of the final torque`,
    inputs: [
      {name: 'final torque', value: final},
      {name: 'passes', value: String(count)},
    ],
    source: 'common practice (30/60/100 % at henniggasket.com, hswhite.com; ASME PCC-1 from memory)',
    advisory: "Snug all first; go round once more at the final torque. The maker's passes outrank these.",
  };
}

/** The largest of 1, 2, 5, 10 … that is no more than a fifteenth: 5 for 85, 1 for 20. */
function markOf(value: number): number {
  const target = value / 15;
  const power = 10 ** Math.floor(Math.log10(target));
  const times = [5, 2, 1].find((one) => one * power <= target * (1 + 1e-9)) ?? 1;
  return times * power;
}

function onMark(value: number, mark: number, like: Quantity): Quantity {
  const rounded = Number((Math.round(value / mark) * mark).toPrecision(12));
  return {value: rounded, unit: like.unit, step: decimalStep(rounded)};
}
