/** The lists of builds as Markdown tables. */
import type {Root, RootContent, Table, TableRow} from 'mdast';
import remarkGfm from 'remark-gfm';
import remarkStringify from 'remark-stringify';
import {unified} from 'unified';
import type {BookLists} from './list-model.js';
import {type ListName, type ListTable, listTables} from './list-tables.js';
import type {Value} from './model.js';

export function listsMarkdown(all: readonly BookLists[], asked?: readonly ListName[]): string {
  const root: Root = {type: 'root', children: all.flatMap((lists) => bookNodes(lists, asked))};
  return unified().use(remarkGfm).use(remarkStringify, {bullet: '-', rule: '-'}).stringify(root);
}

function bookNodes(lists: BookLists, asked: readonly ListName[] | undefined): RootContent[] {
  const {words} = lists;
  const tables = listTables(lists, asked);
  const head = [
    [words.shop, lists.shop],
    [words.engineNumber, lists.engineNumber],
    [words.job, lists.job],
    [words.fingerprint, lists.fingerprint],
  ].flatMap(([label, value]) => (value === undefined ? [] : [`${label}: ${value}`]));
  return [
    heading(1, `${words.lists}: ${lists.engine}`),
    paragraph(head.join(' · ')),
    ...(tables.length === 0 ? [paragraph(words.listsNothing)] : tables.flatMap(tableNodes)),
  ];
}

function tableNodes({title, columns, rows, notes}: ListTable): RootContent[] {
  // A column in which nothing stands is left out.
  const shown = columns.flatMap((column, at) => (rows.some((row) => textOf(row[at])) ? [{column, at}] : []));
  const table: Table = {
    type: 'table',
    children: [
      rowOf(shown.map(({column}) => column.title)),
      ...rows.map((row) => rowOf(shown.map(({at}) => textOf(row[at])))),
    ],
  };
  return [heading(2, title), table, ...notes.map(paragraph)];
}

function textOf(value: Value | undefined): string {
  if (value === undefined) return '';
  return value.also === undefined ? value.text : `${value.text} (${value.also})`;
}

function rowOf(cells: readonly string[]): TableRow {
  return {type: 'tableRow', children: cells.map((value) => ({type: 'tableCell', children: [text(value)]}))};
}

function heading(depth: 1 | 2, value: string): RootContent {
  return {type: 'heading', depth, children: [text(value)]};
}

function paragraph(value: string): RootContent {
  return {type: 'paragraph', children: [text(value)]};
}

function text(value: string): {type: 'text'; value: string} {
  return {type: 'text', value};
}
