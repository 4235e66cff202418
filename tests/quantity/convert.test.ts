/** Conversion, order, agreement and intervals: worked cases and the laws that they must keep. */
import fc from 'fast-check';
import {describe, expect, test} from 'vitest';
import {
  agrees,
  amountsAgree,
  compare,
  contains,
  convert,
  convertDifference,
  decimalStep,
  highOf,
  limitsOf,
  lowOf,
  quantity,
  si,
  unitOf,
  widthOf,
  within,
} from '../../src/quantity/convert.js';
import {unit} from '../../src/quantity/units.js';
import {amount} from '../help/amount.js';
import {anyAmount, anyQuantity, anyUnit, quantityOf, samePair, unitsOf} from './generators.js';

describe('agreement to the figures stated', () => {
  test.each([
    ['85 lbf·ft', '115 N·m', true],
    ['85 lbf·ft', '120 N·m', false],
    ['85 lbf·ft', '116 N·m', false],
    ['85 lbf·ft', '1020 lbf·in', true],
    ['85 lbf·ft', '85.0 lbf·ft', true],
    ['85 lbf·ft', '86 lbf·ft', false],
    ['0.0015 in', '0.038 mm', true],
    ['0.0015 in', '0.04 mm', true],
    ['0.0015 in', '0.05 mm', false],
    ['1-1/2 in', '38.1 mm', true],
    ['1-1/2 in', '1.5 in', true],
    ['1-1/2 in', '1.6 in', false],
    ['10 thou', '0.010 in', true],
    ['212 °F', '100 °C', true],
    ['180 °F', '82 °C', true],
    ['180 °F', '83 °C', false],
    ['24 h', '1 day', true],
    ['85 lbf·ft', '85 in', false],
    ['85 ±5 lbf·ft', '80–90 lbf·ft', true],
    ['85 ±5 lbf·ft', '85 lbf·ft', true],
    ['85 lbf·ft', '85 ±5 lbf·ft', true],
    ['80–90 lbf·ft', '85 lbf·ft', false],
    ['max 5 lbf·ft', 'max 6.8 N·m', true],
    ['max 5 lbf·ft', '5 lbf·ft', false],
    ['max 5 lbf·ft', 'min 5 lbf·ft', false],
    ['max 5 lbf·ft', '0–5 lbf·ft', false],
    ['0.0015–0.0025 in', '0.038–0.064 mm', true],
    ['0.0015–0.0025 in', '0.039–0.063 mm', true],
    ['0.0015–0.0025 in', '0.038–0.070 mm', false],
    ['80 ±5 °C', '167–185 °F', true],
    ['0–0.1 mm', '0.00–0.10 mm', true],
    ['0–0.1 mm', '0.02–0.10 mm', true],
    ['0–2.5 mm', '0.25–2.5 mm', false],
    ['-0.1–0 mm', '-0.1–0.3 mm', false],
  ])('%s and %s: %s', (one, other, expected) => {
    expect(amountsAgree(amount(one), amount(other))).toBe(expected);
    expect(amountsAgree(amount(other), amount(one))).toBe(expected);
  });
});

describe('limits', () => {
  test.each([
    ['85 lbf·ft', 115.244_525_608, 115.244_525_608],
    ['1–2 m', 1, 2],
    ['2.4995 ±0.0005 in', 0.063_474_6, 0.0635],
    ['1.000 +0.001/-0.000 in', 0.0254, 0.025_425_4],
    ['1.000 +0.002/+0.001 in', 0.025_425_4, 0.025_450_8],
    ['80 ±5 °C', 348.15, 358.15],
    ['212 ±9 °F', 368.15, 378.15],
    ['max 5 N', -Infinity, 5],
    ['min 5 N', 5, Infinity],
  ])('%s', (text, low, high) => {
    const limits = limitsOf(amount(text));
    expect(limits.low).toBeCloseTo(low, 7);
    expect(limits.high).toBeCloseTo(high, 7);
  });

  test('a difference of temperatures takes no offset', () => {
    expect(convertDifference(quantity(9, '°F'), unit('°C'))).toMatchObject({value: 5, unit: unit('°C')});
    expect(convert(quantity(9, '°F'), unit('°C')).value).toBeCloseTo(-12.78, 2);
    expect(widthOf(limitsOf(amount('80 ±5 °C')))).toBeCloseTo(10, 9);
    expect(widthOf(limitsOf(amount('80 ±9 °F')))).toBeCloseTo(10, 9);
  });

  test('the ends of a tolerance are decimals without noise, in the unit stated', () => {
    const stated = amount('2.4995 ±0.0005 in');
    expect(lowOf(stated)).toEqual(quantity(2.499, 'in', 0.0001));
    expect(highOf(stated)).toEqual(quantity(2.5, 'in', 0.0001));
    expect(highOf(amount('2.5000 in ±1 thou'))?.value).toBe(2.501);
    expect([lowOf(amount('max 5 N')), highOf(amount('min 5 N'))]).toEqual([undefined, undefined]);
  });

  test('contains its own ends, and nothing beyond them', () => {
    const limits = limitsOf(amount('0.0015–0.0025 in'));
    expect(contains(limits, quantity(0.0015, 'in'))).toBe(true);
    expect(contains(limits, quantity(0.0381, 'mm'))).toBe(true);
    expect(contains(limits, quantity(0.0025, 'in'))).toBe(true);
    expect(contains(limits, quantity(0.038, 'mm'))).toBe(false);
    expect(contains(limits, quantity(0.00251, 'in'))).toBe(false);
  });
});

describe('misuse', () => {
  test('unlike dimensions are the caller’s mistake', () => {
    expect(() => convert(quantity(1, 'in'), unit('N'))).toThrow(TypeError);
    expect(() => compare(quantity(1, 'in'), quantity(1, 'N'))).toThrow(TypeError);
    expect(agrees(quantity(1, 'in'), quantity(1, 'N'))).toBe(false);
  });

  test.each([
    [85, 1],
    [2.5, 0.1],
    [0.0015, 0.0001],
    [1e-7, 1e-7],
    [1.5e-7, 1e-8],
    [1e21, 1],
    [0, 1],
  ])('the step of %d in code is %d', (value, step) => {
    expect(decimalStep(value)).toBe(step);
    expect(quantity(value, 'in').step).toBe(step);
  });
});

const close = (a: number, b: number): boolean =>
  Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(a), Math.abs(b));

describe('laws', () => {
  test('there and back is where it was', () => {
    const inTwoUnits = anyQuantity.chain((q) =>
      fc.tuple(fc.constant(q), fc.constantFrom(...unitsOf(q.unit.dimension))),
    );
    fc.assert(
      fc.property(inTwoUnits, ([q, to]) => {
        const back = convert(convert(q, to), q.unit);
        expect(close(back.value, q.value) && close(back.step, q.step)).toBe(true);
        expect(compare(back, q) === 0 || close(si(back), si(q))).toBe(true);
        expect(agrees(convert(q, to), q)).toBe(true);
      }),
    );
  });

  test('order is kept by conversion, and is an order', () => {
    fc.assert(
      fc.property(samePair, ([a, b]) => {
        expect(Math.sign(compare(a, b)) + Math.sign(compare(b, a))).toBe(0);
        const far = Math.abs(si(a) - si(b)) > 1e-9 * Math.max(Math.abs(si(a)), Math.abs(si(b)));
        if (far) expect(Math.sign(compare(convert(a, b.unit), b))).toBe(Math.sign(compare(a, b)));
      }),
    );
    const three = anyUnit.chain((of) => fc.tuple(quantityOf(of), quantityOf(of), quantityOf(of)));
    fc.assert(
      fc.property(three, (list) => {
        const [a, b, c] = [...list].sort(compare);
        if (a && b && c)
          expect([compare(a, b) <= 0, compare(b, c) <= 0, compare(a, c) <= 0]).toEqual([true, true, true]);
      }),
    );
  });

  test('agreement is mutual, and everything agrees with itself', () => {
    fc.assert(
      fc.property(samePair, ([a, b]) => {
        expect(agrees(a, a)).toBe(true);
        expect(agrees(a, b)).toBe(agrees(b, a));
      }),
    );
    fc.assert(
      fc.property(anyAmount, anyAmount, (a, b) => {
        expect(amountsAgree(a, a)).toBe(true);
        expect(amountsAgree(a, b)).toBe(amountsAgree(b, a));
      }),
    );
  });

  test('limits hold their ends, their middle and each other', () => {
    fc.assert(
      fc.property(anyAmount, (a) => {
        const limits = limitsOf(a);
        for (const end of [lowOf(a), highOf(a)]) if (end) expect(contains(limits, end)).toBe(true);
        if (a.form === 'tolerance') expect(contains(limits, a.nominal)).toBe(true);
        expect(widthOf(limits)).toBeGreaterThanOrEqual(0);
        expect(within(limits, limits)).toBe(true);
        expect(within(limits, {low: -Infinity, high: Infinity})).toBe(true);
        expect(unitOf(a).dimension).toBe((lowOf(a) ?? highOf(a))?.unit.dimension);
      }),
    );
  });

  test('what keeps the inner limits keeps the outer ones', () => {
    const numbers = fc.double({min: -1000, max: 1000, noNaN: true});
    const limits = fc.tuple(numbers, numbers).map(([a, b]) => ({low: Math.min(a, b), high: Math.max(a, b)}));
    fc.assert(
      fc.property(limits, limits, numbers, (inner, outer, value) => {
        const q = quantity(value, 'N');
        if (within(inner, outer) && value >= inner.low && value <= inner.high)
          expect(contains(outer, q)).toBe(true);
        if (within(inner, outer))
          expect(widthOf(inner)).toBeLessThanOrEqual(widthOf(outer) * (1 + 1e-9) + 1e-9);
      }),
    );
  });
});
