/** Values that were written down again, in another unit too. Factors: NIST SP 811, appendix B (1 in = 25.4 mm exactly). */
import fc from 'fast-check';
import {describe, expect, test} from 'vitest';
import {convert, unitOf} from '../../src/quantity/convert.js';
import {otherUnit} from '../../src/quantity/counterpart.js';
import {formatAmount} from '../../src/quantity/format.js';
import type {Amount} from '../../src/quantity/model.js';
import {readAmount} from '../../src/quantity/parse.js';
import {isRestated, standsFor} from '../../src/quantity/restated.js';
import {anyQuantity} from './generators.js';

function amount(text: string): Amount {
  const reading = readAmount(text);
  if (!reading.ok) throw new Error(`${text}: ${reading.fault.says}`);
  return reading.amount;
}

describe('what may stand for a value', () => {
  test.each<readonly [stated: string, asked: string, stands: boolean]>([
    ['115 N·m', '85 lbf·ft', true],
    ['116 N·m', '85 lbf·ft', false],
    ['115.2 N·m', '85 lbf·ft', true],
    ['115.4 N·m', '85 lbf·ft', false],
    ['120 N·m', '85 lbf·ft', false],
    ['85.0 lbf·ft', '85 lbf·ft', true],
    ['85.4 lbf·ft', '85 lbf·ft', false],
    ['85 lbf·ft', '85.4 lbf·ft', false],
    ['0.002 in', '0.0015 in', false],
    ['0.04 mm', '0.0015 in', true],
    ['0.05 mm', '0.0015 in', false],
    ['1.5 thou', '0.0015 in', true],
    // A fraction is exact: 1/8 in is 3.175 mm.
    ['1/8 in', '3.2 mm', true],
    ['1/8 in', '3.1 mm', false],
    ['3.2 mm', '1/8 in', true],
    // Limits are rounded inwards, and never outwards by more than to the nearest figure.
    ['0.036–0.047 in', '0.9–1.2 mm', true],
    ['0.035–0.047 in', '0.9–1.2 mm', true],
    ['0.034–0.047 in', '0.9–1.2 mm', false],
    ['0.036–0.049 in', '0.9–1.2 mm', false],
    ['0.037–0.047 in', '0.9–1.2 mm', false],
    ['max 0.0011 in', 'max 0.03 mm', true],
    ['max 0.0012 in', 'max 0.03 mm', true],
    ['max 0.0013 in', 'max 0.03 mm', false],
    ['max 0.0010 in', 'max 0.03 mm', false],
    ['min 0.03 mm', 'max 0.03 mm', false],
    ['10 ±0.5 mm', '10 mm', true],
    ['10 mm', '10 ±0.5 mm', true],
    ['9.5–10.5 mm', '10 ±0.5 mm', true],
    ['9.4–10.5 mm', '10 ±0.5 mm', false],
    ['10 mm', '9.5–10.5 mm', false],
    ['24 h', '1 d', true],
    ['10 mm', '10 N·m', false],
  ])('%s for %s: %s', (stated, asked, stands) => {
    expect(standsFor(amount(stated), amount(asked))).toBe(stands);
  });

  test('a value converted exactly stands for itself, either way', () => {
    fc.assert(
      fc.property(anyQuantity, (value) => {
        const one: Amount = {form: 'single', value};
        const unit = otherUnit(one) ?? unitOf(one);
        const other: Amount = {form: 'single', value: convert(value, unit)};
        expect([formatAmount(other), standsFor(other, one)]).toEqual([formatAmount(other), true]);
        expect(isRestated(one, other)).toBe(true);
      }),
    );
  });
});

describe('a value that became another one', () => {
  test.each<readonly [before: string, now: string, same: boolean]>([
    ['85 lbf·ft', '115 N·m', true],
    ['0.9–1.2 mm', '0.035–0.047 in', true],
    ['0.9–1.2 mm', '0.034–0.049 in', false],
    ['0.034–0.049 in', '0.9–1.2 mm', false],
    ['max 0.03 mm', 'max 0.0013 in', false],
    ['max 0.0013 in', 'max 0.03 mm', false],
    ['0.0015 in', '0.04 mm', false],
    ['0.0015 in', '0.038 mm', true],
    ['0.0015 in', '0.0015 in', true],
    ['0.0015 in', '0.002 in', false],
  ])('%s, now %s: %s', (before, now, same) => {
    expect(isRestated(amount(before), amount(now))).toBe(same);
  });
});
