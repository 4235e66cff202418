/** Tightening orders of layouts at the edge of a rule: what is still a ring, one direction, one distance. Common practice, no source. */
import {expect, test} from 'vitest';
import type {Spot} from '../../src/trade/layout.js';
import {type Pattern, tighteningOrder} from '../../src/trade/tightening-order.js';
import {answer, asked} from './ask.js';
import {result} from './unwrap.js';

type Place = readonly [id: string, x: number, y: number];

/** The pattern and the order of these places. */
function told(places: readonly Place[], pattern?: Pattern): string {
  const spots = places.map(([id, x, y]): Spot => ({id, x, y}));
  const found = result(tighteningOrder(spots, pattern));
  return `${found.pattern}: ${found.order.join(' ')}`;
}

test.each([
  ['grid 2x5', 'order: 3, 8, 2, 9, 7, 4, 6, 5, 1, 10'],
  ['grid 3×3', 'order: 5, 2, 8, 4, 6, 1, 9, 3, 7'],
  ['row 1', 'order: 1'],
  ['row 2', 'order: 1, 2'],
])('%s: %s', (layout, order) => {
  expect(answer(asked('tightening-order', {layout}))).toEqual([order, 'pattern: outwards']);
});

test('a grid is numbered from the top, so that crosswise goes clockwise as on paper', () => {
  expect(answer(asked('tightening-order', {layout: 'grid 2x2', pattern: 'crosswise'}))[0]).toBe(
    'order: 1, 4, 2, 3',
  );
});

/** Half the width of a plate of height 2 whose corners lie two fifths of a turn apart, seen from its middle. */
const HALF = 0.32491969623290584;

test.each<readonly [string, readonly Place[], string]>([
  [
    'a ring of which each is off by a tenth',
    [
      ['top', 0, 11],
      ['right', 9, 0],
      ['bottom', 0, -11],
      ['left', -9, 0],
    ],
    'crosswise: top bottom right left',
  ],
  [
    'a long plate of four, bare along its sides',
    [
      ['a', -5, 0.5],
      ['b', 5, 0.5],
      ['c', 5, -0.5],
      ['d', -5, -0.5],
    ],
    'outwards: a c d b',
  ],
  [
    'a plate of four of which two are just two fifths of a turn apart',
    [
      ['a', -HALF, 1],
      ['b', HALF, 1],
      ['c', HALF, -1],
      ['d', -HALF, -1],
    ],
    'outwards: a c b d',
  ],
  [
    'all at one place',
    [
      ['a', 3, 3],
      ['b', 3, 3],
      ['c', 3, 3],
    ],
    'outwards: a b c',
  ],
  [
    'one in the middle, and two of which one is farther by less than can be measured',
    [
      ['right', 1 + 1e-10, 0],
      ['left', -1, 0],
      ['middle', 0, 0],
    ],
    'outwards: middle right left',
  ],
  [
    'the same on a drawing ten thousand times as large, where the doubles are coarser',
    [
      ['right', 1e4 + 1e-6, 0],
      ['left', -1e4, 0],
      ['middle', 0, 0],
    ],
    'outwards: middle right left',
  ],
  [
    'one that is farther from the last by just what is left out of account',
    [
      ['middle', 0, 0],
      ['right', 1, 0],
      ['left', -(1 + 1e-9), 0],
    ],
    'outwards: middle right left',
  ],
])('%s', (_, places, order) => expect(told(places)).toBe(order));

test.each<readonly [string, readonly Place[], string]>([
  [
    'a ring in any order of writing, from the one written first',
    [
      ['right', 1, 0],
      ['top', 0, 1],
      ['left', -1, 0],
      ['bottom', 0, -1],
    ],
    'crosswise: right left bottom top',
  ],
  [
    'the same on a drawing a million times as small',
    [
      ['right', 1e-6, 0],
      ['top', 0, 1e-6],
      ['left', -1e-6, 0],
      ['bottom', 0, -1e-6],
    ],
    'crosswise: right left bottom top',
  ],
  [
    'of two in one direction the nearer comes first',
    [
      ['top, far', 0, 2],
      ['right', 2, 0],
      ['top, near', -1e-10, 1],
      ['bottom', 0, -3],
      ['left', -2, 0],
    ],
    'crosswise: top, near right left top, far bottom',
  ],
  [
    'one in the middle has no direction and counts as at the top, whatever the doubles say',
    [
      ['right', 0.7, 0.1],
      ['bottom', 0.1, -0.5],
      ['middle', 0.1, 0.1],
      ['left', -0.5, 0.1],
      ['top', 0.1, 0.7],
    ],
    'crosswise: right left top bottom middle',
  ],
  [
    'nor has one that is off the middle by a thousand-millionth of the way to the farthest',
    [
      ['right', 1e9, 0],
      ['below', 0, -1],
      ['left', -1e9, 0],
      ['above', 0, 1],
    ],
    'crosswise: right below left above',
  ],
])('%s', (_, places, order) => expect(told(places, 'crosswise')).toBe(order));
