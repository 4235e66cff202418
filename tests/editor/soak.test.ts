/** A short soak of the editor's core; `npm run soak` is the long one. */
import {expect, it} from 'vitest';
import {soak} from '../soak/soak.js';

it.each([1, 2])('finds what a fresh check finds, after each of 120 random edits (seed %i)', async (seed) => {
  const {edits, disagreement} = await soak(120, seed);
  expect(disagreement).toBeUndefined();
  expect(edits).toBe(120);
});
