/** The lists of builds as one self-contained page in the look of the sheets. */
import type {Element, ElementContent} from 'hast';
import {h} from 'hastscript';
import type {Paper} from '../spec/model.js';
import {paperPage} from './html-paper.js';
import {underHeads, valueNodes} from './html-parts.js';
import {titleBlock} from './html-title-block.js';
import type {BookLists, ListName} from './list-model.js';
import {type ListColumn, type ListTable, listTables} from './list-tables.js';
import type {Value} from './model.js';
import {listsBlock, listsTitles} from './title-block.js';

export interface ListsPage {
  readonly paper: Paper;
  readonly asked?: readonly ListName[] | undefined;
}

/** `first` gives the words and the running head of the page. */
export function listsHtml(first: BookLists, others: readonly BookLists[], {paper, asked}: ListsPage): string {
  const all = [first, ...others] as const;
  const titles = listsTitles(all);
  return paperPage({
    words: first.words,
    title: titles.document,
    paper,
    running: titles.running,
    body: [
      h(
        'main',
        all.flatMap((lists, at) => bookNodes(lists, asked, {at, several: all.length > 1})),
      ),
    ],
  });
}

function bookNodes(
  lists: BookLists,
  asked: readonly ListName[] | undefined,
  {at, several}: {readonly at: number; readonly several: boolean},
): ElementContent[] {
  const {words} = lists;
  const tables = listTables(lists, asked);
  return [
    titleBlock(listsBlock(lists)),
    ...(tables.length === 0
      ? [h('p', words.listsNothing)]
      : tables.map((table) => tableNode(table, {at, of: several ? [lists.engine, lists.job] : []}))),
  ];
}

interface Whose {
  /** Place of the book on the page. */
  readonly at: number;
  /** Engine and job, where there are several books. */
  readonly of: readonly (string | undefined)[];
}

function tableNode({name, title, columns, rows, notes}: ListTable, {at: book, of}: Whose): Element {
  const id = `list-${book + 1}-${name}`;
  const filled = columns.map((column, at) => ({column, at, any: rows.some((row) => row[at]?.text)}));
  const shown = filled.filter(({column, any}) => any && !column.detail);
  const details = filled.filter(({column, any}) => any && column.detail);
  return h('section', {ariaLabelledBy: [id]}, [
    h('h2', {id}, [title, ...of].filter((one) => one !== undefined).join(' · ')),
    h('table.list', {className: [`of-${name}`]}, [
      h(
        'thead',
        h(
          'tr',
          shown.map(({column}) => h('th', {scope: 'col'}, column.title)),
        ),
      ),
      ...rows.map((row) => record(row, shown, details)),
    ]),
    ...notes.map((note) => h('p.list-note', note)),
  ]);
}

function record(row: readonly Value[], shown: readonly Shown[], details: readonly Shown[]): Element {
  const below = detailLine(details, row);
  const cells = h(
    'tr',
    shown.map(({at}, index) =>
      index === 0 ? h('th', {scope: 'row'}, nodesOf(row[at])) : h('td', nodesOf(row[at])),
    ),
  );
  const heads = shown.map(({column}, index) => (index === 0 ? '' : column.title));
  return h('tbody.record', [
    underHeads(cells, heads),
    ...(below.length === 0 ? [] : [h('tr.more', h('td', {colSpan: shown.length}, below))]),
  ]);
}

function nodesOf(value: Value | undefined): ElementContent[] {
  return value === undefined || value.text === '' ? [] : valueNodes(value);
}

interface Shown {
  readonly column: ListColumn;
  readonly at: number;
}

/** What has no column of its own stands in a line across the record. */
function detailLine(details: readonly Shown[], row: readonly Value[]): ElementContent[] {
  const said = details.flatMap(({column, at}) => {
    const nodes = nodesOf(row[at]);
    return nodes.length === 0 ? [] : [[`${column.title} `, h('b', nodes)]];
  });
  return said.flatMap((nodes, at) => (at === 0 ? nodes : [' · ', ...nodes])).map(contentOf);
}

function contentOf(node: string | Element): ElementContent {
  return typeof node === 'string' ? {type: 'text', value: node} : node;
}
