/** The reviewer's benchmark in small: a generated book, some of its edits, and how they are placed. */
import {expect, it} from 'vitest';
import {generatedClean} from '../omissions/generated.js';
import {type Placed, placed, reviewsOf} from './run.js';

const book = generatedClean(5, 5);
const reviews = reviewsOf(book);

function rows(expected: Placed['expected']): readonly Placed[] {
  const few = <T extends {readonly expected: string}>(list: readonly T[]) =>
    list.filter((review) => review.expected === expected).filter((_, index) => index % 3 === 0);
  return placed(book, {there: few(reviews.there), back: few(reviews.back)});
}

function made(some: readonly Placed[]): number {
  return some.reduce((sum, {as}) => sum + [...as.values()].reduce((a, b) => a + b, 0), 0);
}

it('sees every weakening as one', () => {
  const weakened = rows('weakened');
  expect(weakened.flatMap(({wrong}) => wrong)).toEqual([]);
  expect(made(weakened)).toBeGreaterThan(30);
});

it('calls no harmless edit weakened', () => {
  const harmless = rows('harmless');
  expect(harmless.flatMap(({wrong}) => wrong)).toEqual([]);
  expect(made(harmless)).toBeGreaterThan(30);
});

it('sees what is added as a strengthening', () => {
  const strengthened = rows('strengthened');
  expect(strengthened.flatMap(({wrong}) => wrong)).toEqual([]);
  expect(made(strengthened)).toBeGreaterThan(5);
});
