/** A sheet's prose as HTML nodes. It comes from a stranger: nothing passes but plain emphasis and safe links. */
import type {ElementContent} from 'hast';
import {type Schema, sanitize} from 'hast-util-sanitize';
import {toHast} from 'mdast-util-to-hast';
import type {Prose} from './model.js';

const SCHEMA: Schema = {
  tagNames: ['a', 'br', 'code', 'del', 'em', 'strong'],
  attributes: {a: ['href']},
  protocols: {href: ['http', 'https', 'mailto']},
};

/** The nodes of one run of prose, to be put into a paragraph, cell or list item. */
export function proseNodes(prose: Prose): ElementContent[] {
  const tree = sanitize(toHast({type: 'paragraph', children: [...prose]}), SCHEMA);
  if (tree.type !== 'root') return isContent(tree) ? [tree] : [];
  return tree.children.filter(isContent);
}

function isContent(node: {readonly type: string}): node is ElementContent {
  return node.type === 'element' || node.type === 'text';
}
