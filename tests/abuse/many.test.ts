/** As many tags as a file can hold: all are read and judged, however many there are in one step. */
import {expect, test} from 'vitest';
import {check} from '../../src/findings/check.js';
import {book} from '../help/example.js';

/** More than a call can take arguments, which is where a careless `push(...many)` ends. */
const MANY = 150_000;

/** A name that nothing bears is told once a file, with all of its uses. */
test.each<readonly [string, string, string | undefined, number?]>([
  ['sound, in one step', `1. Turn it. ${'`turn: shaft` '.repeat(MANY)}`, undefined],
  ['spoilt, in one step', `1. Turn it. ${'`turn: [` '.repeat(MANY)}`, 'tag-form'],
  [
    'of an unknown item',
    `1. Turn it. ${'`turn: shift` '.repeat(100)}\n`.repeat(MANY / 100),
    'unknown-item',
    1,
  ],
  ['outside any step', `1. Rest.\n\nTurn it. ${'`turn: shaft` '.repeat(MANY)}`, 'tag-outside-step'],
])('a hundred and fifty thousand tags, %s', (_, procedure, expected, times = MANY) => {
  const {findings} = check(book({engine: 'parts:\n  shaft: {}\n', procedures: {'many.md': procedure}}));
  const told = findings.filter(({name}) => name !== 'left-out' && name !== 'unknown-verb');
  expect(new Set(told.map(({name}) => name))).toEqual(new Set(expected ? [expected] : []));
  expect(told).toHaveLength(expected ? times : 0);
});
