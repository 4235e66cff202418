/** What the tokens of blocks add to the tree: lists, quotes, headings, paragraphs, code, HTML and definitions. */
import type {Blockquote, Code, Definition, Heading, Html, List, ListItem, Paragraph} from 'mdast';
import {normalizeIdentifier} from 'micromark-util-normalize-identifier';
import type {Building, Handlers} from './building.js';
import {type Context, positionOf, type Token} from './events.js';

export const BLOCKS_BEGIN: Handlers = {
  paragraph(building, token) {
    const node: Paragraph = {type: 'paragraph', children: [], position: positionOf(token)};
    building.open(node, node.children, true);
  },
  atxHeading: beginHeading,
  setextHeading: beginHeading,
  atxHeadingSequence(building, {start, end}) {
    const {node} = building;
    // The marks that may close a heading are a sequence too, and say nothing of its depth.
    if (node?.type !== 'heading' || building.depthKnown) return;
    node.depth = depthOf(end.offset - start.offset);
    building.depthKnown = true;
  },
  setextHeadingLineSequence(building, token, context) {
    const {node} = building;
    if (node?.type === 'heading') node.depth = building.textOf(token, context).startsWith('=') ? 1 : 2;
  },
  blockQuote(building, token) {
    const node: Blockquote = {type: 'blockquote', children: [], position: positionOf(token)};
    building.open(node, node.children);
    building.items.enter();
  },
  listOrdered: beginList,
  listUnordered: beginList,
  listItemPrefix(building, token) {
    const position = positionOf(token);
    const node: ListItem = {type: 'listItem', spread: false, checked: null, children: [], position};
    endItem(building);
    building.items.begin(token, node);
    building.open(node, node.children);
  },
  listItemValue(building, token, context) {
    building.items.number(Number.parseInt(building.textOf(token, context), 10));
  },
  thematicBreak(building, token) {
    building.add({type: 'thematicBreak', position: positionOf(token)});
  },
  codeFenced: beginCode,
  codeFencedFenceInfo: gather,
  codeFencedFenceMeta: gather,
  codeIndented(building, token) {
    beginCode(building, token);
    building.gathered = '';
  },
  htmlFlow(building, token) {
    const node: Html = {type: 'html', value: '', position: positionOf(token)};
    building.open(node);
    building.gathered = '';
  },
  definition(building, token) {
    const position = positionOf(token);
    const node: Definition = {
      type: 'definition',
      identifier: '',
      label: null,
      title: null,
      url: '',
      position,
    };
    building.open(node);
  },
  definitionLabelString: gather,
  definitionDestinationString: gather,
  definitionTitleString: gather,
  codeFlowValue: addText,
  htmlFlowData: addText,
  lineEnding(building, token, context) {
    building.lineEnd(token, context);
  },
};

export const BLOCKS_END: Handlers = {
  paragraph: close,
  atxHeading: close,
  setextHeadingText(building) {
    building.aboveUnderline = true;
  },
  setextHeading(building) {
    building.aboveUnderline = false;
    building.close();
  },
  blockQuote(building, token) {
    building.items.exit(token);
    building.close();
  },
  listOrdered: endList,
  listUnordered: endList,
  codeFencedFenceInfo(building) {
    const {node} = building;
    const info = building.taken();
    if (node?.type === 'code') node.lang = info;
  },
  codeFencedFenceMeta(building) {
    const {node} = building;
    const meta = building.taken();
    if (node?.type === 'code') node.meta = meta;
  },
  // The opening fence and, where there is one, the closing fence, by which the text is being gathered.
  codeFencedFence(building) {
    building.gathered ??= '';
  },
  // The lines of the fences themselves end before and after what they hold; indented code has no such lines.
  codeFenced: (building) => endValue(building, (text) => text.replace(/^(?:\r?\n|\r)|(?:\r?\n|\r)$/g, '')),
  codeIndented: (building) => endValue(building, (text) => text.replace(/(?:\r?\n|\r)$/, '')),
  htmlFlow: (building) => endValue(building, (text) => text),
  definition: close,
  definitionLabelString(building, token, context) {
    const {node} = building;
    const label = building.taken();
    if (node?.type !== 'definition') return;
    node.label = label;
    node.identifier = identifierOf(context.sliceSerialize(token));
  },
  definitionDestinationString(building) {
    const {node} = building;
    const url = building.taken();
    if (node?.type === 'definition') node.url = url;
  },
  definitionTitleString(building) {
    const {node} = building;
    const title = building.taken();
    if (node?.type === 'definition') node.title = title;
  },
};

/** The label of a definition, as the parser compares it, in small letters. */
export function identifierOf(label: string): string {
  return normalizeIdentifier(label).toLowerCase();
}

/** The text of a token goes into what is open. */
export function addText(building: Building, token: Token, context: Context): void {
  building.text(token, building.textOf(token, context));
}

/** What stands in the token becomes a value. */
export function gather(building: Building): void {
  building.gathered = '';
}

export function close(building: Building): void {
  building.close();
}

/** The text gathered is the value of the node that ends. */
export function endValue(building: Building, mended: (text: string) => string): void {
  const {node} = building;
  const text = building.taken();
  if (node !== undefined && 'value' in node) node.value = mended(text);
  building.close();
}

function beginHeading(building: Building, token: Token): void {
  const node: Heading = {type: 'heading', depth: 1, children: [], position: positionOf(token)};
  building.open(node, node.children, true);
  building.depthKnown = false;
}

function depthOf(marks: number): Heading['depth'] {
  return DEPTHS[marks - 1] ?? 6;
}

const DEPTHS: readonly Heading['depth'][] = [1, 2, 3, 4, 5, 6];

function beginList(building: Building, token: Token): void {
  const ordered = token.type === 'listOrdered';
  const position = positionOf(token);
  const node: List = {type: 'list', ordered, start: null, spread: false, children: [], position};
  building.open(node, node.children);
  building.items.enter(node);
}

function endList(building: Building, token: Token): void {
  endItem(building);
  building.items.exit(token);
  building.close();
}

function endItem(building: Building): void {
  if (building.node?.type === 'listItem') building.close();
}

function beginCode(building: Building, token: Token): void {
  const node: Code = {type: 'code', lang: null, meta: null, value: '', position: positionOf(token)};
  building.open(node);
}
