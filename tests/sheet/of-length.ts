/** Sheets of every length about a page, so that in some the sign-off is the first that has no room. */
import type {Book} from '../../src/build/book.js';
import {book} from '../help/example.js';

/** How many steps: more than a page of them, and nearer together than the sign-off is high. */
export const LENGTHS: readonly number[] = [20, 23, 26, 29, 32, 35, 38];

/** What stands below the last step, and words of what the sign-off must share a page with. */
export const ENDINGS: readonly (readonly [string, string, (steps: number) => string])[] = [
  ['with the last step', '', (steps) => `step${steps}x`],
  ['with the waivers', ' `waive: clean-first because it stays on`', () => 'Waivers'],
];

/** A book of one procedure of so many steps of a line each. */
export function ofLength(steps: number, more = ''): Book {
  const list = Array.from({length: steps}, (_, at) => `${at + 1}. Clean it. step${at + 1}x \`clean: face\``);
  return book({
    engine: 'parts:\n  block: {given: true}\nsurfaces:\n  face: {on: block, assembly: dry}\n',
    procedures: {'one.md': `\n## Steps\n\n${list.join('\n')}${more}\n`},
  });
}

/** So many steps before a branch that it comes to stand in every place at the foot of a page. */
export const OPENINGS: readonly number[] = Array.from({length: 16}, (_, at) => 2 + at);

/** Words of the parts of a branch that stand on one page, whatever its place: the step, its condition, its first step. */
export const BRANCH: readonly string[] = ['opensx', 'Only if', 'sub1x'];

/**
 * A book of one procedure of so many steps of a line each, and a branch of `subs` steps; `long` makes the first of them
 * taller than a page.
 */
export function withBranch(steps: number, subs: number, long = false): Book {
  const before = Array.from(
    {length: steps},
    (_, at) => `${at + 1}. Clean it. step${at + 1}x \`clean: face\``,
  );
  const more = long ? ` ${'Rub it down with care. '.repeat(400)}` : '';
  const below = Array.from(
    {length: subs},
    (_, at) => `    ${at + 1}. Ease it. sub${at + 1}x${at === 0 ? more : ''}`,
  );
  const opens = `${steps + 1}. Where it is out, opensx: \`if: play is out\``;
  return book({
    engine:
      'parts:\n  block: {given: true}\nsurfaces:\n  face: {on: block, assembly: dry}\nfits:\n  play: {limits: 0.1–0.2 mm}\n',
    procedures: {'one.md': `\n## Steps\n\n${[...before, opens, ...below].join('\n')}\n`},
  });
}
