/** The values of a tag's clauses, and what the specification says where the tag leaves a clause out. */
import type {Tag} from '../procedure/model.js';
import {clauseOf} from '../procedure/values.js';
import type {ClauseWord} from '../procedure/verbs.js';
import type {Amount} from '../quantity/model.js';
import {locksOf} from '../spec/locks.js';
import type {Item, Specification} from '../spec/model.js';
import type {Use} from './context.js';

/** Ids with what the author wrote after them: `safety-wire` and `0.041 in`. */
export interface Named {
  readonly id: string;
  readonly rest: string;
}

/** The ids that a tag states under a word, or none. */
export function statedNames(tag: Tag, word: ClauseWord): readonly Named[] {
  const value = clauseOf(tag, word)?.value;
  return value?.type === 'ids' ? value.ids.map(({id, rest}) => ({id, rest: rest.trim()})) : [];
}

/** Ids that the specification gives for a clause which the tag leaves out; any one of them will do, but of locks all go on. */
export function specifiedIds(use: Use, word: 'with' | 'using' | 'by'): readonly string[] {
  const {item, tag} = use;
  if (item === undefined) return [];
  if (word === 'with') return specifiedMaterials(item, tag);
  if (word === 'by') return tag.verb === 'alter' && item.kind === 'part' ? ids(item.alterations) : [];
  return specifiedTools(item, tag);
}

function specifiedMaterials(item: Item, tag: Tag): readonly string[] {
  if (tag.verb === 'lube' && item.kind === 'surface') return ids(item.lubricants);
  if (tag.verb === 'lube' && item.kind === 'fastener') return listOf(item.threads?.value);
  if (tag.verb === 'seal' && item.kind === 'joint') return listOf(item.seal?.value);
  if (tag.verb === 'fill' && item.kind === 'system') return ids(item.with);
  return tag.verb === 'lock' && item.kind === 'fastener' ? locksOf(item) : [];
}

function specifiedTools(item: Item, tag: Tag): readonly string[] {
  if (tag.verb === 'install' && item.kind === 'part') return ids(item.using);
  // The strip of a fit may be stated as a material or as a tool: either says what reads it.
  const read = tag.verb === 'measure' || tag.verb === 'lay';
  if (read && item.kind === 'fit') return clauseOf(tag, 'with') === undefined ? ids(item.using) : [];
  return tag.verb === 'check' && item.kind === 'check' ? ids(item.using) : [];
}

function ids(located: readonly {readonly value: string}[]): readonly string[] {
  return located.map(({value}) => value);
}

function listOf(value: string | readonly string[] | undefined): readonly string[] {
  return value === undefined || typeof value === 'string' ? [] : value;
}

/** What the specification gives for a value which the tag leaves out: an amount, or a word such as `snug`. */
export function specifiedAmount(
  use: Use,
  word: ClauseWord,
  spec: Specification,
): Amount | string | undefined {
  const {item, tag} = use;
  if (item?.kind === 'fastener' && tag.verb === 'torque') {
    if (word === 'to') return item.torque?.value;
    return word === 'turn' ? item.angle?.value : undefined;
  }
  if (item?.kind === 'fit' && tag.verb === 'measure' && word === 'within') return item.limits?.value;
  if (item?.kind === 'check' && tag.verb === 'check' && word === 'within') return item.limits?.value;
  if (tag.verb === 'cure' && word === 'for') return cureOf(item, spec);
  return undefined;
}

/** A consumable's own time; for a joint, that of the first sealant of its specification which has one. */
function cureOf(item: Item | undefined, spec: Specification): Amount | undefined {
  if (item?.kind === 'consumable') return item.cure?.value;
  if (item?.kind !== 'joint') return undefined;
  for (const id of listOf(item.seal?.value)) {
    const sealant = spec.items.get(id);
    if (sealant?.kind === 'consumable' && sealant.cure !== undefined) return sealant.cure.value;
  }
  return undefined;
}
