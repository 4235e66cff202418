/** Compares every edit of a book with the book, and counts how the comparison placed it against how it should. */
import type {Book} from '../../src/build/book.js';
import {compareBooks} from '../../src/compare/compare.js';
import type {Effect} from '../../src/compare/model.js';
import {check} from '../../src/findings/check.js';
import {type Review, worst} from './edited.js';
import {harmless} from './harmless.js';
import {reversed, stronger} from './stronger.js';
import {weaker} from './weaker.js';

export interface Placed {
  readonly kind: string;
  readonly expected: Review['expected'];
  readonly as: Map<Effect | 'nothing', number>;
  readonly wrong: string[];
}

export interface Reviews {
  readonly there: readonly Review[];
  /** From the edited book back to the clean one. */
  readonly back: readonly Review[];
}

export function reviewsOf(book: Book): Reviews {
  return {there: [...harmless(book), ...weaker(book), ...stronger(book)], back: reversed(book)};
}

export function placed(book: Book, {there, back}: Reviews): Placed[] {
  const byKind = new Map<string, Placed>();
  const findings = check(book).findings;
  const clean = {book, jobs: [], findings};
  const judge = (one: Book) => check(one).findings;
  const count = (review: Review, effect: Effect | 'nothing') => {
    const row: Placed = byKind.get(review.kind) ?? {
      kind: review.kind,
      expected: review.expected,
      as: new Map(),
      wrong: [],
    };
    byKind.set(review.kind, row);
    row.as.set(effect, (row.as.get(effect) ?? 0) + 1);
    if (isWrong(review, effect)) row.wrong.push(`${review.kind}: ${review.at}: ${effect}`);
  };
  for (const review of there) {
    const after = review.after();
    const {changes} = compareBooks(clean, {book: after, jobs: [], findings: judge(after)}, judge);
    count(review, worst(changes.map(({effect}) => effect)));
  }
  for (const review of back) {
    const weak = review.after();
    const {changes} = compareBooks({book: weak, jobs: [], findings: judge(weak)}, clean, judge);
    count(review, worst(changes.map(({effect}) => effect)));
  }
  return [...byKind.values()];
}

function isWrong({expected}: Review, effect: Effect | 'nothing'): boolean {
  if (expected === 'harmless') return effect === 'weakened';
  return effect !== expected;
}
