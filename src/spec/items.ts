/** Ways into the items of a specification that every reader of one needs. */
import type {Item, ItemKind, ItemOf, Specification} from './model.js';

/** Every item of a kind, in the order in which the files name them. */
export function itemsOfKind<K extends ItemKind>(from: Pick<Specification, 'items'>, kind: K): ItemOf<K>[] {
  return [...from.items.values()].filter((item): item is ItemOf<K> => item.kind === kind);
}

/** The places of an item: `['']`, the one unnamed place, where it names none. */
export function placesOf(item: Pick<Item, 'at'>): readonly string[] {
  return item.at.length === 0 ? UNNAMED : item.at;
}

const UNNAMED: readonly string[] = [''];
