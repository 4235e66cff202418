/** Prose and the blocks between steps as data of the Typst template, values marked that no line break may part. */
import type {PhrasingContent} from 'mdast';
import {figureText} from './layout.js';
import type {Figure, Notice, Prose, SheetBlock} from './model.js';
import {wholeParts} from './whole-values.js';

/** The name under which a template finds a picture, by the address in the model. */
export type PathOf = (url: string) => string | undefined;

export type PrintNode =
  | {readonly type: 'text' | 'whole' | 'code'; readonly value: string}
  | {readonly type: 'break'}
  | {readonly type: 'strong' | 'emphasis' | 'delete'; readonly children: readonly PrintNode[]}
  | {readonly type: 'link'; readonly url: string; readonly children: readonly PrintNode[]};

/** Every kind of node that the model allows, and nothing of any other. */
export function printProse(prose: Prose): PrintNode[] {
  return prose.flatMap(printNode);
}

/** The kinds that the model's prose has; anything else would be a fault of ours, and prints nothing. */
function printNode(node: PhrasingContent): PrintNode[] {
  switch (node.type) {
    case 'text':
      return wholeParts(node.value);
    case 'inlineCode':
      return [{type: 'code', value: node.value}];
    case 'break':
      return [{type: 'break'}];
    case 'strong':
    case 'emphasis':
    case 'delete':
      return [{type: node.type, children: printProse(node.children)}];
    case 'link':
      return [{type: 'link', url: node.url, children: printProse(node.children)}];
    default:
      return [];
  }
}

export function printBlock(block: SheetBlock, pathOf: PathOf) {
  switch (block.type) {
    case 'prose':
      return {type: 'prose', prose: printProse(block.prose)};
    case 'notice':
      return {type: 'notice', notice: printNotice(block.notice)};
    case 'figure':
      return {type: 'figure', figure: printFigure(block.figure, pathOf)};
    case 'list':
      return {
        type: 'list',
        items: block.items.map(({depth, prose}) => ({depth: Math.min(depth, 2), prose: printProse(prose)})),
      };
    case 'typed':
      return {type: 'typed', text: block.text};
    case 'row':
      return {type: 'prose', prose: printProse(block.row.prose)};
  }
}

/** More characters than this may fill a page. */
const TALL = 1500;

/** `tall` lets a caution that fills a page be parted, which no other may be. */
export function printNotice({signal, prose, hazards}: Notice) {
  const nodes = printProse(prose);
  return {signal, hazards, prose: nodes, tall: JSON.stringify(nodes).length > TALL};
}

function printFigure(figure: Figure, pathOf: PathOf) {
  const {url, alt, caption} = figure;
  const path = pathOf(url);
  // PDF/UA asks for words in place of every picture.
  return path === undefined
    ? {says: figureText(figure)}
    : {path, alt: alt || caption || path, says: caption ?? alt};
}
