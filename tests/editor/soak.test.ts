/** A short soak of the editor's core; `npm run soak` is the long one. */
import {expect, it} from 'vitest';
import {soak} from '../soak/soak.js';

it.each([
  [120, 1, 'small'],
  [60, 2, 'small'],
  [60, 3, 'long'],
  [10, 4, 'demo'],
] as const)(
  'finds what a fresh check finds, after each of %i random edits (seed %i, %s book)',
  async (count, seed, book) => {
    const {edits, disagreement} = await soak(count, seed, book);
    expect(disagreement).toBeUndefined();
    expect(edits).toBe(count);
  },
);
