/** As many tags as a file can hold: all are read and judged, however many there are in one step. */
import {expect, test} from 'vitest';
import {check} from '../../src/findings/check.js';
import {book} from '../help/example.js';

/** More than a call can take arguments, which is where a careless `push(...many)` ends. */
const MANY = 150_000;

interface Case {
  readonly of: string;
  readonly procedure: string;
  readonly name?: string;
  /** How often it is told. */
  readonly times: number;
}

const CASES: readonly Case[] = [
  {of: 'sound, in one step', procedure: `1. Turn it. ${'`turn: shaft` '.repeat(MANY)}`, times: 0},
  {
    of: 'spoilt, in one step',
    procedure: `1. Turn it. ${'`turn: [` '.repeat(MANY)}`,
    name: 'tag-form',
    times: MANY,
  },
  {
    of: 'of an unknown item, which is told once with all of its uses',
    procedure: `1. Turn it. ${'`turn: shift` '.repeat(100)}\n`.repeat(MANY / 100),
    name: 'unknown-item',
    times: 1,
  },
  {
    of: 'outside any step',
    procedure: `1. Rest.\n\nTurn it. ${'`turn: shaft` '.repeat(MANY)}`,
    name: 'tag-outside-step',
    times: MANY,
  },
];

test.each(CASES)('a hundred and fifty thousand tags $of', ({procedure, name, times}) => {
  const {findings} = check(book({engine: 'parts:\n  shaft: {}\n', procedures: {'many.md': procedure}}));
  const told = findings.filter((one) => one.name !== 'left-out' && one.name !== 'unknown-verb');
  expect(new Set(told.map((one) => one.name))).toEqual(new Set(name ? [name] : []));
  expect(told).toHaveLength(times);
});
