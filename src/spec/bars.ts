/** Reads what is barred, on what, and why. */
import {defined} from './defined.js';
import {type Gathered, wordsIn} from './fields.js';
import type {BookFile} from './file.js';
import {isLockKind} from './locks.js';
import {type Bar, type ItemKind, LOCKS, type Located} from './model.js';
import {ENGINE_KINDS} from './sections.js';
import {MOST_BARRED} from './shapes/values.js';
import {entryOf, type Node, textOf} from './tree.js';

const CAN_BE_BARRED: readonly ItemKind[] = ['consumable', 'tool', 'part'];

/** The bars of every file: what a base bars stays barred. */
export function barsOf(chain: readonly BookFile[], gathered: Gathered): readonly Bar[] {
  return chain.flatMap((file) => {
    const list = entryOf(file.tree, 'barred')?.value;
    const nodes = list?.type === 'list' ? list.items : [];
    return nodes.flatMap((node) => oneBar(node, file, gathered));
  });
}

function oneBar(node: Node, file: BookFile, gathered: Gathered): Bar[] {
  const what = names(node, 'what').slice(0, MOST_BARRED);
  if (what.length === 0) return [];
  const on = names(node, 'on');
  for (const {value: id, where} of what) {
    if (!isLockKind(id)) gathered.references.push({id, where, kinds: CAN_BE_BARRED, words: LOCKS});
  }
  for (const {value: id, where} of on) gathered.references.push({id, where, kinds: ENGINE_KINDS});
  const named = entryOf(node, 'source')?.value;
  const source = textOf(named);
  if (named && source !== undefined) gathered.sources.push({id: source, where: named.where});
  const because = textOf(entryOf(node, 'because')?.value) ?? '';
  return [{what, on, because, ...defined({source: source ?? file.fileSource}), where: node.where}];
}

function names(node: Node, key: string): readonly Located<string>[] {
  return wordsIn(entryOf(node, key)?.value);
}
