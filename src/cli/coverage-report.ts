/** The coverage of a book as plain data, and as a table in text. */
import type {Book} from '../build/book.js';
import {COVERED, type Covered, type Row} from '../build/coverage.js';
import type {StepRef} from '../build/program.js';
import {inColumns} from '../text/columns.js';
import {printable} from '../text/printable.js';

export type CoverageForm = 'text' | 'markdown' | 'json' | 'html';

/** One cell: what must be done, is done, by which steps. */
export interface CellJson {
  readonly due: boolean;
  readonly done: boolean;
  readonly steps: readonly string[];
}

export interface RowJson {
  readonly item: string;
  readonly name: string;
  readonly kind: string;
  readonly place: string;
  readonly cells: {readonly [kind in Covered]: CellJson};
}

/** One book. The JSON of `wmark coverage` is a list of these. */
export interface CoverageJson {
  readonly file: string;
  readonly engine: string;
  readonly rows: readonly RowJson[];
  /** Cells that are due, and those of them not done. */
  readonly due: number;
  readonly missing: number;
}

/** The heads of the columns. */
export const COLUMN: {readonly [kind in Covered]: string} = {
  installed: 'in',
  measured: 'measured',
  tight: 'torqued',
  locked: 'locked',
  striped: 'striped',
  sealed: 'sealed',
  checked: 'checked',
  recorded: 'recorded',
  filled: 'filled',
  witnessed: 'witnessed',
};

export function coverageJson(file: string, book: Book, rows: readonly Row[]): CoverageJson {
  const short = new Map(book.procedures.map(({source}, index) => [source.file, index + 1]));
  const table = rows.map((row) => rowJson(row, short));
  const cells = table.flatMap((row) => Object.values(row.cells)).filter(({due}) => due);
  return {
    file,
    engine: book.spec.engine.name,
    rows: table,
    due: cells.length,
    missing: cells.filter(({done}) => !done).length,
  };
}

function rowJson({item, place, steps, due}: Row, short: ReadonlyMap<string, number>): RowJson {
  const cell = (kind: Covered): CellJson => ({
    due: due.has(kind),
    done: due.get(kind) ?? false,
    steps: [...new Set(steps.get(kind)?.map((step) => stepCode(step, short)) ?? [])],
  });
  return {
    item: item.id,
    name: item.name,
    kind: item.kind,
    place,
    cells: {
      installed: cell('installed'),
      measured: cell('measured'),
      tight: cell('tight'),
      locked: cell('locked'),
      striped: cell('striped'),
      sealed: cell('sealed'),
      checked: cell('checked'),
      recorded: cell('recorded'),
      filled: cell('filled'),
      witnessed: cell('witnessed'),
    },
  };
}

/** Procedure and step: `4.12` is step 12 of the fourth procedure of the build. */
function stepCode({procedure, step}: StepRef, short: ReadonlyMap<string, number>): string {
  return `${short.get(procedure.source.file) ?? '?'}.${step.number}`;
}

/** What stands in a cell: the steps, `MISSING` where none does what must be done, nothing where nothing is due. */
export function cellText({due, done, steps}: CellJson): string {
  if (due && !done) return steps.length === 0 ? 'MISSING' : `${steps.join(' ')} MISSING`;
  return steps.join(' ');
}

/** Columns in which no row of the table has anything are left out. */
export function columnsOf({rows}: CoverageJson): Covered[] {
  return COVERED.filter((kind) => rows.some(({cells}) => cells[kind].due || cells[kind].steps.length > 0));
}

/** Places that are dealt with alike share a line. */
export function gathered(rows: readonly RowJson[]): RowJson[] {
  const byCells = new Map<string, {row: RowJson; places: string[]}>();
  for (const row of rows) {
    const key = JSON.stringify([row.item, row.cells]);
    const group = byCells.get(key);
    if (group === undefined) byCells.set(key, {row, places: [row.place]});
    else group.places.push(row.place);
  }
  return [...byCells.values()].map(({row, places}) => ({...row, place: places.join(', ')}));
}

export function coverageText(table: CoverageJson): string {
  const columns = columnsOf(table);
  const rows = gathered(table.rows);
  const lines = [
    ['item', 'place', ...columns.map((kind) => COLUMN[kind])],
    ...rows.map(({item, place, cells}) => [item, place, ...columns.map((kind) => cellText(cells[kind]))]),
  ].map((line) => line.map(printable));
  return [`${printable(table.engine)} (${printable(table.file)})`, ...inColumns(lines), sums(table), ''].join(
    '\n',
  );
}

export function sums({due, missing}: CoverageJson): string {
  return `${due - missing} of ${due} due are done; ${missing} missing. 4.12 is step 12 of the fourth procedure.`;
}
