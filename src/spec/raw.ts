/** An item as written, joined with what it extends and with practice, before its fields are read. */
import type {Where} from '../text/source.js';
import type {ItemKind} from './model.js';
import {type Entry, isScalar, type Node, valueAt} from './tree.js';

export interface RawItem {
  readonly kind: ItemKind;
  readonly id: string;
  /** Where its id is written. */
  readonly where: Where;
  readonly fields: ReadonlyMap<string, Field>;
  /** False where what is written cannot be an item, so that nothing follows from what it lacks. */
  readonly readable: boolean;
}

export interface Field extends Entry {
  /** The source that the file gives to all of its values. */
  readonly fileSource?: string;
  /** Set where practice states the field, and not the item. */
  readonly practice?: {readonly source?: string};
}

/** One item of a section; a plain string is its name. */
export function rawItem(kind: ItemKind, entry: Entry, fileSource: string | undefined): RawItem {
  const {key: id, keyWhere: where, value} = entry;
  // `crankshaft: the crank` is short for an item with nothing but a name.
  const named = isScalar(value) && value.type !== 'empty';
  const entries = value.type === 'map' ? value.entries : named ? [{key: 'name', keyWhere: where, value}] : [];
  const fields = new Map<string, Field>();
  for (const one of entries) {
    const {key, keyWhere, value: said} = one;
    fields.set(key, fileSource === undefined ? one : {key, keyWhere, value: said, fileSource});
  }
  return {kind, id, where, fields, readable: value.type === 'map' || named};
}

/** The value of a field that may be wrapped in where it comes from. */
export interface Stated {
  readonly value: Node;
  readonly source?: Node;
  readonly note?: Node;
  readonly because?: Node;
}

/**
 * Takes the wrapping off; undefined where it holds no value. Any map counts as wrapping: fields whose own value is a map
 * (`when`, `layout`, `sizes`) are never read this way.
 */
export function statedOf(value: Node): Stated | undefined {
  if (value.type !== 'map') return {value};
  const part = (key: string) => valueAt(value, key);
  const inner = part('value');
  if (inner === undefined) return undefined;
  const [source, note, because] = [part('source'), part('note'), part('because')];
  return {value: inner, ...(source && {source}), ...(note && {note}), ...(because && {because})};
}
