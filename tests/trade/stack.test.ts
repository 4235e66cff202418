/** Tolerance stacks against published examples, a general-purpose mathematics library, and every combination of limits. */
import fc from 'fast-check';
import {norm, sqrt, sum} from 'mathjs';
import {describe, expect, test} from 'vitest';
import {quantity} from '../../src/quantity/convert.js';
import {formatAmount} from '../../src/quantity/format.js';
import {type Link, middleFor, stack} from '../../src/trade/stack.js';
import {amount, q} from '../help/amount.js';
import {out, refusal, result, valueIn} from './unwrap.js';

function link(name: string, size: string, times = 1): Link {
  return {name, size: amount(size), times};
}

/** Shigley, 9th ed., Example 1-3, p. 20 (read): w = a − b − c − d. */
const SHIGLEY = [
  link('a', '1.750 ±0.003 in'),
  link('b', '0.750 ±0.001 in', -1),
  link('c', '0.120 ±0.005 in', -1),
  link('d', '0.875 ±0.001 in', -1),
];

describe('published examples', () => {
  test('Shigley 1-3: mean 0.005, −0.005 to +0.015 in', () => {
    const found = result(stack(SHIGLEY));
    expect(valueIn(found.mean, 'in')).toBe(0.005);
    expect([valueIn(found.worstCase.low, 'in'), valueIn(found.worstCase.high, 'in')]).toEqual([
      -0.005, 0.015,
    ]);
  });

  // Root sum square of the same data, worked out in the references: √(9 + 1 + 25 + 1) thousandths = 0.006 in.
  test('Shigley 1-3: root sum square 0.006 in', () => {
    const found = result(stack(SHIGLEY));
    expect(valueIn(found.rootSumSquare.high, 'in') - valueIn(found.mean, 'in')).toBeCloseTo(0.006, 12);
  });

  test('Shigley 1-3: for a gap of 0.003 in at least, d becomes 0.867 in', () => {
    expect(valueIn(result(middleFor(SHIGLEY, 'd', q('0.003 in'))), 'in')).toBe(0.867);
  });

  // K. Chase, Basic Tools for Tolerance Analysis: shaft and housing. Inputs from memory; sums in the references.
  test('Chase: worst case 0.0245, root sum square 0.01108 in', () => {
    const parts = [0.0015, 0.008, 0.0025, 0.002, 0.006, 0.002, 0.0025];
    const found = result(stack(parts.map((part, index) => link(`part ${index}`, `1 ±${part} in`))));
    expect(valueIn(found.worstCase.high, 'in') - 7).toBeCloseTo(0.0245, 9);
    expect(valueIn(found.rootSumSquare.high, 'in') - 7).toBeCloseTo(0.011_08, 5);
  });

  // References, 10: simple checks worked out there.
  test.each([
    [[0.2, 0.1, 0.15], 0.45, 0.269],
    [Array.from({length: 10}, () => 0.1), 1, 0.316],
  ])('±%j mm: worst %d, root sum square %d', (parts, worst, square) => {
    const found = result(stack(parts.map((part, index) => link(`part ${index}`, `10 ±${part} mm`))));
    const mean = valueIn(found.mean, 'mm');
    expect(valueIn(found.worstCase.high, 'mm') - mean).toBeCloseTo(worst, 9);
    expect(valueIn(found.rootSumSquare.high, 'mm') - mean).toBeCloseTo(square, 3);
  });
});

describe('against mathjs and by brute force', () => {
  const part = fc.record({
    nominal: fc.integer({min: 1, max: 5000}),
    minus: fc.integer({min: 0, max: 50}),
    plus: fc.integer({min: 0, max: 50}),
    times: fc.constantFrom(1, -1, 2, 0.5),
  });
  const parts = fc.array(part, {minLength: 1, maxLength: 7});

  function links(list: readonly {nominal: number; minus: number; plus: number; times: number}[]): Link[] {
    return list.map(({nominal, minus, plus, times}, index) => ({
      name: `part ${index}`,
      times,
      size: {
        form: 'range',
        low: quantity((nominal - minus) / 1000, 'mm'),
        high: quantity((nominal + plus) / 1000, 'mm'),
      },
    }));
  }

  test('the root sum square is the norm of the half tolerances', () => {
    fc.assert(
      fc.property(parts, (list) => {
        const halves = list.map(({minus, plus, times}) => (times * (minus + plus)) / 2000);
        const found = result(stack(links(list)));
        const half = (valueIn(found.rootSumSquare.high, 'mm') - valueIn(found.rootSumSquare.low, 'mm')) / 2;
        expect(half).toBeCloseTo(Number(norm(halves)), 7);
        expect(half).toBeCloseTo(Number(sqrt(sum(halves.map((one) => one * one)))), 7);
      }),
    );
  });

  test('the worst case is the least and the most of all combinations of limits', () => {
    fc.assert(
      fc.property(parts, (list) => {
        let sums = [0];
        for (const {nominal, minus, plus, times} of list) {
          const ends = [times * (nominal - minus), times * (nominal + plus)];
          sums = sums.flatMap((total) => ends.map((end) => total + end));
        }
        const {worstCase} = result(stack(links(list)));
        expect(valueIn(worstCase.low, 'µm')).toBeCloseTo(Math.min(...sums), 4);
        expect(valueIn(worstCase.high, 'µm')).toBeCloseTo(Math.max(...sums), 4);
      }),
    );
  });

  test('chance is never worse than the worst, and order does not matter', () => {
    fc.assert(
      fc.property(parts, (list) => {
        const [found, other] = [result(stack(links(list))), result(stack(links([...list].reverse())))];
        expect(valueIn(found.rootSumSquare.high, 'µm')).toBeLessThanOrEqual(
          valueIn(found.worstCase.high, 'µm') + 1e-6,
        );
        expect(valueIn(other.worstCase.low, 'µm')).toBeCloseTo(valueIn(found.worstCase.low, 'µm'), 4);
      }),
    );
  });

  test('a part moved to its wanted middle gives just the least wanted', () => {
    fc.assert(
      fc.property(parts, fc.integer({min: -100, max: 100}), (list, least) => {
        const before = links(list);
        const [first] = before;
        if (first?.size.form !== 'range') throw new Error('no part');
        const middle = valueIn(result(middleFor(before, 'part 0', quantity(least / 1000, 'mm'))), 'mm');
        const half = (first.size.high.value - first.size.low.value) / 2;
        const size = {
          form: 'range',
          low: quantity(middle - half, 'mm'),
          high: quantity(middle + half, 'mm'),
        } as const;
        const {worstCase} = result(stack([{...first, size}, ...before.slice(1)]));
        expect(valueIn(worstCase.low, 'mm')).toBeCloseTo(least / 1000, 6);
      }),
    );
  });

  test('inflation widens by its factor', () => {
    const [plain, wide] = [1, 1.5].map((factor) => result(stack(SHIGLEY, factor)).rootSumSquare);
    expect(valueIn(wide?.high, 'in') - 0.005).toBeCloseTo((valueIn(plain?.high, 'in') - 0.005) * 1.5, 9);
  });
});

test('two links go by the worst case, and it says so', () => {
  expect(out(stack(SHIGLEY.slice(0, 2))).advisory).toContain('worst case');
  expect(out(stack(SHIGLEY)).advisory).toBeUndefined();
  expect(formatAmount(result(stack([link('a', '1.000 in'), link('b', '0.998 in', -1)])).worstCase)).toBe(
    '0.0020–0.0020 in',
  );
});

test.each([
  [() => stack([]), 'no link'],
  [() => stack([link('a', 'max 1 in')]), 'only one limit'],
  [() => stack([link('a', '1 kg')]), 'a mass'],
  [() => stack([link('a', '1 in', Number.NaN)]), 'no sign'],
  [() => stack(SHIGLEY, 3), '1 to 2'],
  [() => middleFor(SHIGLEY, 'e', q('1 in')), 'no link e'],
  [() => middleFor(SHIGLEY, 'd', q('1 s')), 'a time'],
])('%s: %s', (work, says) => {
  expect(refusal<unknown>(work()).says).toContain(says);
});
