/** Every name in a specification that must be the name of something, and what is wrong with those that are not. */
import {nearest} from '../text/nearest.js';
import type {Problem} from '../text/problem.js';
import type {Where} from '../text/source.js';
import type {Item, ItemKind, SourceNote} from './model.js';
import {KIND_SAYS, SECTION_OF} from './sections.js';

/** A name where it is written, and what it may be the name of. */
export interface Reference {
  readonly id: string;
  readonly where: Where;
  readonly kinds: readonly ItemKind[];
  /** Words that may stand there too, for hints. */
  readonly words?: readonly string[];
  /** The item that names it, where one does. */
  readonly item?: string;
}

export interface SourceReference {
  readonly id: string;
  readonly where: Where;
  readonly item?: string;
}

/** Looking for a near name takes time with the number of names: past this many unknown ones, none is looked for. */
const HINTS = 100;

/** References to nothing, and to an item of a kind that cannot stand there. */
export function referenceProblems(
  references: readonly Reference[],
  items: ReadonlyMap<string, Item>,
): Problem[] {
  const unknown = new Set<string>();
  return references.flatMap((reference) => {
    const item = items.get(reference.id);
    if (item === undefined) {
      unknown.add(reference.id);
      return [unknownItem(reference, unknown.size <= HINTS ? items : new Map())];
    }
    return reference.kinds.includes(item.kind) ? [] : [wrongKind(reference, item)];
  });
}

/** References to sources that neither shop.yaml nor engine.yaml lists. */
export function sourceProblems(
  references: readonly SourceReference[],
  sources: ReadonlyMap<string, SourceNote>,
): Problem[] {
  const unknown = new Set<string>();
  return references.flatMap(({id, where, item}): Problem[] => {
    if (sources.has(id)) return [];
    unknown.add(id);
    const near = unknown.size <= HINTS ? nearest(id, sources.keys()) : undefined;
    const hint = near === undefined ? `add ${id} under sources:` : `did you mean ${near}?`;
    return [{name: 'unknown-item', where, says: `${id} is not a source`, hint, ...(item && {item})}];
  });
}

function unknownItem(reference: Reference, items: ReadonlyMap<string, Item>): Problem {
  const {id, where, item} = reference;
  return {
    name: 'unknown-item',
    where,
    says: `nothing is called ${id}`,
    hint: unknownHint(reference, items),
    ...(item && {item}),
  };
}

/** Only names that could stand there are offered: a near one of another kind would only lead astray. */
function unknownHint({id, kinds, words = []}: Reference, items: ReadonlyMap<string, Item>): string {
  const fitting = [...items.values()].filter((item) => kinds.includes(item.kind)).map((item) => item.id);
  const near = nearest(id, [...words, ...fitting]);
  if (near !== undefined) return `did you mean ${near}?`;
  if (kinds.length > 3) return 'add it to engine.yaml';
  return `add it under ${alternatives(kinds.map((kind) => `${SECTION_OF[kind]}:`))}`;
}

function wrongKind({id, where, kinds, item}: Reference, found: Item): Problem {
  return {
    name: 'wrong-kind',
    where,
    says: `${id} is ${KIND_SAYS[found.kind]} where ${alternatives(kinds.map((kind) => KIND_SAYS[kind]))} is due`,
    related: [{where: found.where, says: `${id} is here`}],
    ...(item && {item}),
  };
}

function alternatives(words: readonly string[]): string {
  if (words.length <= 1) return words[0] ?? '';
  return `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`;
}
