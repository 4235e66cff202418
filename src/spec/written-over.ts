/**
 * Items whose name is that of another of their section: what they are really called is not known, so that a name that
 * leads nowhere may be theirs.
 */
import type {Problem} from '../text/problem.js';
import type {Where} from '../text/source.js';
import type {BookFile} from './file.js';
import type {ItemKind} from './model.js';
import {ENGINE_SECTIONS, SHOP_SECTIONS} from './sections.js';
import {entryOf} from './tree.js';

export interface WrittenOver {
  readonly kind: ItemKind;
  /** The second key of one name. */
  readonly where: Where;
}

/** Every second key in a section of items, of all files. */
export function writtenOver(files: readonly BookFile[]): WrittenOver[] {
  return files.flatMap(({tree, problems}) => {
    const firsts = firstKeys(problems);
    if (firsts.size === 0) return [];
    return Object.entries({...ENGINE_SECTIONS, ...SHOP_SECTIONS}).flatMap(([section, kind]) => {
      const items = entryOf(tree, section)?.value;
      const entries = items?.type === 'map' ? items.entries : [];
      return entries.flatMap(({keyWhere}) => (firsts.get(keyWhere) ?? []).map((where) => ({kind, where})));
    });
  });
}

/** Of a name that leads nowhere, the second key that may be meant to bear it. */
export function mayBear(over: readonly WrittenOver[], kinds: readonly ItemKind[]): {readonly cause?: Where} {
  const cause = over.find(({kind}) => kinds.includes(kind))?.where;
  return cause === undefined ? {} : {cause};
}

/** The keys that stand a second time, by the first of them. */
function firstKeys(problems: readonly Problem[]): Map<Where, Where[]> {
  const firsts = new Map<Where, Where[]>();
  for (const {where, related = []} of problems) {
    for (const first of related) firsts.set(first.where, [...(firsts.get(first.where) ?? []), where]);
  }
  return firsts;
}
