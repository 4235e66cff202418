/** What is taken off a size by a grind: figures that were stated stay, and none are made up. */
import {expect, test} from 'vitest';
import {formatAmount} from '../../src/quantity/format.js';
import {lessBy} from '../../src/quantity/less.js';
import {amount} from '../help/amount.js';

test.each([
  ['2.500 in', '0.010 in', '2.490 in'],
  ['2.4990–2.5000 in', '0.010 in', '2.4890–2.4900 in'],
  ['2.500 ±0.001 in', '0.010 in', '2.490 ±0.001 in'],
  ['max 2.500 in', '0.010 in', 'max 2.490 in'],
  ['min 2.500 in', '0.010 in', 'min 2.490 in'],
  ['2.500 in', '0.25 mm', '2.4902 in'],
  ['1-17/32 in', '0.010 in', '1.52125 in'],
  ['2.500 in', '1/64 in', '2.484375 in'],
  ['1-1/2 in', '1/32 in', '1-15/32 in'],
  ['2.500 in', '0.010 ±0.001 in', '2.490 in'],
  ['2.500 in', '0.009–0.010 in', '2.490 in'],
  ['2.500 in', 'max 0.010 in', '2.490 in'],
  ['2.500 in', 'min 0.010 in', '2.490 in'],
])('%s less %s is %s', (from, by, expected) => {
  expect(formatAmount(lessBy(amount(from, 'length'), amount(by, 'length')))).toBe(expected);
});
