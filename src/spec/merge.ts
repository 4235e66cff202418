/** An engine.yaml joined with those that it extends: an item of the child replaces the base's item of that id. */
import {addAll} from '../text/add-all.js';
import type {Problem} from '../text/problem.js';
import type {BookFile} from './file.js';
import type {ItemKind} from './model.js';
import {nearName} from './near.js';
import {type RawItem, rawItem} from './raw.js';
import {ENGINE_SECTIONS} from './sections.js';
import {type Entry, entryOf} from './tree.js';

/** An entry of a section and the file that it stands in. */
export interface Owned {
  readonly entry: Entry;
  readonly file: BookFile;
}

/** Every item of the engine. `chain` is nearest first: the engine.yaml itself, then its base, and so on. */
export function engineItems(chain: readonly BookFile[], problems: Problem[]): RawItem[] {
  return Object.entries(ENGINE_SECTIONS).flatMap(([section, kind]) => {
    const merged = mergedSection(chain, section, problems);
    return merged.map(({entry, file}) => rawItem(kind, entry, file.fileSource));
  });
}

/** The items of a section of a file that extends nothing. */
export function plainItems(file: BookFile, section: string, kind: ItemKind): RawItem[] {
  const value = entryOf(file.tree, section)?.value;
  const entries = value?.type === 'map' ? value.entries : [];
  return entries.map((entry) => rawItem(kind, entry, file.fileSource));
}

/** The entries of a section after the bases, the farthest first; an entry without a value drops the base's. */
export function mergedSection(chain: readonly BookFile[], section: string, problems: Problem[]): Owned[] {
  const merged = new Map<string, Owned>();
  // The farthest base first: a Map keeps the place of a key that is set again, so an item stays where its base has it.
  for (const file of chain.toReversed()) {
    const value = entryOf(file.tree, section)?.value;
    for (const entry of value?.type === 'map' ? value.entries : []) {
      if (entry.value.type !== 'empty') merged.set(entry.key, {entry, file});
      else if (!merged.delete(entry.key))
        addAll(problems, dropsNothing({entry, file}, chain, merged.keys(), problems.length));
    }
  }
  return [...merged.values()];
}

/** What is wrong with an entry without a value of which no base has anything; `before` counts the problems there are. */
function dropsNothing(
  {entry: {key, keyWhere}, file}: Owned,
  chain: readonly BookFile[],
  known: Iterable<string>,
  before: number,
): Problem[] {
  const says = `${key} says nothing`;
  const builds = entryOf(file.tree, 'extends') !== undefined;
  if (!builds) {
    return [{name: 'spec-form', where: keyWhere, says, hint: 'write its name, or {}', item: key}];
  }
  // A base that could not be had is a problem of its own.
  if (file === chain.at(-1)) return [];
  const near = nearName(key, known, before);
  return [
    {
      name: 'unknown-item',
      where: keyWhere,
      says: `the base has no ${key} here that could be dropped`,
      hint: near === undefined ? 'take the line out' : `did you mean ${near}?`,
    },
  ];
}
