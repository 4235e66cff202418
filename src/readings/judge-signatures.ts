/** Hold points: who signed, and whether that was somebody else, and after the work. */
import type {Box, Form, HoldBox} from '../build/form.js';
import {fill} from '../text/fill.js';
import type {Said} from './answers.js';
import {few, minuteUtc} from './figures.js';
import {remark} from './remark.js';
import type {Remark, Signature} from './report.js';
import {answersBefore, outUnder} from './standing.js';
import type {Answers} from './unrolled.js';
import {counted, type ReportWords} from './words.js';

/** Every hold point of the sheet, and what is wrong with those that were signed. */
export interface Signatures {
  readonly lines: readonly Signature[];
  readonly remarks: readonly Remark[];
}

/** `open` is what a signature is that is still to be given. */
export function signaturesOf(
  form: Form,
  answers: Answers,
  due: (box: Box) => boolean,
  open: 'open' | 'missing',
  words: ReportWords,
): Signatures {
  const boxes = new Map(form.boxes.map((box) => [box.key, box]));
  const lines: Signature[] = [];
  const remarks: Remark[] = [];
  for (const hold of form.boxes) {
    if (hold.kind !== 'hold') continue;
    const signed = answers.get(hold.key)?.now;
    lines.push(lineOf(form, hold, signed, due(hold) ? open : 'not-called-for'));
    if (signed === undefined) continue;
    const vouched = hold.not.flatMap((key) => boxes.get(key) ?? []);
    const about = {sheet: form.procedure, step: hold.step, item: hold.item};
    const same = sameHand(vouched, signed, answers, words);
    if (same) remarks.push(remark('same-hand', {...about, message: `${hold.label}: ${same}`}));
    const early = signedEarly(vouched.filter(due), signed, {own: hold.step, answers}, words);
    if (early) remarks.push(earlyRemark(early, signed, {...about, name: hold.label}));
    const over = signedOver(hold, form, {signed, answers}, words);
    if (over) remarks.push(remark('signed-over-out', {...about, message: `${hold.label}: ${over}`}));
  }
  return {lines, remarks};
}

function lineOf(
  form: Form,
  hold: HoldBox,
  signed: Said | undefined,
  otherwise: Signature['state'],
): Signature {
  return {
    sheet: form.procedure,
    step: hold.step,
    item: hold.item,
    name: hold.label,
    ...(hold.by !== undefined && {role: hold.by}),
    ...(signed && {by: signed.by, at: signed.at}),
    state: signed ? 'signed' : otherwise,
  };
}

function sameHand(
  vouched: readonly Box[],
  signed: Said,
  answers: Answers,
  words: ReportWords,
): string | undefined {
  const own = vouched.filter(({key}) => {
    const by = answers.get(key)?.now?.by;
    return by !== undefined && hand(by) === hand(signed.by);
  });
  if (own.length === 0) return undefined;
  return fill(words.remarks.sameHand, {by: signed.by, steps: stepsOf(own, words)});
}

/** The record is in the order in which things were entered, whatever the clock said. */
function signedEarly(
  vouched: readonly Box[],
  signed: Said,
  {own, answers}: {readonly own: string; readonly answers: Answers},
  words: ReportWords,
): string | undefined {
  const open = vouched.filter(({key, kind, step}) => {
    // The step that asks for the signature is ticked when it has been given.
    if (kind === 'tick' && step === own) return false;
    const now = answers.get(key)?.now;
    return now === undefined || now.index > signed.index;
  });
  if (open.length === 0) return undefined;
  const {signedAhead, signedEarly: early} = words.remarks;
  const {by, at, value} = signed;
  return fill(isReasoned(signed) ? signedAhead : early, {
    by,
    at: minuteUtc(at),
    steps: stepsOf(open, words),
    reason: value,
  });
}

function earlyRemark(
  early: string,
  signed: Said,
  {
    name,
    ...about
  }: {readonly name: string; readonly sheet: string; readonly step: string; readonly item: string},
): Remark {
  const message = `${name}: ${early}`;
  return remark(isReasoned(signed) ? 'signed-ahead' : 'signed-early', {...about, message});
}

/** What was signed ahead with the reason written beside it is no slip. */
function isReasoned({value}: Said): boolean {
  return value !== 'done';
}

function signedOver(
  hold: HoldBox,
  form: Form,
  {signed, answers}: {readonly signed: Said; readonly answers: Answers},
  words: ReportWords,
): string | undefined {
  const out = outUnder(hold, form, answersBefore(answers, signed.index));
  if (out.length === 0) return undefined;
  const {readingAt, readingAtPlace, signedOver: over} = words.remarks;
  const readings = out.map(({step, place, label}) =>
    fill(place === '' ? readingAt : readingAtPlace, {step, place, label}),
  );
  const {by, at} = signed;
  return fill(over, {by, at: minuteUtc(at), readings: few(readings, words, 3, '; ')});
}

/** `at steps 3, 4 and 2 more`; the words of what is no step. */
export function stepsOf(boxes: readonly Box[], words: ReportWords): string {
  const steps = [...new Set(boxes.map(({step, label}) => (step === '' ? label : step)))];
  return fill(counted(steps.length, words.remarks.atSteps), {steps: few(steps, words)});
}

/** `A. B.`, `a b` and `ＡＢ` are one hand: the initials without case, blanks and marks between. */
export function hand(initials: string): string {
  return initials
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[\s.,\-_/]/g, '');
}
