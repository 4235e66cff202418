/**
 * The small pieces of an amount's text: numbers as shops write them, units, and the words and marks between. Each
 * scanner looks at one place of the text and says what stands there and where it ends; all are linear.
 */
import type {Span} from '../text/source.js';
import type {AmountFault, Unit} from './model.js';
import {findUnit} from './units.js';

/** A number as stated: `step` as in Quantity. */
export interface ScannedNumber {
  readonly value: number;
  readonly step: number;
  readonly span: Span;
}

export interface ScannedUnit {
  /** Undefined where the words stand where a unit would, but are none. */
  readonly unit: Unit | undefined;
  readonly text: string;
  readonly span: Span;
}

/** Two words or marks that may follow or lead a number, by what they mean. */
export type Mark = 'range' | 'plus-minus' | 'most' | 'least' | 'slash';

/** Characters without commas, the point among them. A double keeps 15 figures: more would not print as written. */
const MOST_FIGURES = 15;

const VULGAR: ReadonlyMap<string, readonly [number, number]> = new Map([
  ['½', [1, 2]],
  ['⅓', [1, 3]],
  ['⅔', [2, 3]],
  ['¼', [1, 4]],
  ['¾', [3, 4]],
  ['⅛', [1, 8]],
  ['⅜', [3, 8]],
  ['⅝', [5, 8]],
  ['⅞', [7, 8]],
]);

/** The offset of the first character at or after `at` that is not white space. */
export function skipSpace(text: string, at: number): number {
  let start = at;
  while (start < text.length && isSpace(text.charAt(start))) start++;
  return start;
}

function isSpace(character: string): boolean {
  return character === ' ' || ((character < ' ' || character > '~') && /\s/.test(character));
}

/** The unsigned number at `at`; a fault where digits stand there that are not a number; undefined where none do. */
export function scanNumber(text: string, at: number): ScannedNumber | AmountFault | undefined {
  const digits = matchAt(WHOLE, text, at) ?? '';
  const afterDigits = at + digits.length;
  const decimals = matchAt(DECIMALS, text, afterDigits) ?? '';
  if (digits === '' && decimals === '') return fractionOf(text, at, at, 0);
  const end = afterDigits + decimals.length;
  if (digits.includes(',') && !/^[1-9]\d{0,2}(?:,\d{3})+$/.test(digits)) return badComma(text, at, end);
  const plain = digits.replaceAll(',', '') + decimals;
  if (plain.length > MOST_FIGURES) return tooLong(text, at, end);
  const value = Number(plain);
  if (decimals !== '') return {value, step: Number(`1e-${decimals.length - 1}`), span: {start: at, end}};
  return digits.includes(',')
    ? {value, step: 1, span: {start: at, end}}
    : withFraction(text, at, afterDigits, value);
}

/** `3/4`, or the `1/2` of `1-1/2` and `1 1/2`, or the whole number alone. */
function withFraction(text: string, at: number, end: number, whole: number): ScannedNumber | AmountFault {
  const under = matchAt(UNDER, text, end);
  if (under !== undefined)
    return quotient(text, {start: at, end: end + under.length}, [whole, Number(under.slice(1))], 0);
  const gap = text[end] === '-' ? end + 1 : skipSpace(text, end);
  return fractionOf(text, at, gap, whole) ?? {value: whole, step: 1, span: {start: at, end}};
}

/** A fraction proper at `from`, added to `whole`; `12-5/8` is a mixed number, `1-8/5` is not one. */
function fractionOf(
  text: string,
  at: number,
  from: number,
  whole: number,
): ScannedNumber | AmountFault | undefined {
  const vulgar = VULGAR.get(text[from] ?? '');
  if (vulgar !== undefined) return quotient(text, {start: at, end: from + 1}, vulgar, whole);
  if (whole === 0) return undefined;
  const match = matchAt(PROPER, text, from);
  if (match === undefined) return undefined;
  const [over = 0, under = 0] = match.split('/').map(Number);
  return over < under
    ? quotient(text, {start: at, end: from + match.length}, [over, under], whole)
    : undefined;
}

function quotient(
  text: string,
  span: Span,
  [over, under]: readonly [number, number],
  whole: number,
): ScannedNumber | AmountFault {
  const {start, end} = span;
  if (under === 0) return fault(text, span, 'divides by nought', 'write a fraction as 1/2, or 1-1/2');
  if (over > 1e6 || under > 1e6 || whole > 1e6) return tooLong(text, start, end);
  // Whole and proper part are added in one way only, so that 3/2 and 1-1/2 are the same double.
  const value = whole + Math.floor(over / under) + (over % under) / under;
  // A fraction that comes out whole says no more and no less than the whole number.
  return {value, step: Number.isInteger(value) ? 1 : 0, span};
}

function badComma(text: string, start: number, end: number): AmountFault {
  const hint =
    'a comma stands before every three digits of a large number only; write a decimal with a point';
  return fault(text, {start, end}, 'is not a number that can be read one way only', hint);
}

function tooLong(text: string, start: number, end: number): AmountFault {
  return fault(text, {start, end}, 'has too many figures', 'round it');
}

function fault(text: string, span: Span, is: string, hint: string): AmountFault {
  return {name: 'amount-form', span, says: `${text.slice(span.start, span.end)} ${is}`, hint};
}

const WHOLE = /\d+(?:,\d+)*/y;
const DECIMALS = /\.\d+/y;
const UNDER = /\/\d+/y;
const PROPER = /\d+\/\d+/y;
const WORD = /%|[A-Za-zµμΩΩ°º℃℉"″”“'′’]+[²³]?(?:[23](?![\d.]))?/y;
const JOINT = /\s*(?:\.\s*)?(?:[·⋅•∙*\-‐‑–/]\s*)?/y;
/** The longest spelling, `pounds per square inch`, has four words. */
const MOST_WORDS = 4;
/** Words that go on with the amount or with the sentence: `85 to 90 lbf·ft` has no unit called `to`. */
const NO_UNIT = /^(?:to|through|and|or|max|maximum|minimum|at|not|no|plus|minus|up)$/i;

/** The unit at `at` (after white space): the longest run of words that spells one, else the first word as it stands. */
export function scanUnit(text: string, at: number): ScannedUnit | undefined {
  const start = skipSpace(text, at);
  let best: ScannedUnit | undefined;
  let from = start;
  for (let count = 0; count < MOST_WORDS; count++) {
    const word = matchAt(WORD, text, from);
    if (word === undefined || (count === 0 && NO_UNIT.test(word))) break;
    const end = from + word.length;
    const spelling = text.slice(start, end);
    const unit = findUnit(spelling);
    if (unit !== undefined || best === undefined) best = {unit, text: spelling, span: {start, end}};
    from = endOf(JOINT, text, end) ?? end;
  }
  return best?.unit === undefined ? best : withFullStop(text, withTied(text, best));
}

/** `ft/lb` is no length, `lbf·fy` no force: a unit tied to a word that it does not go with is not a unit at all. */
function withTied(text: string, found: ScannedUnit): ScannedUnit {
  const {start, end} = found.span;
  const tied = /[/·⋅•∙*\-‐‑]/.test(text[end] ?? '') ? matchAt(WORD, text, end + 1) : undefined;
  if (tied === undefined) return found;
  const whole = end + 1 + tied.length;
  return {unit: undefined, text: text.slice(start, whole), span: {start, end: whole}};
}

/** `in.` and `lbs.` are written with the full stop of an abbreviation; `0.5 in..0.6 in` is not. */
function withFullStop(text: string, found: ScannedUnit): ScannedUnit {
  const {start, end} = found.span;
  const stopped = text[end] === '.' && /[A-Za-z]/.test(text[end - 1] ?? '') && text[end + 1] !== '.';
  return stopped ? {...found, span: {start, end: end + 1}} : found;
}

/** In the order in which they are tried: `±` before the plus of a deviation, a range before the slash of a pair. */
const MARKS: readonly (readonly [Mark, RegExp])[] = [
  ['plus-minus', /±|\+\s*(?:\/\s*)?[-−–]/y],
  ['most', /≤|<=?|(?:max(?:imum)?\b\.?|at most\b|up to\b|n(?:ot|o) more than\b|or less\b)/iy],
  ['least', /≥|>=?|(?:min(?:imum)?\b\.?|at least\b|n(?:ot|o) less than\b|or more\b)/iy],
  ['range', /\.{2,3}|…|[-‐‑‒–—−]|(?:to|through)\b/iy],
  ['slash', /\//y],
];

/** The mark at `at` (after white space) and where it ends. */
export function scanMark(text: string, at: number): {readonly mark: Mark; readonly end: number} | undefined {
  const start = skipSpace(text, at);
  if (start === text.length) return undefined;
  for (const [mark, pattern] of MARKS) {
    const end = endOf(pattern, text, start);
    if (end !== undefined && end > start) return {mark, end};
  }
  return undefined;
}

/** The sign at `at`, after white space: 1, -1, or undefined where there is none. */
export function scanSign(
  text: string,
  at: number,
): {readonly sign: 1 | -1; readonly end: number} | undefined {
  const start = skipSpace(text, at);
  const found = text[start] ?? '';
  if (found === '+') return {sign: 1, end: start + 1};
  return found !== '' && '-−–'.includes(found) ? {sign: -1, end: start + 1} : undefined;
}

function matchAt(pattern: RegExp, text: string, at: number): string | undefined {
  pattern.lastIndex = at;
  return pattern.exec(text)?.[0];
}

function endOf(pattern: RegExp, text: string, at: number): number | undefined {
  const found = matchAt(pattern, text, at);
  return found === undefined ? undefined : at + found.length;
}
