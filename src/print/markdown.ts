/** Reports and sheets as Markdown: the nodes that they are made of, and the one way in which they are written. */
import type {
  BlockContent,
  List,
  ListItem,
  Paragraph,
  PhrasingContent,
  Root,
  RootContent,
  Table,
  TableRow,
} from 'mdast';
import remarkGfm from 'remark-gfm';
import remarkStringify from 'remark-stringify';
import {unified} from 'unified';

const STYLE = {bullet: '-', rule: '-'} as const;

/** CommonMark. What a text holds that would be markup is escaped, so that it says what it said. */
export function markdownOf(children: readonly RootContent[]): string {
  return unified().use(remarkStringify, STYLE).stringify(rootOf(children));
}

/** With tables, which are GitHub's and not CommonMark's. */
export function markdownWithTables(children: readonly RootContent[]): string {
  return unified().use(remarkGfm).use(remarkStringify, STYLE).stringify(rootOf(children));
}

function rootOf(children: readonly RootContent[]): Root {
  return {type: 'root', children: [...children]};
}

/** Levels below the sixth are written as the sixth. */
export function heading(level: number, value: string): RootContent {
  const depths = [1, 2, 3, 4, 5, 6] as const;
  return {type: 'heading', depth: depths[Math.min(level, 6) - 1] ?? 2, children: [text(value)]};
}

export function paragraph(content: string | readonly PhrasingContent[]): Paragraph {
  return {type: 'paragraph', children: typeof content === 'string' ? [text(content)] : [...content]};
}

export function bullets(items: readonly ListItem[]): List {
  return {type: 'list', ordered: false, spread: false, children: [...items]};
}

export function listItem(children: readonly BlockContent[]): ListItem {
  return {type: 'listItem', spread: false, children: [...children]};
}

/** An item of one paragraph. */
export function listLine(content: string | readonly PhrasingContent[]): ListItem {
  return listItem([paragraph(content)]);
}

/** Every row has a cell a head. */
export function table(heads: readonly string[], rows: readonly (readonly string[])[]): Table {
  return {type: 'table', children: [heads, ...rows].map(tableRow)};
}

function tableRow(cells: readonly string[]): TableRow {
  return {type: 'tableRow', children: cells.map((value) => ({type: 'tableCell', children: [text(value)]}))};
}

export function text(value: string): PhrasingContent {
  return {type: 'text', value};
}

export function strong(value: string): PhrasingContent {
  return {type: 'strong', children: [text(value)]};
}
