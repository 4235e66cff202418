/** Every name in a specification that must be the name of something, and what is wrong with those that are not. */
import {alternatives} from '../text/alternatives.js';
import type {Problem} from '../text/problem.js';
import type {Where} from '../text/source.js';
import type {Item, ItemKind, SourceNote} from './model.js';
import {nearName} from './near.js';
import {KIND_SAYS, SECTION_OF} from './sections.js';
import {mayBear, type WrittenOver} from './written-over.js';

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

/** References to nothing, and to an item of a kind that cannot stand there. */
export function referenceProblems(
  references: readonly Reference[],
  items: ReadonlyMap<string, Item>,
  over: readonly WrittenOver[] = [],
): Problem[] {
  // A name is looked for once, however often it is misspelt: a search goes through every item there is.
  const hints = new Map<string, Hint>();
  return references.flatMap((reference) => {
    const item = items.get(reference.id);
    if (item === undefined) {
      const unknown = unknownItem(reference, hintFor(reference, items, hints));
      return [{...unknown, ...mayBear(over, reference.kinds)}];
    }
    return reference.kinds.includes(item.kind) ? [] : [wrongKind(reference, item)];
  });
}

/** References to sources that neither shop.yaml nor engine.yaml lists. */
export function sourceProblems(
  references: readonly SourceReference[],
  sources: ReadonlyMap<string, SourceNote>,
): Problem[] {
  const hints = new Map<string, string>();
  return references.flatMap(({id, where, item}): Problem[] => {
    if (sources.has(id)) return [];
    const near = hints.has(id) ? undefined : nearName(id, sources.keys(), hints.size);
    const hint = hints.get(id) ?? (near === undefined ? `add ${id} under sources:` : `did you mean ${near}?`);
    hints.set(id, hint);
    return [{name: 'unknown-item', where, says: `${id} is not a source`, hint, ...(item && {item})}];
  });
}

/** What to do about a name, and the near one where there is one. */
interface Hint {
  readonly says: string;
  readonly near?: string;
}

function unknownItem({id, where, item}: Reference, {says: hint, near}: Hint): Problem {
  const edits = [{span: where.span, text: near ?? ''}];
  return {
    name: 'unknown-item',
    where,
    says: `nothing is called ${id}`,
    hint,
    ...(item && {item}),
    ...(near !== undefined && {fix: {title: `Write ${near}`, file: where.file, edits}}),
  };
}

/** Only names that could stand there are offered: a near one of another kind would only lead astray. */
function hintFor(
  {id, kinds, words = []}: Reference,
  items: ReadonlyMap<string, Item>,
  hints: Map<string, Hint>,
): Hint {
  const slot = [id, ...kinds].join(' ');
  const known = hints.get(slot);
  if (known !== undefined) return known;
  const near = nearName(id, candidates(words, items, kinds), hints.size);
  const hint = near === undefined ? {says: whereToAdd(kinds)} : {says: `did you mean ${near}?`, near};
  hints.set(slot, hint);
  return hint;
}

/** A list of more than three sections says no more than that it is one of the engine's. */
function whereToAdd(kinds: readonly ItemKind[]): string {
  if (kinds.length > 3) return 'add it to engine.yaml';
  return `add it under ${alternatives(kinds.map((kind) => `${SECTION_OF[kind]}:`))}`;
}

function* candidates(
  words: readonly string[],
  items: ReadonlyMap<string, Item>,
  kinds: readonly ItemKind[],
): Iterable<string> {
  yield* words;
  for (const item of items.values()) if (kinds.includes(item.kind)) yield item.id;
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
