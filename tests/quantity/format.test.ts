/** Printing: as a shop writes it, back to the same amount when read, and never wider when converted. */
import fc from 'fast-check';
import {describe, expect, test} from 'vitest';
import {amountsAgree, convert, limitsOf, quantity, within} from '../../src/quantity/convert.js';
import {otherUnit} from '../../src/quantity/counterpart.js';
import {
  formatAmount,
  formatBoth,
  formatQuantity,
  inOtherSystem,
  restated,
} from '../../src/quantity/format.js';
import {readAmount} from '../../src/quantity/parse.js';
import {unit} from '../../src/quantity/units.js';
import {amount} from '../help/amount.js';
import {anyAmount} from './generators.js';

describe('in the unit stated', () => {
  test.each([
    ['85 ft-lb', '85 lbf·ft'],
    ['0.0150"', '0.0150 in'],
    ['1,250 N', '1250 N'],
    ['1.5 in', '1.5 in'],
    ['1½ in', '1-1/2 in'],
    ['3/2 in', '1-1/2 in'],
    ['7/3 in', '2-1/3 in'],
    ['90 deg', '90°'],
    ['-40 F', '−40 °F'],
    ['-1-1/2 in', '−1-1/2 in'],
    ['.0015-.0025"', '0.0015–0.0025 in'],
    ['1-1/2 to 1-3/4 in', '1-1/2 to 1-3/4 in'],
    ['-40 to -20 °C', '−40 to −20 °C'],
    ['1 in to 30 mm', '1 in to 30 mm'],
    ['2.4995 +/- .0005 in', '2.4995 ±0.0005 in'],
    ['2.5 in ±1 thou', '2.5 in ±1 thou'],
    ['1.000 +.001/-.000 in', '1.000 +0.001/−0.000 in'],
    ['1.000 +.002/+.001 in', '1.000 +0.002/+0.001 in'],
    ['1.000 -.001/-.002 in', '1.000 −0.001/−0.002 in'],
    ['5 lbf·ft max', 'max 5 lbf·ft'],
    ['at least 24 hours', 'min 24 h'],
    ['7 qt', '7 US qt'],
  ])('%s prints as %s', (text, printed) => expect(formatAmount(amount(text))).toBe(printed));

  test('a computed value bears the figures of its step', () => {
    expect(formatQuantity(convert(quantity(85, 'lbf·ft'), unit('N·m')))).toBe('115 N·m');
    expect(formatQuantity(convert(quantity(0.0015, 'in'), unit('mm')))).toBe('0.038 mm');
    expect(formatQuantity(convert(quantity(2, 'm'), unit('mm')))).toBe('2000 mm');
    expect(formatQuantity(quantity(64.46, 'lbf·ft', 1))).toBe('64 lbf·ft');
    expect(formatQuantity(quantity(-0.2, 'in', 1))).toBe('0 in');
  });
});

describe('in both systems', () => {
  test.each([
    ['85 lbf·ft', '85 lbf·ft (115 N·m)'],
    ['115 N·m', '85 lbf·ft (115 N·m)'],
    ['10 N·m', '89 lbf·in (10 N·m)'],
    ['12 kgf·m', '87 lbf·ft (12 kgf·m)'],
    ['80–85 lbf·ft', '80–85 lbf·ft (109–115 N·m)'],
    ['0.0015–0.0025 in', '0.0015–0.0025 in (0.039–0.063 mm)'],
    ['2.4995 ±0.0005 in', '2.4995 ±0.0005 in (63.475–63.500 mm)'],
    ['1.000 +0.001/-0.000 in', '1.000 +0.001/−0.000 in (25.40–25.42 mm)'],
    ['max 5 lbf·ft', 'max 5 lbf·ft (max 6.7 N·m)'],
    ['min 5 lbf·ft', 'min 5 lbf·ft (min 7 N·m)'],
    ['max 0.0015 in', 'max 0.0015 in (max 0.038 mm)'],
    ['1-1/2 in', '1-1/2 in (38.1 mm)'],
    ['1-1/8 in', '1-1/8 in (28.575 mm)'],
    ['10 thou', '10 thou (0.25 mm)'],
    ['max 212 °F', 'max 212 °F (max 100 °C)'],
    ['-40 °F', '−40 °F (−40 °C)'],
    ['80 ±5 °C', '167–185 °F (80 ±5 °C)'],
    ['7 qt', '7 US qt (6.6 L)'],
    ['60 psi', '60 psi (414 kPa)'],
    ['18 in', '18 in (460 mm)'],
    ['1.000 ±0 in', '1.000 +0/−0 in (25.4–25.4 mm)'],
    ['90°', '90°'],
    ['24 h', '24 h'],
  ])('%s for an inch shop: %s', (text, printed) => expect(formatBoth(amount(text), 'inch')).toBe(printed));

  test('a metric shop has its unit first', () => {
    expect(formatBoth(amount('85 lbf·ft'), 'metric')).toBe('115 N·m (85 lbf·ft)');
    expect(formatBoth(amount('115 N·m'), 'metric')).toBe('115 N·m (85 lbf·ft)');
    expect(formatBoth(amount('90°'), 'metric')).toBe('90°');
  });
});

describe('laws', () => {
  test('reading what was printed gives the same amount', () => {
    fc.assert(
      fc.property(anyAmount, (stated) => {
        expect(readAmount(formatAmount(stated))).toEqual({ok: true, amount: stated});
      }),
      {numRuns: 2000},
    );
  });

  test('a converted limit is never wider than the stated one, as printed', () => {
    fc.assert(
      fc.property(anyAmount, (stated) => {
        const other = inOtherSystem(stated);
        if (other === undefined || stated.form === 'single') return;
        expect(within(limitsOf(amount(other)), limitsOf(stated))).toBe(true);
      }),
      {numRuns: 2000},
    );
  });

  test('a converted limit bears no more figures than are read back, however small the other is', () => {
    const low = {...quantity(1 / 32, 'in'), step: 0};
    const high = {...quantity(39_370_079.000_04, 'in'), step: 1e-3};
    const other = inOtherSystem({form: 'range', low, high});
    expect(readAmount(other ?? '')).toMatchObject({ok: true});
  });

  test('a converted amount agrees with the stated one, as printed', () => {
    fc.assert(
      fc.property(anyAmount, (stated) => {
        const other = inOtherSystem(stated);
        if (other === undefined) return;
        expect([formatAmount(stated), other, amountsAgree(amount(other), stated)]).toEqual([
          formatAmount(stated),
          other,
          true,
        ]);
      }),
      {numRuns: 2000},
    );
  });

  test('what is restated prints and reads back as itself', () => {
    fc.assert(
      fc.property(anyAmount, (stated) => {
        const to = otherUnit(stated);
        if (to === undefined) return;
        const other = restated(stated, to);
        expect(amount(formatAmount(other))).toEqual(other);
      }),
      {numRuns: 2000},
    );
  });
});
