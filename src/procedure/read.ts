/** Reads a procedure from its Markdown: front matter, sections, steps with their tags and cautions, pictures. */
import type {Nodes, RootContent} from 'mdast';
import {addAll} from '../text/add-all.js';
import type {Source, Span} from '../text/source.js';
import {cautionsOf, opensCaution} from './cautions.js';
import {headingTags, reportTagsUnder} from './code-spans.js';
import {readFront} from './front-matter.js';
import {frontMatterIn} from './markdown/front-matter.js';
import {parseMarkdown} from './markdown.js';
import type {Block, Procedure, Section, Tag} from './model.js';
import {withoutDeep} from './nesting.js';
import {otherBlock} from './other.js';
import {liftProse, plainText, spanOf} from './prose.js';
import {beginReading, type Reading, report} from './reading.js';
import {keepWaiting, type Place, stepsOf} from './steps.js';

/**
 * Reads any text without throwing: what cannot be understood is among the problems, in the order of the text. A step
 * is an item of an ordered list that stands in no other list and no quote, or of an ordered list in a step; steps count
 * through the procedure. A caution belongs to the step after it, across headings too.
 */
export function readProcedure(source: Source): Procedure {
  const flat = withoutDeep(source.text, frontMatterIn(source.text).end.offset);
  const {root} = parseMarkdown(flat.text);
  const reading = beginReading(source, root, flat.deep);
  const yaml = root.children.find(({type}) => type === 'yaml');
  const {front, problems} = readFront(source, yaml && spanOf(yaml));
  addAll(reading.problems, problems);
  const sections = sectionsOf(root.children, reading);
  settleWaiting(reading);
  if (reading.steps.length === 0) noSteps(reading);
  reading.problems.sort((one, other) => one.where.span.start - other.where.span.start);
  return {source, front, sections, steps: reading.steps, problems: reading.problems};
}

/** A section while its content comes in. */
interface Open {
  readonly title: string;
  readonly depth: number;
  readonly start: number;
  readonly only: readonly Tag[];
  readonly content: Block[];
}

function sectionsOf(nodes: readonly RootContent[], reading: Reading): Section[] {
  const opened: Open[] = [];
  for (const node of nodes) {
    if (node.type === 'yaml' || node.type === 'definition') continue;
    if (node.type === 'heading') {
      const {tags: only, nodes: tags} = headingTags(node.children, reading);
      const {inline} = liftProse(node.children, {tags, definitions: reading.definitions, keepPictures: true});
      const {start} = spanOf(node);
      opened.push({title: plainText(inline), depth: node.depth, start, only, content: []});
      continue;
    }
    const last = opened.at(-1) ?? {title: '', depth: 0, start: spanOf(node).start, only: [], content: []};
    if (opened.length === 0) opened.push(last);
    readBlock(node, {section: last.title, home: last.content}, reading);
  }
  return opened.map(({title, depth, start, only, content}, index) => {
    const end = opened[index + 1]?.start ?? reading.source.text.length;
    return {title, depth, span: {start, end}, only, content};
  });
}

function readBlock(node: RootContent, place: Place, reading: Reading): void {
  if (node.type === 'list' && node.ordered) {
    for (const step of stepsOf(node, place, reading)) place.home.push({type: 'step', step});
  } else if (node.type === 'blockquote' && opensCaution(node)) {
    keepWaiting(cautionsOf(node, reading), place, reading);
  } else if (node.type === 'paragraph') {
    reportTagsUnder(node.children, 'prose between the steps', reading);
    const lifted = liftProse(node.children, {tags: new Set(), definitions: reading.definitions});
    const {text, inline, pictures} = lifted;
    if (inline.length > 0) place.home.push({type: 'prose', span: spanOf(node), text, inline});
    for (const picture of pictures) place.home.push({type: 'picture', picture});
  } else {
    reportTagsUnder([node], placeNamed(node), reading);
    place.home.push(otherBlock(node, new Set(), reading));
  }
}

function placeNamed(node: Nodes): string {
  if (node.type === 'list') return 'a bullet list';
  return node.type === 'blockquote'
    ? 'a block quote that opens with no signal word'
    : 'prose between the steps';
}

/** Cautions that no step follows stay in their section's content, where they were written. */
function settleWaiting({waiting}: Reading): void {
  for (const {caution, home} of waiting.splice(0)) {
    const before = home.findLastIndex((block) => blockSpan(block).start < caution.span.start);
    home.splice(before + 1, 0, {type: 'caution', caution});
  }
}

function blockSpan(block: Block): Span {
  if (block.type === 'caution') return block.caution.span;
  if (block.type === 'step') return block.step.span;
  return block.type === 'picture' ? block.picture.span : block.span;
}

function noSteps(reading: Reading): void {
  const end = reading.source.text.length;
  report(
    reading,
    'file-unreadable',
    {start: end, end},
    {
      says: 'the procedure has no steps',
      hint: 'write its steps as a numbered list',
    },
  );
}
