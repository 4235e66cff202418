/**
 * Lays two lists of steps beside each other in order: lines that are the same and stand once on both sides anchor
 * the two (patience diff: longest increasing run of unique matches), and between anchors the alignment with the
 * greatest likeness is found (S. Needleman and C. Wunsch, J. Mol. Biol. 48 (1970) 443, no gap penalty; from memory).
 */
import {addAll} from '../text/add-all.js';
import {ALIKE, type Features, likeness} from './likeness.js';

/** Indexes of two that belong together. */
export type Pair = readonly [before: number, now: number];

/** Pairs in order; each index at most once. */
export function align(before: readonly Features[], now: readonly Features[]): Pair[] {
  const pairs: Pair[] = [];
  let [fromBefore, fromNow] = [0, 0];
  for (const [a, b] of [...anchors(before, now), [before.length, now.length] as const]) {
    addAll(pairs, between(before, now, {fromBefore, toBefore: a, fromNow, toNow: b}));
    if (a < before.length) pairs.push([a, b]);
    [fromBefore, fromNow] = [a + 1, b + 1];
  }
  return pairs;
}

/** Unique equal lines that rise on both sides: patience sorting keeps the longest run of them. */
function anchors(before: readonly Features[], now: readonly Features[]): Pair[] {
  const there = uniqueKeys(now);
  const unique = [...uniqueKeys(before)].flatMap(([key, a]): Pair[] => {
    const b = there.get(key);
    return b === undefined ? [] : [[a, b]];
  });
  return longestRising(unique.sort(([a], [b]) => a - b));
}

function uniqueKeys(list: readonly Features[]): Map<string, number> {
  const seen = new Map<string, number>();
  const twice = new Set<string>();
  for (const [index, {key}] of list.entries()) {
    if (seen.has(key)) twice.add(key);
    else seen.set(key, index);
  }
  for (const key of twice) seen.delete(key);
  return seen;
}

interface Card {
  readonly pair: Pair;
  readonly behind?: Card | undefined;
}

function longestRising(pairs: readonly Pair[]): Pair[] {
  const piles: Card[] = [];
  for (const pair of pairs) {
    let [low, high] = [0, piles.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((piles[middle]?.pair[1] ?? 0) < pair[1]) low = middle + 1;
      else high = middle;
    }
    piles[low] = {pair, behind: piles[low - 1]};
  }
  const run: Pair[] = [];
  for (let card = piles.at(-1); card !== undefined; card = card.behind) run.push(card.pair);
  return run.reverse();
}

interface Gap {
  readonly fromBefore: number;
  readonly toBefore: number;
  readonly fromNow: number;
  readonly toNow: number;
}

/** A table larger than this is not filled: what stands in so wide a gap is matched without regard to order. */
const LARGEST_TABLE = 250_000;

function between(before: readonly Features[], now: readonly Features[], gap: Gap): Pair[] {
  const a = before.slice(gap.fromBefore, gap.toBefore);
  const b = now.slice(gap.fromNow, gap.toNow);
  if (a.length * b.length === 0 || a.length * b.length > LARGEST_TABLE) return [];
  return best(a, b).map(([i, j]) => [gap.fromBefore + i, gap.fromNow + j]);
}

function best(a: readonly Features[], b: readonly Features[]): Pair[] {
  const width = b.length + 1;
  const score = new Float64Array((a.length + 1) * width);
  const at = (i: number, j: number) => score[i * width + j] ?? 0;
  const alike = a.map((one) => b.map((other) => likeness(one, other)));
  for (let i = a.length - 1; i >= 0; i--) {
    for (let j = b.length - 1; j >= 0; j--) {
      score[i * width + j] = Math.max(at(i + 1, j), at(i, j + 1), joined(alike, i, j) + at(i + 1, j + 1));
    }
  }
  const pairs: Pair[] = [];
  for (let [i, j] = [0, 0]; i < a.length && j < b.length; ) {
    const both = joined(alike, i, j);
    if (both > 0 && at(i, j) === both + at(i + 1, j + 1)) pairs.push([i++, j++]);
    else if (at(i, j) === at(i + 1, j)) i++;
    else j++;
  }
  return pairs;
}

function joined(alike: readonly (readonly number[])[], i: number, j: number): number {
  const worth = alike[i]?.[j] ?? 0;
  return worth >= ALIKE ? worth : 0;
}
