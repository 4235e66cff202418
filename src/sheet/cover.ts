/** Compiles the cover of a book: its procedures in build order, and what a second person signs over the whole build. */
import type {Procedure} from '../procedure/model.js';
import {printedDigits, type SheetBook, type SheetOptions, waiversOf, wordsOf} from './compile.js';
import type {Cover, CoverHold, CoverLine, CoverWaiver} from './model.js';
import {holdsOf} from './rows.js';
import {survey} from './survey.js';

export function compileCover(book: SheetBook, options: SheetOptions): Cover {
  const {spec} = book;
  const parts = partsOf(book, options);
  return {
    paper: options.paper ?? spec.shop.paper,
    words: wordsOf(book, options),
    shop: spec.shop.name,
    engine: spec.engine.name,
    ...(spec.engine.note === undefined ? {} : {engineNote: spec.engine.note}),
    ...(options.job === undefined ? {} : {job: options.job}),
    ...(options.engineNumber === undefined ? {} : {engineNumber: options.engineNumber}),
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

/**
 * The file names of the sheets of these procedures, without the ending: those of the procedures themselves, with
 * a number behind where two would be the same (in capitals or not) or would take the cover's own, `index`.
 */
export function sheetNames(procedures: readonly Procedure[]): string[] {
  const taken = new Set(['index']);
  return procedures.map(({source}) => {
    const base = (source.file.split(/[\\/]/).at(-1) ?? '').replace(/\.[a-z]+$/i, '') || 'sheet';
    let name = base;
    for (let count = 2; taken.has(name.toLowerCase()); count++) name = `${base}-${count}`;
    taken.add(name.toLowerCase());
    return name;
  });
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
    const context = survey(procedure, book.spec, wordsOf(book, options));
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
