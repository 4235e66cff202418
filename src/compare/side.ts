/** One side of a comparison: a book with what was worked out of it once, for every judge to look at. */
import type {Book} from '../build/book.js';
import {type Ledger, ledger} from '../build/ledger.js';
import type {StepRef} from '../build/program.js';
import type {Finding} from '../findings/model.js';
import type {Procedure} from '../procedure/model.js';
import {type Deed, deedsOf} from './deeds.js';

/** A book, its walk, what it does and what is found in it. */
export interface BookSide {
  readonly book: Book;
  readonly run: Ledger;
  readonly deeds: readonly Deed[];
  readonly findings: readonly Finding[];
}

/** Walks the whole book once. */
export function sideOf(book: Book, findings: readonly Finding[]): BookSide {
  const run = ledger(book);
  return {book, run, findings, deeds: deedsOf(book, run.program)};
}

/** The steps of one procedure, in order. */
export function stepsIn({run}: BookSide, procedure: Procedure): StepRef[] {
  return run.program.steps.filter((step) => step.procedure === procedure);
}
