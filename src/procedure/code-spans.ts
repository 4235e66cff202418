/** Finds the code spans under a node that are tags, and says so where a tag stands in the wrong place. */
import type {InlineCode, Nodes} from 'mdast';
import {addAll} from '../text/add-all.js';
import type {Tag} from './model.js';
import {spanOf} from './prose.js';
import {type Reading, report} from './reading.js';
import {readTag} from './tag.js';

export interface Found {
  readonly tags: readonly Tag[];
  /** The nodes of tags, and of what was meant as one: none of them is prose. */
  readonly nodes: ReadonlySet<InlineCode>;
}

/** The tags under some nodes, in the order of the text; their problems go to the reading. */
export function tagsUnder(nodes: readonly Nodes[], reading: Reading): Found {
  const tags: Tag[] = [];
  const meant = new Set<InlineCode>();
  for (const node of codeSpans(nodes)) {
    const {raw, offset} = between(node, reading);
    const read = readTag(raw, offset, reading.source.file);
    addAll(reading.problems, read.problems);
    if (read.tag) tags.push(read.tag);
    if (read.tag || read.problems.length > 0) meant.add(node);
  }
  return {tags, nodes: meant};
}

/** Reports every tag under nodes that are neither step nor caution: `place` is "a heading". Other code is left alone. */
export function reportTagsUnder(nodes: readonly Nodes[], place: string, reading: Reading): void {
  for (const node of codeSpans(nodes)) {
    const {raw, offset} = between(node, reading);
    const {tag, problems, meant} = readTag(raw, offset, reading.source.file);
    if (!meant) continue;
    addAll(reading.problems, problems);
    if (tag) misplaced(reading, tag, place);
  }
}

/** The `only:` tags of a heading; any other tag there is reported. */
export function headingTags(nodes: readonly Nodes[], reading: Reading): Found {
  const tags: Tag[] = [];
  const taken = new Set<InlineCode>();
  for (const node of codeSpans(nodes)) {
    const {raw, offset} = between(node, reading);
    const {tag, problems, meant} = readTag(raw, offset, reading.source.file);
    if (!meant) continue;
    addAll(reading.problems, problems);
    if (tag?.verb === 'only') {
      tags.push(tag);
      taken.add(node);
    } else if (tag) misplaced(reading, tag, 'a heading');
  }
  return {tags, nodes: taken};
}

/** Reports a tag in the wrong place, and says where its verb belongs. */
export function misplaced(reading: Reading, {verb, span}: Tag, place: string): void {
  const hint =
    verb === 'hazard'
      ? 'put it in a block quote that opens with **Danger:**, **Warning:**, **Caution:** or **Notice:**'
      : 'put it in an item of a numbered list';
  report(reading, 'tag-outside-step', span, {says: `\`${verb}\` stands in ${place}`, hint});
}

function codeSpans(nodes: readonly Nodes[], into: InlineCode[] = []): InlineCode[] {
  for (const node of nodes) {
    if (node.type === 'inlineCode') into.push(node);
    else if ('children' in node) codeSpans(node.children, into);
  }
  return into;
}

function between(node: InlineCode, {source}: Reading): {readonly raw: string; readonly offset: number} {
  const {start, end} = spanOf(node);
  let ticks = 0;
  while (source.text[start + ticks] === '`') ticks++;
  return {raw: source.text.slice(start + ticks, end - ticks), offset: start + ticks};
}
