/** Items and places that are called otherwise now: the same in everything else, or the most alike in fields and steps. */
import type {Book} from '../build/book.js';
import type {Item, Specification} from '../spec/model.js';
import {grouped} from '../text/grouped.js';
import {demandsOf} from './demands.js';
import {likelyRenames} from './likely-renames.js';
import {dice} from './likeness.js';
import {letterPairs, withoutNames} from './names.js';
import {valueSays} from './values.js';

/** What is only called otherwise now, so that nobody takes it for gone and come. */
export interface Renames {
  /** From the id of the old side to that of the new one; an id that stays is not in it. */
  readonly items: ReadonlyMap<string, string>;
  /** By new id of the item: its old places to the new ones. */
  readonly places: ReadonlyMap<string, ReadonlyMap<string, string>>;
}

/** Items first: the places of two items are held together only where both are one item. */
export function renamesOf({spec: before, procedures}: Book, fresh: Book): Renames {
  const now = fresh.spec;
  const same = renamedItems(before, now);
  const alike = likelyRenames({spec: before, procedures}, fresh, same);
  const items = new Map([...same, ...alike]);
  const places = new Map<string, ReadonlyMap<string, string>>();
  for (const item of before.items.values()) {
    const other = now.items.get(items.get(item.id) ?? item.id);
    const moved = other === undefined ? new Map<string, string>() : renamedPlaces(item.at, other.at);
    if (other !== undefined && moved.size > 0) places.set(other.id, moved);
  }
  return {items, places};
}

/** The new name of an item of the old side. */
export function idNow({items}: Renames, id: string): string {
  return items.get(id) ?? id;
}

/** The item of the old side's specification that has this name on the new side; undefined where it is new. */
export function itemBefore(
  before: Pick<Specification, 'items'>,
  {items}: Renames,
  id: string,
): Item | undefined {
  for (const [old, fresh] of items) if (fresh === id) return before.items.get(old);
  // A name that stayed; but one that was given away is that of another item now.
  return items.has(id) ? undefined : before.items.get(id);
}

/** The new name of a place of an item, which is named as the new side does. */
export function placeNow({places}: Renames, item: string, place: string): string {
  return places.get(item)?.get(place) ?? place;
}

/**
 * Two ids are one item where kind and demands are the same once names that one side lacks are left out of them;
 * where several are, the names decide.
 */
function renamedItems(before: Specification, now: Specification): Map<string, string> {
  const found = new Map<string, string>();
  const gone = [...before.items.values()].filter(({id}) => !now.items.has(id));
  const come = [...now.items.values()].filter(({id}) => !before.items.has(id));
  const absent = new Set([...gone, ...come].map(({id}) => id));
  if (gone.length === 0 || come.length === 0) return found;
  const bySignature = grouped(come, (item) => signature(item, absent));
  const taken = new Set<string>();
  for (const item of gone) {
    const rivals = (bySignature.get(signature(item, absent)) ?? []).filter(({id}) => !taken.has(id));
    const best = nearestName(
      item.id,
      rivals.map(({id}) => id),
    );
    if (best === undefined) continue;
    found.set(item.id, best);
    taken.add(best);
  }
  return found;
}

/** By pairs of letters that the names share; the first where none shares any. */
function nearestName(id: string, rivals: readonly string[]): string | undefined {
  const scored = rivals.map((rival) => ({rival, worth: dice(letterPairs(id), letterPairs(rival))}));
  scored.sort((a, b) => b.worth - a.worth);
  return scored[0]?.rival;
}

function signature(item: Item, absent: ReadonlySet<string>): string {
  const demands = demandsOf(item)
    .filter(({value}) => value.type !== 'text')
    .map(({aspect, about, value}) => {
      const shown = about !== undefined && absent.has(about) ? aspect.slice(0, -about.length) : aspect;
      return `${shown}=${valueSays(withoutNames(value, absent))}`;
    });
  return JSON.stringify([item.kind, item.at, ...demands.sort()]);
}

/** As many places as before, some under other names: in the order in which they are listed. */
function renamedPlaces(before: readonly string[], now: readonly string[]): Map<string, string> {
  const gone = before.filter((place) => !now.includes(place));
  const come = now.filter((place) => !before.includes(place));
  if (before.length !== now.length || gone.length !== come.length) return new Map();
  return new Map(gone.map((place, index) => [place, come[index] ?? place]));
}
