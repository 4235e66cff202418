/** The coverage of books as Markdown tables, for a pull request or a page of the shop's own. */
import type {RootContent} from 'mdast';
import {heading, markdownWithTables, paragraph, table} from '../print/markdown.js';
import {printable} from '../text/printable.js';
import {
  COLUMN,
  type CoverageJson,
  cellText,
  columnsOf,
  gathered,
  sums,
  temporaryText,
} from './coverage-report.js';

export function coverageMarkdown(tables: readonly CoverageJson[]): string {
  return markdownWithTables(tables.flatMap(section));
}

function section(one: CoverageJson): RootContent[] {
  const columns = columnsOf(one);
  const rows = gathered(one.rows).map(({item, place, cells}) =>
    [item, place, ...columns.map((kind) => cellText(cells[kind]))].map(printable),
  );
  return [
    heading(2, printable(one.engine)),
    table(['item', 'place', ...columns.map((kind) => COLUMN[kind])], rows),
    ...temporaryText(one).map((line) => paragraph(line)),
    paragraph(sums(one)),
  ];
}
