/** A sheet's prose as HTML nodes. It comes from a stranger: nothing passes but plain emphasis and safe links. */
import type {ElementContent} from 'hast';
import {type Schema, sanitize} from 'hast-util-sanitize';
import {toHast} from 'mdast-util-to-hast';
import {findUnit} from '../quantity/units.js';
import {whole} from './html-parts.js';
import type {Prose} from './model.js';

const SCHEMA: Schema = {
  tagNames: ['a', 'br', 'code', 'del', 'em', 'strong'],
  attributes: {a: ['href']},
  protocols: {href: ['http', 'https', 'mailto']},
};

/** The nodes of one run of prose, to be put into a paragraph, cell or list item. */
export function proseNodes(prose: Prose): ElementContent[] {
  const tree = sanitize(toHast({type: 'paragraph', children: [...prose]}), SCHEMA);
  const nodes = tree.type === 'root' ? tree.children : [tree];
  return nodes.filter(isContent).flatMap(withWholeValues);
}

function isContent(node: {readonly type: string}): node is ElementContent {
  return node.type === 'element' || node.type === 'text';
}

/** A number, or numbers joined by dashes, with the word after it, which may be its unit. */
const NUMBER = /(\d[\d.,/]*(?:[-–]\d[\d.,/]*)*)(?: ([^\s,;:()]+))?/g;

/** Numbers and their units are never parted at the end of a line: half of a limit is another limit. */
function withWholeValues(node: ElementContent): ElementContent[] {
  if (node.type === 'element') return [{...node, children: node.children.flatMap(withWholeValues)}];
  if (node.type !== 'text') return [node];
  const nodes: ElementContent[] = [];
  let done = 0;
  for (const match of node.value.matchAll(NUMBER)) {
    const value = valueIn(match);
    if (!/[- –/]/.test(value)) continue;
    nodes.push({type: 'text', value: node.value.slice(done, match.index)}, whole(value));
    done = match.index + value.length;
  }
  nodes.push({type: 'text', value: node.value.slice(done)});
  return nodes.filter((one) => one.type !== 'text' || one.value !== '');
}

function valueIn([all, number = '', word = '']: RegExpMatchArray): string {
  const unit = word.replace(/[.!?]+$/, '');
  if (findUnit(unit) === undefined) return number;
  return all.slice(0, all.length - word.length + unit.length);
}
