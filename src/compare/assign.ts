/**
 * Matches what order left over: each takes the most alike that is still free, the closest pair first, which is the
 * stable matching (D. Gale and L. Shapley, Amer. Math. Monthly 69 (1962) 9) where likeness is mutual.
 */
import type {Pair} from './align.js';
import {ALIKE, type Features, likeness} from './likeness.js';

/** Pairs of indexes into the two lists, each index at most once. */
export function assign(before: readonly Features[], now: readonly Features[]): Pair[] {
  const byTrait = traits(now);
  const candidates = before.flatMap((one, a) =>
    [...rivals(one, byTrait)].flatMap((b) => {
      const other = now[b];
      const worth = other === undefined ? 0 : likeness(one, other);
      return worth >= ALIKE ? [{a, b, worth}] : [];
    }),
  );
  candidates.sort((one, other) => other.worth - one.worth || one.a - other.a || one.b - other.b);
  const [usedBefore, usedNow] = [new Set<number>(), new Set<number>()];
  return candidates.flatMap(({a, b}): Pair[] => {
    if (usedBefore.has(a) || usedNow.has(b)) return [];
    usedBefore.add(a);
    usedNow.add(b);
    return [[a, b]];
  });
}

/** Only steps that share a deed, or (where they have none) their first word, are worth a look. */
function traits(list: readonly Features[]): Map<string, number[]> {
  const map = new Map<string, number[]>();
  for (const [index, features] of list.entries()) {
    for (const trait of traitsOf(features)) {
      const known = map.get(trait);
      if (known === undefined) map.set(trait, [index]);
      else known.push(index);
    }
  }
  return map;
}

function traitsOf({deeds, words}: Features): readonly string[] {
  return deeds.length > 0 ? [...new Set(deeds)] : [words.slice(0, 2).join(' ')];
}

function rivals(one: Features, byTrait: ReadonlyMap<string, readonly number[]>): Set<number> {
  return new Set(traitsOf(one).flatMap((trait) => byTrait.get(trait) ?? []));
}
