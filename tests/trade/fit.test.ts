/** Fits of holes and shafts against published examples, and the algebra that any fit keeps. */
import fc from 'fast-check';
import {describe, expect, test} from 'vitest';
import {quantity} from '../../src/quantity/convert.js';
import {formatAmount, formatQuantity} from '../../src/quantity/format.js';
import type {Amount} from '../../src/quantity/model.js';
import {fitNamed, fitOfClasses, fitOfLimits} from '../../src/trade/fit.js';
import {amount, q} from '../help/amount.js';
import {out, refusal, result, valueIn} from './unwrap.js';

describe('by letters', () => {
  // References, 6.3: worked out there from the tables of 6.1 and 6.2.
  test.each([
    [60, 'H7/g6', 'clearance', 10, 59],
    [60, 'H7/h6', 'clearance', 0, 49],
    [60, 'H7/p6', 'interference', -51, -2],
    [60, 'H7/s6', 'interference', -72, -23],
    [22, 'H7/g6', 'clearance', 7, 41],
    [22, 'H7/p6', 'interference', -35, -1],
    [22, 'H7/s6', 'interference', -48, -14],
    // Shigley, 9th ed., Example 7-7, p. 398, read: hole 34.000–34.160, shaft 33.720–33.880.
    [34, 'H11/c11', 'clearance', 120, 440],
    // Engineering fit, Wikipedia, read: H8/f7 on 50 mm, 0.025 to 0.089 mm.
    [50, 'H8/f7', 'clearance', 25, 89],
    // A transition fit: H7/k6 and H7/n6 (ANSI B4.2-1978 as in Shigley, Table 7-9, read; values from the tables).
    [60, 'H7/k6', 'transition', -21, 28],
    [22, 'H7/n6', 'transition', -28, 6],
  ])('%d %s is a %s fit, %d to %d µm', (size, letters, kind, least, most) => {
    const fit = result(fitOfClasses(quantity(size, 'mm'), letters));
    expect([fit.kind, valueIn(fit.least, 'µm'), valueIn(fit.most, 'µm')]).toEqual([kind, least, most]);
  });

  /** Shigley, 9th ed., Table 7-9 (ANSI B4.2-1978), p. 397, read: what kind of fit each preferred pair is. */
  test.each([
    ['H11/c11', 'clearance'],
    ['H9/d9', 'clearance'],
    ['H8/f7', 'clearance'],
    ['H7/g6', 'clearance'],
    ['H7/h6', 'clearance'],
    ['H7/k6', 'transition'],
    ['H7/n6', 'transition'],
    ['H7/p6', 'interference'],
    ['H7/s6', 'interference'],
    ['H7/u6', 'interference'],
  ])('%s is a %s fit at every size over 3 mm', (letters, kind) => {
    // To 3 mm p6 just touches H7, a transition fit there (note of ANSI B4.2).
    fc.assert(
      fc.property(fc.integer({min: 3001, max: 500_000}), (thousandths) => {
        expect(result(fitOfClasses(quantity(thousandths / 1000, 'mm'), letters)).kind).toBe(kind);
      }),
    );
  });

  test('the shaft may be named first', () => {
    const one = result(fitOfClasses(q('25 mm'), 'g6/H7'));
    expect(one).toEqual(result(fitOfClasses(q('25 mm'), 'H7/g6')));
  });

  // ISO 286-1, from memory: hole and shaft basis give the same fit for the preferred pairs of mixed grades.
  test.each([
    ['H8/f7', 'F8/h7'],
    ['H7/g6', 'G7/h6'],
    ['H7/k6', 'K7/h6'],
    ['H7/n6', 'N7/h6'],
    ['H7/p6', 'P7/h6'],
    ['H7/s6', 'S7/h6'],
    ['H7/u6', 'U7/h6'],
  ])('%s and %s are the same fit over 3 mm', (hole, shaft) => {
    fc.assert(
      fc.property(fc.integer({min: 3001, max: 500_000}), (thousandths) => {
        const size = quantity(thousandths / 1000, 'mm');
        const [one, other] = [hole, shaft].map((letters) => result(fitOfClasses(size, letters)));
        expect(valueIn(one?.least, 'µm')).toBeCloseTo(valueIn(other?.least, 'µm'), 6);
        expect(valueIn(one?.most, 'µm')).toBeCloseTo(valueIn(other?.most, 'µm'), 6);
      }),
    );
  });

  test.each([
    ['H7', 'no fit'],
    ['H7/G6', 'no hole and shaft'],
    ['h7/g6', 'no hole and shaft'],
    ['H7/g6/h5', 'no fit'],
    ['H7/w6', 'no letter'],
    ['X9', 'no fit'],
  ])('%s is refused', (letters, says) => {
    expect(refusal(fitOfClasses(q('25 mm'), letters)).says).toContain(says);
  });
});

describe('by limits', () => {
  // NAVEDTRA 14276 (Draftsman), p. 3-44, read: draftingmanuals.tpub.com/14276/css/Basic-Hole-System-168.htm.
  test('the basic-hole example', () => {
    const fit = result(fitOfLimits(amount('1.500–1.502 in'), amount('1.495–1.497 in')));
    expect(fit.kind).toBe('clearance');
    expect(
      fitNamed(fit).map(({value}) => typeof value !== 'string' && 'form' in value && formatAmount(value)),
    ).toEqual(['0.0030–0.0070 in']);
  });

  // Shigley, 9th ed., Example 7-8, p. 398, read: 2 in H7/s6 by its inch tables.
  test('a medium drive fit', () => {
    const fit = result(fitOfLimits(amount('2.0000–2.0010 in'), amount('2.0017–2.0023 in')));
    expect([fit.kind, formatQuantity(fit.least), formatQuantity(fit.most)]).toEqual([
      'interference',
      '−0.0023 in',
      '−0.0007 in',
    ]);
    expect(fitNamed(fit)).toHaveLength(1);
  });

  test('readings are limits without a tolerance', () => {
    const fit = result(fitOfLimits(amount('2.5010 in'), amount('2.4990 in')));
    expect([valueIn(fit.least, 'in'), valueIn(fit.most, 'in')]).toEqual([0.002, 0.002]);
  });

  test('a transition fit is told as the most of either', () => {
    const fit = result(fitOfLimits(amount('25.000–25.021 mm'), amount('25.002–25.015 mm')));
    expect(fitNamed(fit).map(({name}) => name)).toEqual(['most interference', 'most clearance']);
  });

  const micron = fc.integer({min: 1000, max: 100_000});
  const range = fc.tuple(micron, micron).map(([a, b]): Amount => {
    const [low = a, high = b] = [a, b].sort((one, other) => one - other).map((value) => value / 1000);
    return {form: 'range', low: quantity(low, 'mm'), high: quantity(high, 'mm')};
  });

  test('most less least is both tolerances together; swapping the parts swaps the sign', () => {
    fc.assert(
      fc.property(range, range, (hole, shaft) => {
        const [fit, other] = [result(fitOfLimits(hole, shaft)), result(fitOfLimits(shaft, hole))];
        const widths = [hole, shaft].map((one) =>
          one.form === 'range' ? one.high.value - one.low.value : Number.NaN,
        );
        expect(fit.most.value - fit.least.value).toBeCloseTo((widths[0] ?? 0) + (widths[1] ?? 0), 9);
        expect(other.least.value + 0).toBeCloseTo(0 - fit.most.value, 9);
      }),
    );
  });

  test('a larger hole never gives less clearance', () => {
    fc.assert(
      fc.property(range, range, fc.integer({min: 0, max: 500}), (hole, shaft, more) => {
        fc.pre(hole.form === 'range');
        const grown = {
          ...hole,
          low: quantity(hole.low.value + more / 1000, 'mm'),
          high: quantity(hole.high.value + more / 1000, 'mm'),
        };
        const [before, after] = [result(fitOfLimits(hole, shaft)), result(fitOfLimits(grown, shaft))];
        expect(after.least.value).toBeGreaterThanOrEqual(before.least.value - 1e-9);
      }),
    );
  });

  test('the unit of the readings does not matter', () => {
    fc.assert(
      fc.property(fc.integer({min: 500, max: 5000}), fc.integer({min: -20, max: 20}), (thou, by) => {
        const inches = result(fitOfLimits(single(thou / 1000, 'in'), single((thou - by) / 1000, 'in')));
        const mixed = result(fitOfLimits(single(thou, 'thou'), single(((thou - by) * 25.4) / 1000, 'mm')));
        expect(valueIn(mixed.least, 'µm')).toBeCloseTo(valueIn(inches.least, 'µm'), 4);
      }),
    );
  });

  test.each([
    ['max 1.5 in', '1.495–1.497 in', 'both limits'],
    ['1.500–1.502 in', 'min 1.4 in', 'both limits'],
    ['12–13 kg', '1.4–1.5 in', 'a mass'],
    ['1.500–1.502 in', '0–1.497 in', 'above nought'],
  ])('%s on %s is refused', (hole, shaft, says) => {
    expect(refusal(fitOfLimits(amount(hole), amount(shaft))).says).toContain(says);
  });

  test('limits the wrong way round are refused', () => {
    const wrong: Amount = {form: 'range', low: q('2 in'), high: q('1 in')};
    expect(refusal(fitOfLimits(wrong, amount('1 in'))).says).toContain('stands above');
  });

  test('the inputs are told as understood', () => {
    expect(out(fitOfClasses(q('25 mm'), 'H7/g6')).inputs.map(({name}) => name)).toEqual([
      'nominal size',
      'fit',
      'hole',
      'shaft',
    ]);
  });
});

function single(value: number, symbol: 'in' | 'thou' | 'mm'): Amount {
  return {form: 'single', value: quantity(value, symbol)};
}
