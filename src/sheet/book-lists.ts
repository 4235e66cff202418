/** Compiles the lists of a book, or of one engine on the stand, out of its procedures in build order. */
import type {Procedure} from '../procedure/model.js';
import {neededFor} from './before.js';
import {consumablesOf} from './book-consumables.js';
import {numbersOf, printedDigits, type SheetBook, wordsOf} from './compile.js';
import type {Naming, PlacedStep} from './context.js';
import type {BookLists} from './list-model.js';
import {timeList} from './time-list.js';
import {torqueLines} from './torque-table.js';
import type {Words} from './words.js';

export interface ListOptions {
  /** Of the book, in hexadecimal digits; the first ten are printed. */
  readonly fingerprint: string;
  readonly words?: Words;
  /** Today's ISO 8601 date, for calibration; without it nothing is overdue. */
  readonly today?: string;
  /** Procedures by file name, where the lists are of some of them only; the time plan is always of the whole. */
  readonly only?: ReadonlySet<string>;
}

/** With a job in it the book must be as it holds for that (`forJob`). */
export function bookLists(book: SheetBook, options: ListOptions): BookLists {
  const {spec, job, procedures} = book;
  const naming: Naming = {spec, words: wordsOf(book, options), ...(job && {job})};
  const asked = (procedure: Procedure) => options.only?.has(procedure.source.file) ?? true;
  const steps = procedures.flatMap((procedure, at) => (asked(procedure) ? placed(procedure, at + 1) : []));
  const {tools, consumables, parts, newParts} = neededFor(steps, naming);
  const time = options.only ? undefined : timeList(book, naming);
  return {
    words: naming.words,
    shop: spec.shop.name,
    engine: spec.engine.name,
    ...numbersOf(book, {fingerprint: options.fingerprint}),
    fingerprint: printedDigits(options.fingerprint),
    tools: tools.map((tool) => ({...tool, overdue: isOver(tool.due, options.today)})),
    consumables: consumablesOf(consumables, steps, naming),
    parts,
    newParts,
    torques: torqueLines(steps, {naming, whole: options.only === undefined}),
    ...(time && {time}),
  };
}

function placed({steps}: Procedure, sheet: number): PlacedStep[] {
  return steps.map((step) => ({step, at: `${sheet}.${step.number}`}));
}

/** ISO 8601 dates sort as text. */
function isOver(due: string | undefined, today: string | undefined): boolean {
  return due !== undefined && today !== undefined && due < today;
}
