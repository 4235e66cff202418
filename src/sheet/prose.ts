/** A sheet's prose as HTML nodes. It comes from a stranger: nothing passes but plain emphasis and safe links. */
import type {ElementContent} from 'hast';
import {type Schema, sanitize} from 'hast-util-sanitize';
import {toHast} from 'mdast-util-to-hast';
import {whole} from './html-parts.js';
import type {Prose} from './model.js';
import {wholeParts} from './whole-values.js';

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

/** Numbers and their units are never parted at the end of a line: half of a limit is another limit. */
function withWholeValues(node: ElementContent): ElementContent[] {
  if (node.type === 'element') return [{...node, children: node.children.flatMap(withWholeValues)}];
  if (node.type !== 'text') return [node];
  return wholeParts(node.value).map(({type, value}) => (type === 'whole' ? whole(value) : {type, value}));
}
