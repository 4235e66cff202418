/** Numbers with units in running prose, each with its place and with the words around it that say what it is of. */
import {si} from '../quantity/convert.js';
import type {Amount, Quantity, Unit} from '../quantity/model.js';
import {type ScannedNumber, scanNumber, scanUnit, skipSpace} from '../quantity/scan.js';
import type {Span} from '../text/source.js';
import {DETERMINERS} from './shop-grammar.js';

export interface Mention {
  readonly amount: Amount;
  /** Offsets into the prose. */
  readonly span: Span;
  /** Its number takes its unit from a later one: `30, 60 and 85 lbf·ft`. */
  readonly borrowed?: true;
  /** It repeats what stands before it, in brackets: `85 lbf·ft (115 N·m)`. */
  readonly repeats: boolean;
  /** `between … and …` rather than a dash. */
  readonly worded?: true;
  /** The words to the nearest commas, and to the ends of the sentence, in lower case. */
  readonly clause: string;
  readonly sentence: string;
  /** The words right behind it. */
  readonly after: string;
}

/** Every amount in the prose, in order. */
export function numbersIn(text: string): Mention[] {
  const found: Mention[] = [];
  let bare: ScannedNumber[] = [];
  NUMBER.lastIndex = 0;
  for (let start = NUMBER.exec(text); start !== null; start = NUMBER.exec(text)) {
    const number = scanNumber(text, start.index);
    if (number === undefined || 'says' in number) continue;
    const read = amountAt(text, number);
    NUMBER.lastIndex = read?.span.end ?? number.span.end;
    if (read === undefined) {
      bare = joined(text, bare, number.span.start) ? [...bare.slice(-MOST_PASSES), number] : [number];
      continue;
    }
    if (read.amount.form === 'single' && joined(text, bare, read.span.start)) {
      const {unit} = read.amount.value;
      found.push(...bare.map((one) => borrowed(text, one, unit)));
    }
    bare = [];
    found.push({...read, ...around(text, read.span)});
  }
  return found;
}

/** No list of passes is longer. */
const MOST_PASSES = 12;

/** A number does not start inside a word, a date or another number. */
const NUMBER = /(?<![\w.,/·–-])(?:\d|\.\d|[½⅓⅔¼¾⅛⅜⅝⅞])/g;

interface Read {
  readonly amount: Amount;
  readonly span: Span;
  readonly worded?: true;
}

function amountAt(text: string, number: ScannedNumber): Read | undefined {
  const unit = unitAt(text, number);
  const range = rangeAt(text, number, unit);
  if (range !== undefined) return range;
  if (unit === undefined) return undefined;
  const {start} = number.span;
  return {amount: {form: 'single', value: quantityOf(number, unit.unit)}, span: {start, end: unit.end}};
}

function unitAt(text: string, number: ScannedNumber): {unit: Unit; end: number} | undefined {
  const found = scanUnit(text, number.span.end);
  if (found?.unit === undefined) return undefined;
  const next =
    /^\s+([a-z]+)/i.exec(text.slice(found.span.end, found.span.end + 24))?.[1]?.toLowerCase() ?? '';
  // `fit 2 in each bore`: no inches.
  if (found.text === 'in' && number.step === 1 && DETERMINERS.has(next)) return undefined;
  STOP.lastIndex = found.span.end - 1;
  return {unit: found.unit, end: STOP.test(text) ? found.span.end - 1 : found.span.end};
}

/** A full stop that ends the sentence, and is no more than that: `for 12 h. Then …`, but not `5 in. deep`. */
const STOP = /\.(?=\s+[A-Z]|\s*$)/y;

const TO = /\s*(?:\.{2,3}|…|[-–—]|to\b)\s*/y;
const AND = /\s*(?:and|to)\s*/y;

function rangeAt(text: string, low: ScannedNumber, lowUnit: ReturnType<typeof unitAt>): Read | undefined {
  const end = lowUnit?.end ?? low.span.end;
  const worded = /\b(?:between|within|from)\s*$/i.test(
    text.slice(Math.max(0, low.span.start - 12), low.span.start),
  );
  const joint = worded ? AND : TO;
  joint.lastIndex = end;
  const between = joint.exec(text) ?? (worded ? toAt(text, end) : null);
  if (between === null) return undefined;
  const high = scanNumber(text, skipSpace(text, end + between[0].length));
  if (high === undefined || 'says' in high) return undefined;
  const highUnit = unitAt(text, high);
  const unit = lowUnit?.unit ?? highUnit?.unit;
  if (unit === undefined || highUnit === undefined || unit.dimension !== highUnit.unit.dimension)
    return undefined;
  const [bottom, top] = [quantityOf(low, unit), quantityOf(high, highUnit.unit)];
  if (si(bottom) > si(top)) return undefined;
  return {
    amount: {form: 'range', low: bottom, high: top},
    span: {start: low.span.start, end: highUnit.end},
    ...(/and/i.test(between[0]) && {worded: true}),
  };
}

function toAt(text: string, at: number): RegExpExecArray | null {
  TO.lastIndex = at;
  return TO.exec(text);
}

/** Numbers of one list stand with nothing but list words between them. */
function joined(text: string, bare: readonly ScannedNumber[], at: number): boolean {
  const last = bare.at(-1);
  if (last === undefined) return false;
  const gap = text.slice(last.span.end, at);
  return gap.length < 24 && gap.split(/[\s,]+/).every((word) => LIST_WORDS.has(word.toLowerCase()));
}

const LIST_WORDS = new Set(['', 'and', 'then', 'to', 'last', 'lastly', 'finally', 'next', 'at']);

function borrowed(text: string, number: ScannedNumber, unit: Unit): Mention {
  const amount: Amount = {form: 'single', value: quantityOf(number, unit)};
  return {amount, span: number.span, borrowed: true, ...around(text, number.span)};
}

function quantityOf({value, step}: ScannedNumber, unit: Unit): Quantity {
  return {value, unit, step};
}

function around(
  text: string,
  {start, end}: Span,
): Pick<Mention, 'repeats' | 'clause' | 'sentence' | 'after'> {
  const before = text.slice(Math.max(0, start - FAR), start);
  const behind = text.slice(end, end + FAR);
  const from = lastEnd(before, SENTENCE_END);
  const to = firstEnd(behind, SENTENCE_END);
  const clauseFrom = Math.max(from, lastEnd(before, COMMA));
  const clauseTo = Math.min(to, firstEnd(behind, COMMA));
  const own = text.slice(start, end);
  return {
    repeats: /\(\s*$/.test(before),
    clause: `${before.slice(clauseFrom)}${own}${behind.slice(0, clauseTo)}`.toLowerCase(),
    sentence: `${before.slice(from)}${own}${behind.slice(0, to)}`.toLowerCase(),
    after: behind.slice(0, to).toLowerCase(),
  };
}

/** No further do the words reach that say what a number is of. */
const FAR = 240;
const SENTENCE_END = /[;:!?]|\.(?=\s+[A-Z]|\s*$)|\n[ \t\r]*\n/g;
const COMMA = /,(?=\s)/g;

function lastEnd(text: string, pattern: RegExp): number {
  return [...text.matchAll(pattern)].reduce((_, found) => found.index + found[0].length, 0);
}

function firstEnd(text: string, pattern: RegExp): number {
  return text.matchAll(pattern).next().value?.index ?? text.length;
}
