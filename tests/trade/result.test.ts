/** Quantities made of results: the unit and the step that they are printed in. */
import {describe, expect, test} from 'vitest';
import {unit} from '../../src/quantity/units.js';
import {figures, fromSi, lengthLike} from '../../src/trade/result.js';
import {q} from '../help/amount.js';

describe('a length is told as fine as the finest reading', () => {
  const EXACT = {...q('0.5 in'), step: 0};

  test.each([
    // Coarser readings than a micrometer's do not make the result coarser.
    ['2.5 in', [q('2.5 in')], 0.0001],
    ['a tenth of a thousandth', [q('2.5000 in')], 0.0001],
    ['half of it', [q('2.50005 in')], 0.00001],
    ['the second one is finer', [q('2.5 in'), q('63.50001 mm')], 0.00001 / 25.4],
    ['one that is exact says nothing of it', [EXACT], 0.0001],
    ['an exact one beside a fine one', [EXACT, q('2.50005 in')], 0.00001],
    ['one that was not read', [q('63.5 mm'), undefined], 0.001],
  ] as const)('%s', (_, readings, step) => {
    const {step: told, unit: of} = lengthLike(0.0254, readings);
    expect([told, of]).toEqual([Number(step.toPrecision(6)), readings[0].unit]);
  });
});

test.each([
  // Value, how many figures, and the step that shows so many.
  [0.012_345_6, 3, 0.0001],
  [9.996, 3, 0.1],
  [58.04, 3, 0.1],
  [123.4, 3, 1],
  [1234.5, 3, 1],
  [-0.5, 2, 0.01],
  [0, 3, 1],
])('%d to %d figures is told to %d', (value, count, step) => {
  expect(figures(value, 'ksi', count)).toStrictEqual({value, unit: unit('ksi'), step});
});

test('a negative nought is nought', () => {
  expect(fromSi(-0, unit('in'), 1).value).toBe(0);
  expect(fromSi(-1, unit('m'), 1).value).toBe(-1);
});
