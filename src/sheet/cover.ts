/** Compiles the cover of a book: its procedures in build order, and what a second person signs over the whole build. */
import {numbersOf, printedDigits, type SheetBook, type SheetOptions, waiversOf, wordsOf} from './compile.js';
import type {Cover, CoverHold, CoverLine, CoverWaiver} from './cover-model.js';
import {jobLines} from './job-lines.js';
import {holdsOf} from './rows.js';
import {sheetNames} from './sheet-names.js';
import {survey} from './survey.js';

export interface CoverOptions extends SheetOptions {
  /** Titles of the procedures that this job has not. */
  readonly leftOut?: readonly string[];
}

/** The first page of a book. Its sheets are counted and named, but not compiled. */
export function compileCover(book: SheetBook, options: CoverOptions): Cover {
  const {spec} = book;
  const words = wordsOf(book, options);
  const parts = partsOf(book, options);
  return {
    paper: options.paper ?? spec.shop.paper,
    words,
    shop: spec.shop.name,
    engine: spec.engine.name,
    ...(spec.engine.note === undefined ? {} : {engineNote: spec.engine.note}),
    ...numbersOf(book, options),
    ...(book.job && {thisJob: jobLines(book.job, spec, {words, leftOut: options.leftOut ?? []})}),
    fingerprint: printedDigits(options.fingerprint),
    procedures: parts.map(({line}) => line),
    holds: parts.flatMap(({holds}) => holds),
    waivers: parts.flatMap(({waivers}) => waivers),
    sources: [...spec.sources.values()].map(({title, date, note}) => ({
      title,
      ...(date === undefined ? {} : {date}),
      ...(note === undefined ? {} : {note}),
    })),
  };
}

/** What the cover says of one procedure. */
interface CoverPart {
  readonly line: CoverLine;
  readonly holds: readonly CoverHold[];
  readonly waivers: readonly CoverWaiver[];
}

function partsOf(book: SheetBook, options: SheetOptions): CoverPart[] {
  const names = sheetNames(book.procedures);
  return book.procedures.map((procedure, at) => {
    const context = survey(procedure, book, wordsOf(book, options));
    const number = at + 1;
    const holds = procedure.steps.flatMap((step) =>
      holdsOf(step, context).map((hold) => ({...hold, procedure: number, step: step.number})),
    );
    const {title, revision, date} = procedure.front;
    return {
      line: {
        number,
        title,
        revision,
        date,
        steps: procedure.steps.length,
        holds: holds.length,
        file: names[at] ?? '',
      },
      holds,
      waivers: waiversOf(procedure, context).map((waiver) => ({...waiver, procedure: number})),
    };
  });
}
