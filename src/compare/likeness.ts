/** How alike two steps or cautions are: by Dice's coefficient over what their tags do and over their words. */
import type {Step} from '../procedure/model.js';

/** What a step is known by, worked out once. */
export interface Features {
  readonly id?: string;
  /** `verb item`, ids as the new side calls them. */
  readonly deeds: readonly string[];
  readonly words: readonly string[];
  /** The same key, the same step but for white space. */
  readonly key: string;
}

/** `idNow` gives the new name of an item of the old side. */
export function featuresOf({tags, text, id}: Step, idNow: (id: string) => string): Features {
  const deeds = tags.flatMap(({verb, targets}) => targets.map((target) => `${verb} ${idNow(target.id)}`));
  const words = wordsOf(text);
  return {deeds, words, key: `${deeds.join()}\n${words.join(' ')}`, ...(id !== undefined && {id})};
}

/** Words and numbers in small letters, marks between them left out. */
export function wordsOf(text: string): readonly string[] {
  return text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];
}

/** Steps less alike than this are not taken for the same. */
export const ALIKE = 0.5;

/** Words as alike as this are the same sentence. */
const SAME_WORDS = 0.85;

/**
 * From 0 to 1. What the tags do counts more than how it is said: a step that is worded anew is still the step that
 * wires the bolts.
 */
export function likeness(a: Features, b: Features): number {
  if (a.key === b.key) return 1;
  const words = dice(a.words, b.words);
  if (a.deeds.length === 0 && b.deeds.length === 0) return words;
  const named = a.id !== undefined && a.id === b.id ? 0.2 : 0;
  const weighed = 0.65 * dice(a.deeds, b.deeds) + 0.35 * words + named;
  // A step whose words stayed is the same step, though it lost its tags or got others.
  return Math.min(0.99, words >= SAME_WORDS ? Math.max(weighed, 0.6 * words) : weighed);
}

/**
 * Dice's coefficient of two lists with their repetitions: twice what they share over what they hold together
 * (L. R. Dice, Ecology 26 (1945) 297; from memory).
 */
export function dice(a: readonly string[], b: readonly string[]): number {
  if (a.length + b.length === 0) return 1;
  const counts = new Map<string, number>();
  for (const one of a) counts.set(one, (counts.get(one) ?? 0) + 1);
  let shared = 0;
  for (const one of b) {
    const left = counts.get(one) ?? 0;
    if (left === 0) continue;
    counts.set(one, left - 1);
    shared++;
  }
  return (2 * shared) / (a.length + b.length);
}
