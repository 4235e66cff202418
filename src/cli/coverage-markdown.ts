/** The coverage of books as Markdown tables, for a pull request or a page of the shop's own. */
import type {Root, RootContent, Table, TableRow} from 'mdast';
import remarkGfm from 'remark-gfm';
import remarkStringify from 'remark-stringify';
import {unified} from 'unified';
import {COLUMN, type CoverageJson, cellText, columnsOf, gathered, sums} from './coverage-report.js';

export function coverageMarkdown(tables: readonly CoverageJson[]): string {
  const root: Root = {type: 'root', children: tables.flatMap(section)};
  return unified().use(remarkGfm).use(remarkStringify).stringify(root);
}

function section(table: CoverageJson): RootContent[] {
  return [
    {type: 'heading', depth: 2, children: [{type: 'text', value: table.engine}]},
    tableOf(table),
    {type: 'paragraph', children: [{type: 'text', value: sums(table)}]},
  ];
}

function tableOf(table: CoverageJson): Table {
  const columns = columnsOf(table);
  const head = rowOf(['item', 'place', ...columns.map((kind) => COLUMN[kind])]);
  const body = gathered(table.rows).map(({item, place, cells}) =>
    rowOf([item, place, ...columns.map((kind) => cellText(cells[kind]))]),
  );
  return {type: 'table', children: [head, ...body]};
}

function rowOf(cells: readonly string[]): TableRow {
  return {
    type: 'tableRow',
    children: cells.map((value) => ({type: 'tableCell', children: [{type: 'text', value}]})),
  };
}
