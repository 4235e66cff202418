/** The lists of builds as Markdown tables. */
import type {RootContent} from 'mdast';
import {heading, markdownWithTables, paragraph, table} from '../print/markdown.js';
import type {BookLists, ListName} from './list-model.js';
import {type ListTable, listTables} from './list-tables.js';
import {valueText} from './value.js';

/** A heading for each book, a table for each list. */
export function listsMarkdown(all: readonly BookLists[], asked?: readonly ListName[]): string {
  return markdownWithTables(all.flatMap((lists) => bookNodes(lists, asked)));
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
  const texts = rows.map((row) => row.map(valueText));
  // A column in which nothing stands is left out.
  const shown = columns.flatMap(({title: head}, at) => (texts.some((row) => row[at]) ? [{head, at}] : []));
  const filled = table(
    shown.map(({head}) => head),
    texts.map((row) => shown.map(({at}) => row[at] ?? '')),
  );
  return [heading(2, title), filled, ...notes.map(paragraph)];
}
