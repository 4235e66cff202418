/** Ways into the items of a specification that every reader of one needs. */
import type {Item, ItemKind, ItemOf, Specification} from './model.js';

/** Every item of a kind, in the order in which the files name them. */
export function itemsOfKind<K extends ItemKind>(from: Pick<Specification, 'items'>, kind: K): ItemOf<K>[] {
  return [...from.items.values()].filter((item): item is ItemOf<K> => item.kind === kind);
}

/** The places of an item: `['']`, the one unnamed place, where it names none, so that facts have a place in any case. */
export function placesOf(item: Pick<Item, 'at'>): readonly string[] {
  return item.at.length === 0 ? UNNAMED : item.at;
}

const UNNAMED: readonly string[] = [''];

/** Names of places in the order of `at`; as they are where one of them is unknown. */
export function inOrderOf(names: readonly string[], at: readonly string[]): readonly string[] {
  if (names.some((name) => !at.includes(name))) return names;
  return [...names].sort((one, other) => at.indexOf(one) - at.indexOf(other));
}
