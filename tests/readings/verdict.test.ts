/** In, near and out, held against the guard band of `src/trade`; and the figures over several builds. */
import fc from 'fast-check';
import {all, create} from 'mathjs';
import {describe, expect, test} from 'vitest';
import {quantity} from '../../src/quantity/convert.js';
import {statistics} from '../../src/readings/statistics.js';
import {guardOf, verdictOf} from '../../src/readings/verdict.js';
import {judged} from '../../src/tablet/judge.js';
import {guardBand, proves} from '../../src/trade/guard-band.js';

const BOX = {
  kind: 'reading',
  key: '1:1',
  step: '1',
  label: '',
  onlyIf: [],
  item: 'play',
  place: '',
  unit: 'in',
  round: 1,
} as const;

test.each([
  [0.002, 'in'],
  [0.0035, 'in'],
  [0.00199, 'out'],
  [0.00351, 'out'],
])('limits are inclusive: %d is %s', (value, verdict) => {
  expect(verdictOf(value, {least: 0.002, most: 0.0035, doubt: 0})).toBe(verdict);
});

// The tablet and the report go by the same rule; the last tenth is the shop's habit (no source).
test.each([
  [0.0019, 'out'],
  [0.002, 'near'],
  [0.00214, 'near'],
  [0.00215, 'in'],
  [0.00335, 'in'],
  [0.00336, 'near'],
])(
  'where nothing is known of the gauge, the last tenth of the tolerance is near: %d is %s',
  (value, verdict) => {
    expect(verdictOf(value, {least: 0.002, most: 0.0035})).toBe(verdict);
    expect(judged(String(value), {...BOX, least: 0.002, most: 0.0035})?.verdict).toBe(verdict);
  },
);

test('limits with one end have no tenth', () => {
  expect(verdictOf(0.001, {most: 0.001})).toBe('in');
  expect(guardOf({most: 0.001})).toBe(0);
});

test.each([
  [0, 'in'],
  [0.0009, 'in'],
  [0.00091, 'near'],
  [0.001, 'near'],
  [0.0010001, 'out'],
])('limits with one end: %d is %s', (value, verdict) => {
  expect(verdictOf(value, {most: 0.001, doubt: 0.0001})).toBe(verdict);
});

test('a gauge whose doubt takes up the whole tolerance proves nothing', () => {
  for (const value of [1, 1.25, 1.5])
    expect(verdictOf(value, {least: 1, most: 1.5, doubt: 0.3})).toBe('near');
});

test('without limits there is no verdict', () => {
  expect(verdictOf(1, {doubt: 0.1})).toBeUndefined();
});

test('`in` is what conforms by the guard band, `near` and `out` are split by the limits themselves', () => {
  const tenths = fc.integer({min: 0, max: 400});
  fc.assert(
    fc.property(tenths, fc.integer({min: 0, max: 40}), (at, doubt) => {
      const band = guardBand(
        {form: 'range', low: quantity(0.01, 'in'), high: quantity(0.02, 'in')},
        quantity(doubt / 10_000, 'in'),
      );
      if (!band.ok) throw new Error(band.says);
      const value = at / 10_000;
      const verdict = verdictOf(value, {least: 0.01, most: 0.02, doubt: doubt / 10_000});
      const proof = proves(quantity(value, 'in'), band.result);
      expect([value, doubt, verdict === 'in']).toEqual([value, doubt, proof === 'conforms']);
      if (proof === 'does not conform') expect(verdict).toBe('out');
    }),
  );
});

/**
 * Univariate data sets of the NIST Statistical Reference Datasets (www.itl.nist.gov/div898/strd), certified values
 * to 15 figures: Mavro (filter transmittance), and NumAcc1 to NumAcc4, made to be hard on careless formulas.
 */
const MAVRO = [
  2.0018, 2.0017, 2.0018, 2.0019, 2.0018, 2.0017, 2.0015, 2.0014, 2.0015, 2.0015, 2.0017, 2.0018, 2.0018,
  2.0019, 2.0019, 2.0021, 2.002, 2.0016, 2.0014, 2.0013, 2.0013, 2.0015, 2.0015, 2.0016, 2.0015, 2.0014,
  2.0013, 2.0014, 2.0015, 2.0014, 2.0015, 2.0016, 2.0015, 2.0016, 2.0019, 2.002, 2.002, 2.0021, 2.0022,
  2.0023, 2.0024, 2.0025, 2.0027, 2.0026, 2.0026, 2.0026, 2.0027, 2.0026, 2.0025, 2.0024,
];

function alternating(whole: number): number[] {
  return [whole + 0.2, ...Array.from({length: 1000}, (_, at) => (at % 2 === 0 ? whole + 0.1 : whole + 0.3))];
}

describe('mean and standard deviation', () => {
  test.each([
    {name: 'Mavro', values: MAVRO, mean: 2.001856, deviation: 0.000429123454003053, figures: 12},
    {
      name: 'NumAcc1',
      values: [10_000_001, 10_000_003, 10_000_002],
      mean: 10_000_002,
      deviation: 1,
      figures: 15,
    },
    {name: 'NumAcc2', values: alternating(1), mean: 1.2, deviation: 0.1, figures: 14},
    // 1000000.1 has no more than ten figures behind the point as a double, so no formula can do better.
    {name: 'NumAcc3', values: alternating(1_000_000), mean: 1_000_000.2, deviation: 0.1, figures: 9},
    {name: 'NumAcc4', values: alternating(10_000_000), mean: 10_000_000.2, deviation: 0.1, figures: 8},
  ])('NIST StRD $name', ({values, mean, deviation, figures}) => {
    const found = statistics(values);
    expect(found?.count).toBe(values.length);
    expect(Math.abs((found?.mean ?? 0) / mean - 1)).toBeLessThan(1e-15);
    expect(Math.abs((found?.deviation ?? 0) / deviation - 1)).toBeLessThan(10 ** -figures);
  });

  test('as a general-purpose library has them', () => {
    const math = create(all ?? {});
    const values = fc.array(fc.integer({min: -9_999_999, max: 9_999_999}), {minLength: 2, maxLength: 40});
    fc.assert(
      fc.property(values, (list) => {
        const found = statistics(list.map((each) => each / 10_000));
        const scaled = list.map((each) => each / 10_000);
        expect(found?.mean).toBeCloseTo(Number(math.mean(scaled)), 9);
        expect(found?.deviation).toBeCloseTo(Number(math.std(...scaled)), 9);
        expect([found?.smallest, found?.largest]).toEqual([Math.min(...scaled), Math.max(...scaled)]);
      }),
    );
  });

  test('of one value, and of none', () => {
    expect(statistics([2.5])).toEqual({count: 1, smallest: 2.5, mean: 2.5, largest: 2.5});
    expect(statistics([])).toBeUndefined();
  });
});
