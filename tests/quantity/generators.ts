/** Arbitrary quantities and amounts for property tests, made of what a person could have stated. */
import fc from 'fast-check';
import type {Amount, Dimension, Quantity, Unit} from '../../src/quantity/model.js';
import {allUnits} from '../../src/quantity/units.js';

export const anyUnit: fc.Arbitrary<Unit> = fc.constantFrom(...allUnits());

/** A decimal of up to four places and eight figures, as it would be written. */
export function decimalOf(unit: Unit): fc.Arbitrary<Quantity> {
  return fc
    .record({digits: fc.integer({min: 0, max: 99_999_999}), places: fc.integer({min: 0, max: 4})})
    .map(({digits, places}) => ({
      value: Number(`${digits}e-${places}`),
      unit,
      step: places === 0 ? 1 : Number(`1e-${places}`),
    }));
}

/** A fraction as on a rule: whole inches and up to 127/128. */
export function fractionOf(unit: Unit): fc.Arbitrary<Quantity> {
  return fc
    .record({
      whole: fc.integer({min: 0, max: 40}),
      over: fc.integer({min: 1, max: 127}),
      power: fc.integer({min: 1, max: 7}),
    })
    .map(({whole, over, power}) => {
      const under = 2 ** power;
      const value = whole + (over % under) / under;
      return {value, unit, step: Number.isInteger(value) ? 1 : 0};
    });
}

export function quantityOf(unit: Unit): fc.Arbitrary<Quantity> {
  return fc.oneof({weight: 4, arbitrary: decimalOf(unit)}, {weight: 1, arbitrary: fractionOf(unit)});
}

export const anyQuantity: fc.Arbitrary<Quantity> = anyUnit.chain(quantityOf);

export function unitsOf(dimension: Dimension): readonly Unit[] {
  return allUnits().filter((unit) => unit.dimension === dimension);
}

/** Two quantities of one dimension, in any of its units. */
export const samePair: fc.Arbitrary<readonly [Quantity, Quantity]> = anyUnit.chain((unit) => {
  const other = fc.constantFrom(...unitsOf(unit.dimension)).chain(quantityOf);
  return fc.tuple(quantityOf(unit), other);
});

export const anyAmount: fc.Arbitrary<Amount> = anyUnit.chain((unit) => {
  const one = quantityOf(unit);
  const two = fc
    .tuple(one, one)
    .map(([a, b]) => (a.value <= b.value ? ([a, b] as const) : ([b, a] as const)));
  return fc.oneof(
    one.map((value): Amount => ({form: 'single', value})),
    one.map((high): Amount => ({form: 'most', high})),
    one.map((low): Amount => ({form: 'least', low})),
    two.map(([low, high]): Amount => ({form: 'range', low, high})),
    fc
      .tuple(decimalOf(unit), decimalOf(unit), decimalOf(unit))
      .map(([nominal, minus, plus]): Amount => ({form: 'tolerance', nominal, minus, plus})),
  );
});
