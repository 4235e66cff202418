/** Compiles one procedure of a book to its sheet. */
import type {Book} from '../build/book.js';
import type {Procedure, Step, Tag} from '../procedure/model.js';
import {clauseOf} from '../procedure/values.js';
import {engineNumberOf} from '../spec/job-marks.js';
import type {Paper} from '../spec/model.js';
import {beforeOf} from './before.js';
import {type Context, spaced} from './context.js';
import {clauseValue} from './facts.js';
import {LANGUAGES} from './languages.js';
import type {Head, Identity, Sheet, Waiver} from './model.js';
import {reasonOf, sectionsOf} from './rows.js';
import {sheetNames} from './sheet-names.js';
import {survey} from './survey.js';
import type {Words} from './words.js';

/** The parts of a book that its sheets are made of; with a job, it is the book as it holds for that (`forJob`). */
export type SheetBook = Pick<Book, 'spec' | 'procedures' | 'job'>;

export interface SheetOptions {
  /** Of the book, in hexadecimal digits; the first ten are printed. */
  readonly fingerprint: string;
  /** The shop's own paper where left out. */
  readonly paper?: Paper;
  /** Those of the shop's own language where left out. */
  readonly words?: Words;
  /** Number of the job, and what is stamped on its engine; those of the book's job where they are left out. */
  readonly job?: string;
  readonly engineNumber?: string;
}

/** How many digits of a fingerprint are printed. */
const PRINTED_DIGITS = 10;

/** The sheet of one procedure, which need not be one of the book's own. */
export function compileSheet(book: SheetBook, procedure: Procedure, options: SheetOptions): Sheet {
  const context = survey(procedure, book, wordsOf(book, options));
  return {
    paper: options.paper ?? book.spec.shop.paper,
    words: context.words,
    head: headOf(book, procedure, options),
    identity: identityOf(book, procedure, options),
    before: beforeOf(procedure, context),
    sections: sectionsOf(procedure, context),
    waivers: waiversOf(procedure, context),
  };
}

/** Those asked for, else those of the language that the shop states. */
export function wordsOf({spec}: SheetBook, {words}: SheetOptions): Words {
  return words ?? LANGUAGES[spec.shop.language];
}

/** As many digits as tell the sheets of one shop apart, and as a person compares without slipping. */
export function printedDigits(fingerprint: string): string {
  return fingerprint.slice(0, PRINTED_DIGITS);
}

/** The number of the job and of its engine, as far as they are known. */
export function numbersOf({spec, job}: SheetBook, options: SheetOptions): Pick<Head, 'job' | 'engineNumber'> {
  const number = options.job ?? job?.number;
  const engineNumber = options.engineNumber ?? (job && engineNumberOf(job, spec));
  return {
    ...(number === undefined ? {} : {job: number}),
    ...(engineNumber === undefined ? {} : {engineNumber}),
  };
}

function headOf(book: SheetBook, procedure: Procedure, options: SheetOptions): Head {
  const {spec, procedures} = book;
  const {author, approved, title, revision, date} = procedure.front;
  const place = procedures.indexOf(procedure);
  return {
    shop: spec.shop.name,
    engine: spec.engine.name,
    ...(spec.engine.note === undefined ? {} : {engineNote: spec.engine.note}),
    ...numbersOf(book, options),
    title,
    revision,
    date,
    ...(author === undefined ? {} : {author}),
    ...(approved === undefined ? {} : {approved}),
    fingerprint: printedDigits(options.fingerprint),
    ...(place < 0 ? {} : {turn: {number: place + 1, of: procedures.length}}),
  };
}

function identityOf(
  {spec, procedures}: SheetBook,
  procedure: Procedure,
  {fingerprint}: SheetOptions,
): Identity {
  const named = sheetNames(procedures)[procedures.indexOf(procedure)];
  return {
    engine: spec.engine.id,
    procedure: named ?? sheetNames([procedure])[0] ?? '',
    fingerprint,
  };
}

/** The waivers of a procedure, in the order of its steps; its own approver stands in where a waiver names none. */
export function waiversOf(procedure: Procedure, context: Context): Waiver[] {
  return procedure.steps.flatMap((step) =>
    step.tags
      .filter((tag) => tag.verb === 'waive')
      .flatMap((tag) => tag.targets.map(({id}) => waiverOf(id, tag, step, procedure, context))),
  );
}

function waiverOf(id: string, tag: Tag, step: Step, procedure: Procedure, context: Context): Waiver {
  const by = clauseOf(tag, 'by');
  const approvedBy = by === undefined ? procedure.front.approved : clauseValue(by, context).text;
  return {
    step: step.number,
    finding: spaced(id),
    reason: reasonOf(tag, context),
    ...(approvedBy === undefined ? {} : {approvedBy}),
  };
}
