/** Whether words that follow `oil` or `clean` make a statement of it. Sentences are ours, in the way that shops write. */
import {expect, it} from 'vitest';
import {declares} from '../../src/findings/shop-grammar.js';

it.each<[rest: string, statement: boolean]>([
  ['the threads', false],
  ['is on the threads', true],
  ['that is on the threads', false],
  ['on threads that are dry', false],
  ['of that size is right', true],
  ['in which it is kept', false],
  ['in the gap runs out', true],
  ['runs out', true],
  ['runs', false],
  ['the runs in the paint', false],
  ['every cap with runs in it', false],
  ['o-rings well', false],
  ['ss well', false],
  ['bolts turn', true],
  ['dust stop', false],
  ['gloss turn', false],
])('oil %s: %s', (rest, statement) => {
  expect(declares(rest.split(' '))).toBe(statement);
});
