/** Tightening order and passes: known patterns, and what any order must keep. */
import fc from 'fast-check';
import {describe, expect, test} from 'vitest';
import {compare, quantity, si} from '../../src/quantity/convert.js';
import {formatQuantity} from '../../src/quantity/format.js';
import {circle, distance, grid, middleOf, row, type Spot} from '../../src/trade/layout.js';
import {passesTo} from '../../src/trade/passes.js';
import {tighteningOrder} from '../../src/trade/tightening-order.js';
import {q} from '../help/amount.js';
import {refusal, result} from './unwrap.js';

function checkOrder(spots: readonly Spot[], pattern: string, order: string): void {
  const found = result(tighteningOrder(spots));
  expect([found.pattern, found.order.join(' ')]).toEqual([pattern, order]);
}

describe('rings', () => {
  // ASME PCC-1, the cross pattern by number of bolts (from memory).
  test.each([
    [4, '1 3 2 4'],
    [8, '1 5 3 7 2 6 4 8'],
    [12, '1 7 4 10 2 8 5 11 3 9 6 12'],
    [16, '1 9 5 13 3 11 7 15 2 10 6 14 4 12 8 16'],
    [20, '1 11 6 16 3 13 8 18 5 15 10 20 2 12 7 17 4 14 9 19'],
  ])('%d bolts: %s (ASME PCC-1)', (count, order) => checkOrder(circle(count), 'crosswise', order));

  // Common practice, no source.
  test.each([
    [3, '1 2 3'],
    [5, '1 3 5 2 4'],
    [6, '1 4 2 5 3 6'],
    [7, '1 4 7 3 6 2 5'],
    [10, '1 6 3 8 5 10 2 7 4 9'],
  ])('%d bolts: %s (common practice)', (count, order) => checkOrder(circle(count), 'crosswise', order));

  test('four in a rectangle are a ring, wherever it stands and however large', () => {
    const square = [
      {id: 'front-left', x: 10, y: 10},
      {id: 'front-right', x: 14, y: 10},
      {id: 'rear-right', x: 14, y: 6},
      {id: 'rear-left', x: 10, y: 6},
    ];
    checkOrder(square, 'crosswise', 'front-left rear-right front-right rear-left');
  });

  test('in an even ring each second one is opposite the one before', () => {
    fc.assert(
      fc.property(fc.integer({min: 2, max: 40}), (half) => {
        const spots = circle(2 * half);
        const {order} = result(tighteningOrder(spots, 'crosswise'));
        const places = order.map((id) => spots.find((spot) => spot.id === id));
        for (let index = 0; index < order.length; index += 2) {
          const [a, b] = [places[index], places[index + 1]];
          expect(a && b && distance(a, b)).toBeCloseTo(2, 9);
        }
      }),
    );
  });
});

describe('rows and grids, from the middle outwards (common practice, no source)', () => {
  test.each([
    ['one', row(1), '1'],
    ['two in a row', row(2), '1 2'],
    ['three in a row', row(3), '2 1 3'],
    ['five in a row', row(5), '3 2 4 1 5'],
    ['six in a row', row(6), '3 4 2 5 1 6'],
    ['two rows of three', grid(2, 3), '2 5 1 6 4 3'],
    ['two rows of five, a four-cylinder head', grid(2, 5), '3 8 2 9 7 4 6 5 1 10'],
  ])('%s', (_, spots, order) => checkOrder(spots, 'outwards', order));
});

const places = fc
  .uniqueArray(fc.record({x: fc.integer({min: -50, max: 50}), y: fc.integer({min: -50, max: 50})}), {
    minLength: 1,
    maxLength: 24,
    selector: ({x, y}) => `${x} ${y}`,
  })
  .map((list) => list.map((place, index): Spot => ({id: `b${index + 1}`, ...place})));

describe('any layout', () => {
  test('every fastener comes once', () => {
    fc.assert(
      fc.property(places, fc.constantFrom('outwards', 'crosswise', undefined), (spots, pattern) => {
        const {order} = result(tighteningOrder(spots, pattern));
        expect([...order].sort()).toEqual(spots.map(({id}) => id).sort());
      }),
    );
  });

  test('outwards never goes back towards the middle', () => {
    fc.assert(
      fc.property(places, (spots) => {
        const middle = middleOf(spots);
        const {order} = result(tighteningOrder(spots, 'outwards'));
        const radii = order.map((id) => distance(spots.find((spot) => spot.id === id) ?? middle, middle));
        for (const [index, radius] of radii.entries())
          expect(radius).toBeGreaterThanOrEqual((radii[index - 1] ?? 0) - 1e-3);
      }),
    );
  });

  test('the order does not hang on where the drawing has its origin, nor on its scale', () => {
    fc.assert(
      fc.property(places, fc.integer({min: 1, max: 4}), (spots, times) => {
        // Powers of two keep the doubles exact, so that equal distances stay equal.
        const moved = spots.map(({id, x, y}) => ({id, x: 2 ** times * x + 64, y: 2 ** times * y - 128}));
        for (const pattern of ['outwards', 'crosswise'] as const)
          expect(result(tighteningOrder(moved, pattern)).order).toEqual(
            result(tighteningOrder(spots, pattern)).order,
          );
      }),
      {numRuns: 50},
    );
  });

  test.each([
    ['none', [], /no fastener/],
    ['the same id twice', [...row(2), ...row(1)], /1 stands in the layout twice/],
    ['no place', [{id: 'a', x: Number.NaN, y: 0}], /a has no place/],
    ['too many', row(401), /too many/],
  ])('%s is refused', (_, spots, says) => expect(refusal(tighteningOrder(spots)).says).toMatch(says));
});

describe('passes', () => {
  // 30, 60 and 100 %: henniggasket.com and hswhite.com (read); rounded to marks of a wrench.
  test.each([
    ['85 lbf·ft', 3, '25, 50, 85'],
    ['100 lbf·ft', 3, '30, 60, 100'],
    ['150 lbf·ft', 3, '50, 90, 150'],
    ['30 lbf·ft', 3, '10, 18, 30'],
    ['12 lbf·ft', 3, '3.5, 7, 12'],
    ['60 N·m', 2, '30, 60'],
    ['80 N·m', 4, '20, 40, 60, 80'],
    ['85 lbf·ft', 1, '85'],
  ])('%s in %d: %s', (final, count, expected) => {
    const passes = result(passesTo(q(final), count)).map(formatQuantity);
    const [, unit = ''] = final.split(' ');
    expect(passes.map((pass) => pass.replace(` ${unit}`, '')).join(', ')).toBe(expected);
  });

  test('passes rise to the final torque, which is not touched', () => {
    fc.assert(
      fc.property(
        fc.double({min: 1, max: 1000, noNaN: true}),
        fc.integer({min: 1, max: 4}),
        (value, count) => {
          const final = quantity(value, 'N·m');
          const passes = result(passesTo(final, count));
          expect(passes).toHaveLength(count);
          expect(passes.at(-1)).toEqual(final);
          for (const [index, pass] of passes.slice(1).entries())
            expect(compare(pass, passes[index] ?? pass)).toBeGreaterThan(0);
          expect(si(passes[0] ?? final)).toBeGreaterThan(0);
        },
      ),
    );
  });

  test.each([
    ['no torque', passesTo(q('0 N·m')), /above nought/],
    ['an angle', passesTo(q('90°')), /torque is an angle/],
    ['nine passes', passesTo(q('90 N·m'), 9), /9 passes/],
  ])('%s is refused', (_, worked, says) => expect(refusal(worked).says).toMatch(says));
});
