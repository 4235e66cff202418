/** Which deed of the new side is which of the old: by verb, item and place, first within steps that belong together. */
import type {StepRef} from '../build/program.js';
import {idsOf} from '../procedure/values.js';
import {grouped} from '../text/grouped.js';
import type {Deed} from './deeds.js';
import {idNow, placeNow, type Renames} from './renames.js';

/** What is done on both sides, on the old one only, and on the new one only. */
export interface MatchedDeeds {
  readonly kept: readonly (readonly [before: Deed, now: Deed])[];
  readonly gone: readonly Deed[];
  readonly come: readonly Deed[];
}

/**
 * Of deeds alike in verb, item and place those in steps that belong together are one, then those done under the same
 * conditions, then any: what is done once more or once fewer is counted, wherever it stands.
 */
export function matchDeeds(
  before: readonly Deed[],
  now: readonly Deed[],
  nowOf: ReadonlyMap<StepRef, StepRef>,
  renames: Renames,
): MatchedDeeds {
  const theirs = grouped(now, (deed) => keyOf(deed.verb, deed.item, deed.place));
  const ours = grouped(before, (deed) => deedKey(deed, renames));
  const kept: (readonly [Deed, Deed])[] = [];
  const gone: Deed[] = [];
  for (const [key, deeds] of ours) {
    const free = theirs.get(key) ?? [];
    const inStep = (a: Deed, b: Deed) => nowOf.get(a.step) === b.step;
    // One step may put two locks on the same fastener.
    const others = take(deeds, free, kept, (a, b) => inStep(a, b) && withOf(a, renames) === withOf(b));
    const left = take(others, free, kept, inStep);
    const alike = take(left, free, kept, (a, b) => a.when.join() === b.when.join());
    gone.push(...take(alike, free, kept, () => true));
  }
  return {kept, gone, come: [...theirs.values()].flat()};
}

/** Pairs off those that fit, takes the partners out of `free`, and returns those that found none. */
function take(
  deeds: readonly Deed[],
  free: Deed[],
  kept: (readonly [Deed, Deed])[],
  fits: (before: Deed, now: Deed) => boolean,
): Deed[] {
  return deeds.filter((deed) => {
    const index = free.findIndex((other) => fits(deed, other));
    const [found] = index === -1 ? [] : free.splice(index, 1);
    if (found !== undefined) kept.push([deed, found]);
    return found === undefined;
  });
}

/** The materials that the tag names, under the names of the new side. */
function withOf({tag}: Deed, renames?: Renames): string {
  return idsOf(tag, 'with')
    .map((id) => (renames === undefined ? id : idNow(renames, id)))
    .join();
}

/** The key of a deed of the old side under the names of the new one. */
function deedKey({verb, item, place}: Deed, renames: Renames): string {
  const id = idNow(renames, item);
  return keyOf(verb, id, placeNow(renames, id, place));
}

function keyOf(verb: string, item: string, place: string): string {
  return `${verb} ${item} ${place}`;
}
