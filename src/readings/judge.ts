/** Judges a build: what is on record against what its sheets ask. */
import type {Form} from '../build/form.js';
import type {Specification} from '../spec/model.js';
import {fill} from '../text/fill.js';
import {answersOf} from './answers.js';
import {type Build, differRemark} from './builds.js';
import {dueOf} from './due.js';
import {boxesOf} from './judge-boxes.js';
import {chainRemarks} from './judge-chain.js';
import {cureRemarks} from './judge-cures.js';
import {initialsRemarks} from './judge-initials.js';
import {orderRemarks} from './judge-order.js';
import {readingRemarks} from './judge-readings.js';
import {signaturesOf} from './judge-signatures.js';
import {LANGUAGES} from './languages.js';
import {readingLines} from './reading-lines.js';
import type {SheetRecord} from './record.js';
import {inOrder, remark} from './remark.js';
import type {BuildReport, ReadingLine, Remark, SheetLine, Signature, WaiverLine} from './report.js';
import {isAnswered, unrolled} from './unrolled.js';
import type {ReportWords} from './words.js';
import {workedOut} from './worked.js';

/** What the book on disk asks of the build, with its job applied where it names one. */
export interface Asked {
  readonly spec: Specification;
  readonly sheets: readonly AskedSheet[];
}

export interface AskedSheet {
  readonly form: Form;
  readonly waivers: readonly Omit<WaiverLine, 'sheet'>[];
}

export interface JudgeOptions {
  /** Judge by the book as it is now, even if it is not the one that the sheet was made from. */
  readonly evenIfChanged?: boolean | undefined;
}

/** In the language of the shop of the book that is asked for. Never throws on what a record holds. */
export function judgeBuild(build: Build, asked: Asked, options: JudgeOptions = {}): BuildReport {
  const {engine, job, engineNumber, files} = build;
  const words = LANGUAGES[asked.spec.shop.language];
  // Whoever works at the last sheet has passed all the others, whether or not they were recorded.
  const last = asked.sheets.at(-1)?.form.procedure;
  const isLastBegun = build.sheets.some(({procedure}) => procedure === last);
  const judged = [
    ...asked.sheets.flatMap((sheet, at) =>
      ofProcedure(build, sheet, asked.spec, {
        ...options,
        words,
        isPast: isLastBegun && at < asked.sheets.length - 1,
      }),
    ),
    ...strangers(build, asked, words),
  ];
  const readings = judged.flatMap((one) => one.readings);
  const worked = workedOut(readings, asked.spec, words);
  return {
    engine,
    name: asked.spec.engine.name,
    ...(job !== undefined && {job}),
    ...(engineNumber !== undefined && {engineNumber}),
    files: [...files],
    sheets: judged.map(({line}) => line),
    remarks: inOrder([
      ...build.apart.map((one) => differRemark(one, words)),
      ...judged.flatMap(({remarks}) => remarks),
      ...worked.remarks,
    ]),
    readings,
    worked: [...worked.lines],
    signatures: judged.flatMap(({signatures}) => signatures),
    waivers: asked.sheets.flatMap(({form, waivers}) =>
      waivers.map((waiver) => ({sheet: form.procedure, ...waiver})),
    ),
  };
}

/** Whether nothing is wrong: warnings are for a person to look at. */
export function isWell({remarks}: BuildReport): boolean {
  return remarks.every(({severity}) => severity !== 'error');
}

interface JudgedSheet {
  readonly line: SheetLine;
  readonly remarks: readonly Remark[];
  readonly readings: readonly ReadingLine[];
  readonly signatures: readonly Signature[];
}

interface Standing {
  /** The last sheet of the build is begun, so that nothing of this one is still to come. */
  readonly isPast: boolean;
  readonly words: ReportWords;
}

/** One procedure of the book: its sheet as recorded, or that it has no record. */
function ofProcedure(
  build: Build,
  asked: AskedSheet,
  spec: Specification,
  options: JudgeOptions & Standing,
): JudgedSheet[] {
  const {form} = asked;
  const records = build.sheets.filter(({procedure}) => procedure === form.procedure);
  const fitting = records.filter(({fingerprint}) => fingerprint === form.fingerprint);
  const others = records.filter(({fingerprint}) => fingerprint !== form.fingerprint);
  if (records.length === 0) return [notBegun(form, options)];
  return [
    ...fitting.map((record) => judgeSheet(record, form, spec, options)),
    ...others.map((record) =>
      options.evenIfChanged && fitting.length === 0
        ? withRemark(judgeSheet(record, form, spec, options), changed(record, form, true, options))
        : notJudged(record, 'book-changed', changed(record, form, false, options), options.words),
    ),
  ];
}

function judgeSheet(
  record: SheetRecord,
  form: Form,
  spec: Specification,
  {isPast, words}: Standing,
): JudgedSheet {
  const answers = answersOf(record.entries);
  const asked = unrolled(form, answers);
  const due = dueOf(asked, answers);
  const isSignedOff = form.boxes.some(
    (box) => 'ends' in box && box.ends === 'sheet' && isAnswered(box.key, answers),
  );
  const isOpen = !isPast && !isSignedOff;
  const nameOf = (item: string) => spec.items.get(item)?.name ?? item;
  const readings = readingLines(asked, answers, due, {nameOf, isOpen});
  const boxes = boxesOf(asked, answers, {due, isOpen}, words);
  const signatures = signaturesOf(asked, answers, due, isOpen ? 'open' : 'missing', words);
  const chain = chainRemarks(record, words);
  return {
    line: {...lineOf(record, 'judged', chain), asked: boxes.asked, answered: boxes.answered},
    remarks: [
      ...readingRemarks(readings, spec, words),
      ...cureRemarks(asked, answers, words),
      ...boxes.remarks,
      ...signatures.remarks,
      ...initialsRemarks(asked, record.entries, words),
      ...orderRemarks(form, answers, words),
      ...chain,
    ],
    readings,
    signatures: signatures.lines,
  };
}

function notBegun(
  {procedure, title, revision, fingerprint, boxes}: Form,
  {isPast, words}: Standing,
): JudgedSheet {
  const asked = boxes.filter(({onlyIf}) => onlyIf.length === 0).length;
  const line = {
    procedure,
    title,
    revision,
    fingerprint,
    state: isPast ? 'missing' : 'not-begun',
    entries: 0,
    asked,
    answered: 0,
  } as const;
  const name = isPast ? 'sheet-missing' : 'not-begun';
  const message = isPast ? words.remarks.sheetMissing : words.remarks.notBegun;
  return {
    ...NOTHING,
    line: {...line, seals: 'follow'},
    remarks: [remark(name, {sheet: procedure, step: '', message})],
  };
}

/** Sheets on record that the book does not have. */
function strangers(build: Build, asked: Asked, words: ReportWords): JudgedSheet[] {
  const known = new Set(asked.sheets.map(({form}) => form.procedure));
  return build.sheets
    .filter(({procedure}) => !known.has(procedure))
    .map((record) => {
      const message = words.remarks.sheetUnknown;
      return notJudged(
        record,
        'unknown',
        remark('sheet-unknown', {sheet: record.procedure, step: '', message}),
        words,
      );
    });
}

const NOTHING = {readings: [], signatures: []} as const;

/** Seals and times speak for themselves, whatever the sheet asked. */
function notJudged(
  record: SheetRecord,
  state: 'book-changed' | 'unknown',
  why: Remark,
  words: ReportWords,
): JudgedSheet {
  const chain = chainRemarks(record, words);
  return {...NOTHING, line: lineOf(record, state, chain), remarks: [why, ...chain]};
}

function withRemark(judged: JudgedSheet, why: Remark): JudgedSheet {
  return {...judged, remarks: [why, ...judged.remarks]};
}

function changed(record: SheetRecord, form: Form, isAnyway: boolean, {words}: Standing): Remark {
  const [then, now] = [shown(record), shown(form)];
  const {bookChanged, bookChangedAnyway} = words.remarks;
  const message = fill(isAnyway ? bookChangedAnyway : bookChanged, {then, now});
  return remark('book-changed', {sheet: record.procedure, step: '', message});
}

/** As many digits as are printed on the sheet. */
function shown({fingerprint}: {readonly fingerprint: string}): string {
  return fingerprint.slice(0, 10);
}

function lineOf(record: SheetRecord, state: SheetLine['state'], chain: readonly Remark[]): SheetLine {
  const {procedure, title, revision, fingerprint, entries} = record;
  const [first, last] = [entries[0]?.at, entries.at(-1)?.at];
  return {
    ...{procedure, title, revision, fingerprint, state},
    entries: entries.length,
    asked: 0,
    answered: 0,
    seals: chain.some(({name}) => name === 'seal-broken') ? 'broken' : 'follow',
    ...(first !== undefined && {first}),
    ...(last !== undefined && {last}),
  };
}
