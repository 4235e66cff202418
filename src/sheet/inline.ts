/** Makes a procedure's Markdown nodes fit for a sheet: no positions, no raw HTML, no pictures. */
import type {List, Nodes, PhrasingContent} from 'mdast';
import {toString as textOf} from 'mdast-util-to-string';
import remarkParse from 'remark-parse';
import {unified} from 'unified';
import {addAll} from '../text/add-all.js';
import type {ListItem, Prose, SheetBlock} from './model.js';

/** Deeper emphasis than this is printed as plain text: nobody writes it, and it would exhaust the call stack. */
const DEEPEST = 16;

/** Links that mean something on paper and do nothing but lead there; all others are printed as their text. */
const SAFE = /^(?:https?:|mailto:)/i;

/** The same prose as data of the sheet. What looks like an HTML tag is printed as it was typed; comments are not. */
export function proseOf(inline: readonly PhrasingContent[], depth = 0): Prose {
  return inline.flatMap((node) => cleaned(node, depth));
}

function cleaned(node: PhrasingContent, depth: number): PhrasingContent[] {
  if (node.type === 'html') return node.value.startsWith('<!--') ? [] : [{type: 'text', value: node.value}];
  if (node.type === 'image' || node.type === 'imageReference') return [];
  if (node.type === 'text' || node.type === 'inlineCode') return [{type: node.type, value: node.value}];
  if (node.type === 'break') return [{type: 'break'}];
  if (!('children' in node)) return [];
  if (depth >= DEEPEST) return [{type: 'text', value: flat(node)}];
  const children = [...proseOf(node.children, depth + 1)];
  if (node.type === 'link') return SAFE.test(node.url) ? [{type: 'link', url: node.url, children}] : children;
  if (node.type === 'emphasis' || node.type === 'strong' || node.type === 'delete')
    return [{type: node.type, children}];
  return children;
}

/** The text below a node, walked without recursion. */
function flat(node: PhrasingContent): string {
  const waiting: Nodes[] = [node];
  let text = '';
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    if ('children' in next) addAll(waiting, [...next.children].reverse());
    else if ('value' in next) text += next.value;
  }
  return text;
}

/** A block that is not a step, caution, picture or paragraph: a bullet list as such, all else as it was typed. */
export function blockOf(markdown: string): SheetBlock {
  const [first, ...others] = unified().use(remarkParse).parse(markdown).children;
  if (first?.type === 'list' && others.length === 0) return {type: 'list', items: itemsOf(first, 0)};
  if (first?.type === 'code' && others.length === 0) return {type: 'typed', text: first.value};
  return {type: 'typed', text: markdown};
}

function itemsOf(list: List, depth: number): ListItem[] {
  return list.children.flatMap((item) =>
    item.children.flatMap((child): ListItem[] => {
      if (child.type === 'list') return depth >= DEEPEST ? [] : itemsOf(child, depth + 1);
      if (child.type === 'paragraph') return [{depth, prose: proseOf(child.children)}];
      return [{depth, prose: [{type: 'text', value: textOf(child)}]}];
    }),
  );
}
