/** The coverage of a book as plain data, and as a table in text. */
import type {Book} from '../build/book.js';
import {COVERED, type Covered, type Row, type TemporaryRow} from '../build/coverage.js';
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

export interface TemporaryJson {
  readonly item: string;
  readonly name: string;
  /** Steps that put it in, or take it out. */
  readonly in: readonly string[];
  readonly out: readonly string[];
}

/** One book. The JSON of `wmark coverage` is a list of these. */
export interface CoverageJson {
  readonly file: string;
  readonly engine: string;
  readonly rows: readonly RowJson[];
  /** What goes in for a while only, which is no row and never missing. */
  readonly temporary: readonly TemporaryJson[];
  /** False where the specification, or a procedure, cannot be read: then nothing is counted as done or missing. */
  readonly judged: boolean;
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

export interface CoverageRows {
  readonly rows: readonly Row[];
  readonly temporary: readonly TemporaryRow[];
}

export function coverageJson(file: string, book: Book, {rows, temporary}: CoverageRows): CoverageJson {
  const judged = book.spec.broken !== true && (book.unread ?? []).length === 0;
  const short = new Map(book.procedures.map(({source}, index) => [source.file, index + 1]));
  const table = rows.map((row) => rowJson(judged ? row : {...row, due: new Map()}, short));
  const cells = table.flatMap((row) => Object.values(row.cells)).filter(({due}) => due);
  return {
    file,
    engine: book.spec.engine.name,
    rows: table,
    temporary: temporary.map(({item, on, off}) => ({
      item: item.id,
      name: item.name,
      in: codes(on, short),
      out: codes(off, short),
    })),
    judged,
    due: cells.length,
    missing: cells.filter(({done}) => !done).length,
  };
}

function rowJson({item, place, steps, due}: Row, short: ReadonlyMap<string, number>): RowJson {
  const cell = (kind: Covered): CellJson => ({
    due: due.has(kind),
    done: due.get(kind) ?? false,
    steps: codes(steps.get(kind) ?? [], short),
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

/** Each once. */
function codes(steps: readonly StepRef[], short: ReadonlyMap<string, number>): string[] {
  return [...new Set(steps.map((step) => stepCode(step, short)))];
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
  const head = `${printable(table.engine)} (${printable(table.file)})`;
  return [head, ...inColumns(lines), ...temporaryText(table), sums(table), ''].join('\n');
}

/** A line that names what is temporary, where anything is. */
export function temporaryText({temporary}: CoverageJson): string[] {
  if (temporary.length === 0) return [];
  const each = temporary.map(({item, in: on, out}) => {
    const steps = [
      ...(on.length > 0 ? [`in at ${on.join(' ')}`] : ['never in']),
      ...(out.length > 0 ? [`out at ${out.join(' ')}`] : []),
    ];
    return `${item} (${steps.join(', ')})`;
  });
  return [printable(`Temporary, and not counted: ${each.join(', ')}`)];
}

export function sums({due, missing, judged}: CoverageJson): string {
  if (!judged)
    return 'Not judged: a file of this book cannot be read whole; wmark check says which, and where.';
  return `${due - missing} of ${due} due are done; ${missing} missing. 4.12 is step 12 of the fourth procedure.`;
}
