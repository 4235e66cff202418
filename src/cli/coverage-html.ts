/** The coverage of books as one page: a grid that a person can take in at a glance, gaps in words and in black. */
import type {ElementContent} from 'hast';
import {h} from 'hastscript';
import type {Covered} from '../build/coverage.js';
import {htmlPage} from '../print/html-page.js';
import {printable} from '../text/printable.js';
import {
  type CellJson,
  COLUMN,
  type CoverageJson,
  columnsOf,
  gathered,
  type RowJson,
  sums,
  temporaryText,
} from './coverage-report.js';

export function coverageHtml(tables: readonly CoverageJson[]): string {
  const body = [h('main', [h('h1', 'Coverage'), ...tables.flatMap(section)])];
  return htmlPage({language: 'en', title: 'Coverage', style: STYLE, body});
}

function section(table: CoverageJson): ElementContent[] {
  const columns = columnsOf(table);
  return [
    h('h2', printable(table.engine)),
    h('p', printable(`${table.file}: ${sums(table)}`)),
    ...temporaryText(table).map((line) => h('p', line)),
    h('table', [
      h(
        'thead',
        h(
          'tr',
          ['Item', 'Place', ...columns.map((kind) => COLUMN[kind])].map((head) =>
            h('th', {scope: 'col'}, head),
          ),
        ),
      ),
      h(
        'tbody',
        gathered(table.rows).map((row) => rowOf(row, columns)),
      ),
    ]),
  ];
}

function rowOf({item, name, place, cells}: RowJson, columns: readonly Covered[]) {
  return h('tr', [
    h('th', {scope: 'row', title: printable(name)}, printable(item)),
    h('td', printable(place)),
    ...columns.map((kind) => cellOf(cells[kind])),
  ]);
}

function cellOf({due, done, steps}: CellJson) {
  const text = printable(steps.join(' '));
  if (due && !done)
    return h('td', {className: 'gap'}, [h('strong', 'missing'), text === '' ? '' : ` ${text}`]);
  return h('td', {className: due ? 'done' : 'also'}, text);
}

const STYLE = `
body { margin: 0; font: 15px/1.4 "Noto Sans", "DejaVu Sans", Verdana, Arial, sans-serif; color: #111; background: #fff; }
main { padding: 1.5rem; }
h1 { font-size: 1.6rem; margin: 0 0 1rem; }
h2 { font-size: 1.2rem; margin: 1.5rem 0 0.3rem; }
table { border-collapse: collapse; font-variant-numeric: tabular-nums; }
th, td { border: 1px solid #999; padding: 0.2rem 0.5rem; text-align: left; vertical-align: top; }
thead th { position: sticky; top: 0; background: #fff; border-bottom: 2px solid #111; }
tbody th { font-weight: 600; white-space: nowrap; }
.done { background: #e9efe4; }
.also { color: #444; }
.gap { background: #111; color: #fff; }
`;
