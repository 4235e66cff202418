/** What passes for initials: the same for every question of the tablet, and for the report. */
import {expect, test} from 'vitest';
import {isInitials} from '../../src/readings/initials.js';

test.each([
  ['AB', true],
  ['a', true],
  ['ABCDE', true],
  ['A.B.', true],
  ['J.-M.', true],
  ['Äb', true],
  ['A\u0308b', true],
  ['ЖК', true],
  ['王', true],
  ['', false],
  ['ABCDEF', false],
  ['A B', false],
  ['AB ', false],
  ['AB2', false],
  ['7', false],
  ['.', false],
  ['-AB', false],
  ['A/B', false],
  ['will bed in', false],
  ['A\nB', false],
  ['<b>', false],
])('%j: %s', (text, passes) => {
  expect(isInitials(text)).toBe(passes);
});
