/** Prose for people: a paragraph without its tags and pictures, with references resolved, and its plain text. */
import type {Definition, Image, ImageReference, InlineCode, Nodes, PhrasingContent, Text} from 'mdast';
import {addAll} from '../text/add-all.js';
import type {Span} from '../text/source.js';
import type {Picture} from './model.js';

/** Link definitions of the whole text by identifier, the first of each. */
export type Definitions = ReadonlyMap<string, Definition>;

/** What is taken out of a paragraph. */
export interface Lifting {
  readonly tags: ReadonlySet<InlineCode>;
  readonly definitions: Definitions;
  /** Leaves pictures where they are. */
  readonly keepPictures?: true;
}

export interface Lifted {
  readonly inline: readonly PhrasingContent[];
  readonly text: string;
  readonly pictures: readonly Picture[];
}

/** Takes tags and pictures out of a paragraph's nodes and closes the gaps that they leave. */
export function liftProse(nodes: readonly PhrasingContent[], lifting: Lifting): Lifted {
  const pictures: Picture[] = [];
  const inline = trimmedEnds(withoutLifted(nodes, lifting, pictures).map(foldedNode));
  return {inline, text: plainText(inline), pictures};
}

/** What the nodes say, white space folded. HTML says nothing here, and a picture its alternative text. */
export function plainText(nodes: readonly Nodes[]): string {
  let text = '';
  for (const node of nodes) text += rawText(node);
  return folded(text).trim();
}

/** Where a node of the source's own tree stands. */
export function spanOf(node: Nodes): Span {
  return {start: node.position?.start.offset ?? 0, end: node.position?.end.offset ?? 0};
}

function rawText(node: Nodes): string {
  if (node.type === 'text' || node.type === 'inlineCode' || node.type === 'code') return node.value;
  if (node.type === 'break') return ' ';
  if (node.type === 'image' || node.type === 'imageReference') return node.alt ?? '';
  if (!('children' in node)) return '';
  let text = '';
  for (const child of node.children) text += rawText(child);
  return text;
}

function withoutLifted(
  nodes: readonly PhrasingContent[],
  lifting: Lifting,
  pictures: Picture[],
): PhrasingContent[] {
  const kept: PhrasingContent[] = [];
  let gap = false;
  for (const node of nodes) {
    const result = keptOf(node, lifting, pictures);
    if (result === undefined) {
      gap = true;
      continue;
    }
    const last = kept.at(-1);
    if (gap && result.type === 'text' && (last === undefined || last.type === 'text')) {
      kept.splice(-1, 1, ...(last ? [closed(last, result)] : [trimStart(result)]));
    } else kept.push(result);
    gap = false;
  }
  const last = kept.at(-1);
  if (gap && last?.type === 'text') kept.splice(-1, 1, ...filled(trimEnd(last)));
  return kept;
}

/** The node without what is lifted out of it; undefined where nothing is left. */
function keptOf(node: PhrasingContent, lifting: Lifting, pictures: Picture[]): PhrasingContent | undefined {
  if (node.type === 'inlineCode') return lifting.tags.has(node) ? undefined : node;
  if (node.type === 'image' || node.type === 'imageReference') {
    const picture = pictureOf(node, lifting.definitions);
    if (lifting.keepPictures) return imageOf(node, picture);
    pictures.push(picture);
    return undefined;
  }
  if (!('children' in node)) return node;
  const children = withoutLifted(node.children, lifting, pictures);
  if (children.length === 0 && node.children.length > 0) return undefined;
  if (node.type !== 'linkReference') return {...node, children};
  const {url, title} = lifting.definitions.get(node.identifier) ?? {url: '', title: null};
  return {type: 'link', url, title: title ?? null, children, ...(node.position && {position: node.position})};
}

function pictureOf(node: Image | ImageReference, definitions: Definitions): Picture {
  const from = node.type === 'image' ? node : definitions.get(node.identifier);
  const title = from?.title ?? undefined;
  return {span: spanOf(node), url: from?.url ?? '', alt: node.alt ?? '', ...(title !== undefined && {title})};
}

function imageOf(node: Image | ImageReference, {url, alt, title}: Picture): Image {
  return {type: 'image', url, title: title ?? null, alt, ...(node.position && {position: node.position})};
}

/** Two texts with a gap between them that becomes one space, or none before a mark that closes a clause. */
function closed(left: Text, right: Text): Text {
  const value = /^[\s,.;:!?)]/.test(right.value)
    ? left.value.trimEnd() + right.value
    : left.value + right.value;
  const position = left.position && right.position && {start: left.position.start, end: right.position.end};
  return {type: 'text', value, ...(position && {position})};
}

function foldedNode(node: PhrasingContent): PhrasingContent {
  if (node.type === 'text') {
    const value = folded(node.value);
    return value === node.value ? node : {...node, value};
  }
  return 'children' in node ? {...node, children: node.children.map(foldedNode)} : node;
}

/** Most texts are folded as they are written, and to see that takes a fraction of the time of folding. */
function folded(text: string): string {
  return /[\t\r\n]| {2}/.test(text) ? text.replace(/[ \t\r\n]+/g, ' ') : text;
}

/** Without white space and line breaks at either end. */
function trimmedEnds(nodes: readonly PhrasingContent[]): PhrasingContent[] {
  const start = nodes.findIndex((node) => !isBlank(node));
  const end = nodes.findLastIndex((node) => !isBlank(node));
  const kept: PhrasingContent[] = [];
  for (let index = Math.max(start, 0); index <= end; index++) {
    const node = nodes[index];
    if (node === undefined) continue;
    if (node.type !== 'text') {
      kept.push(node);
      continue;
    }
    const left = index === start ? trimStart(node) : node;
    addAll(kept, filled(index === end ? trimEnd(left) : left));
  }
  return kept;
}

function isBlank(node: PhrasingContent): boolean {
  return node.type === 'break' || (node.type === 'text' && node.value.trim() === '');
}

function trimStart(node: Text): Text {
  return withValue(node, node.value.trimStart());
}

function trimEnd(node: Text): Text {
  return withValue(node, node.value.trimEnd());
}

function withValue(node: Text, value: string): Text {
  return value === node.value ? node : {type: 'text', value, ...(node.position && {position: node.position})};
}

function filled(node: Text): Text[] {
  return node.value === '' ? [] : [node];
}
