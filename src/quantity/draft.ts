/**
 * The grammar of an amount: which of a text's numbers is a limit, a nominal or a deviation, and which unit stands
 * beside which. Units may still be missing or unknown; `parse.ts` settles that.
 */
import {clipped} from '../text/clipped.js';
import type {Span} from '../text/source.js';
import type {AmountFault} from './model.js';
import {
  type ScannedNumber,
  type ScannedUnit,
  scanMark,
  scanNumber,
  scanSign,
  scanUnit,
  skipSpace,
} from './scan.js';

/** A number and the unit beside it, if any. */
export interface Measure {
  readonly number: ScannedNumber;
  readonly unit: ScannedUnit | undefined;
}

/** An amount before every number has found its unit. */
export type Draft =
  | {readonly form: 'single' | 'most' | 'least'; readonly measures: readonly [Measure]}
  | {readonly form: 'range'; readonly measures: readonly [Measure, Measure]}
  /** The two deviations as signed numbers, in either order. */
  | {readonly form: 'tolerance'; readonly measures: readonly [Measure, Measure, Measure]}
  | {readonly form: 'percent'; readonly measures: readonly [Measure]; readonly percent: ScannedNumber};

interface Drafted {
  readonly draft: Draft;
  readonly end: number;
}

/** The whole of `text` as a draft. With `ambiguousCommas`, `100,150` is asked about rather than taken as one number. */
export function draftOf(text: string, ambiguousCommas = false): Draft | AmountFault {
  if (text.trim() === '') return form(text, {start: 0, end: text.length}, 'there is no value here');
  const comma = ambiguousCommas ? groupedComma(text) : undefined;
  if (comma !== undefined) return comma;
  const drafted = draftAt(text);
  if (isFault(drafted)) return drafted;
  const rest = skipSpace(text, drafted.end);
  if (rest === text.length) return drafted.draft;
  const left = {start: rest, end: text.trimEnd().length};
  return form(text, left, `"${clip(text.slice(left.start, left.end))}" cannot be read as part of a value`);
}

function draftAt(text: string): Drafted | AmountFault {
  const lead = scanMark(text, 0);
  if (lead?.mark === 'most' || lead?.mark === 'least') {
    const measure = measureAt(text, lead.end);
    return isFault(measure) ? measure : {draft: {form: lead.mark, measures: [measure]}, end: endOf(measure)};
  }
  const first = measureAt(text, 0);
  return isFault(first) ? first : afterFirst(text, first);
}

function afterFirst(text: string, first: Measure): Drafted | AmountFault {
  const end = endOf(first);
  const next = scanMark(text, end);
  if (next?.mark === 'plus-minus') return plusMinus(text, first, next.end);
  if (next?.mark === 'most' || next?.mark === 'least')
    return {draft: {form: next.mark, measures: [first]}, end: next.end};
  const deviations = deviationsAt(text, first, end);
  if (deviations !== undefined) return deviations;
  if (next?.mark !== 'range') return {draft: {form: 'single', measures: [first]}, end};
  const second = measureAt(text, next.end);
  if (isFault(second)) return second;
  return {draft: {form: 'range', measures: [first, second]}, end: endOf(second)};
}

function plusMinus(text: string, nominal: Measure, at: number): Drafted | AmountFault {
  const number = scanNumber(text, skipSpace(text, at));
  if (number === undefined || isFault(number)) return number ?? noNumber(text, at);
  const after = skipSpace(text, number.span.end);
  if (text[after] === '%') {
    // The unit may stand on either side: `85 lbf·ft ±5 %` or `85 ±5 % lbf·ft`.
    const unit = nominal.unit ?? scanUnit(text, after + 1);
    const end = nominal.unit === undefined ? (unit?.span.end ?? after + 1) : after + 1;
    return {draft: {form: 'percent', measures: [{number: nominal.number, unit}], percent: number}, end};
  }
  const plus = withUnit(text, number);
  const minus = {...plus, number: {...number, value: flip(number.value)}};
  return {draft: {form: 'tolerance', measures: [nominal, minus, plus]}, end: endOf(plus)};
}

/** `+0.001/-0.000`, `+0.001 -0.000`: two signed numbers. Without a slash they need opposite signs, apart by a space. */
function deviationsAt(text: string, nominal: Measure, at: number): Drafted | AmountFault | undefined {
  const first = signedAt(text, at);
  if (first === undefined || isFault(first.measure)) return undefined;
  const between = scanMark(text, endOf(first.measure));
  const slash = between?.mark === 'slash';
  const from = slash ? between.end : endOf(first.measure);
  const second = signedAt(text, from);
  const spaced = skipSpace(text, from) > from && first.sign !== second?.sign;
  if (second === undefined || isFault(second.measure) || !(slash || spaced)) {
    // A plus alone is a tolerance half written; a minus alone may be the dash of a range, which is tried next.
    const span = {start: skipSpace(text, at), end: first.measure.number.span.end};
    return first.sign === 1 ? form(text, span, 'a tolerance on one side only') : undefined;
  }
  const end = endOf(second.measure);
  return {draft: {form: 'tolerance', measures: [nominal, first.measure, second.measure]}, end};
}

function signedAt(
  text: string,
  at: number,
): {readonly sign: 1 | -1; readonly measure: Measure | AmountFault} | undefined {
  const sign = scanSign(text, at);
  const number = sign === undefined ? undefined : scanNumber(text, sign.end);
  if (sign === undefined || number === undefined) return undefined;
  if (isFault(number)) return {sign: sign.sign, measure: number};
  const value = sign.sign === 1 ? number.value : flip(number.value);
  return {sign: sign.sign, measure: withUnit(text, {...number, value})};
}

/** A number, which may have a sign, and its unit if one stands there. */
function measureAt(text: string, at: number): Measure | AmountFault {
  const signed = signedAt(text, at);
  if (signed !== undefined) return signed.measure;
  const number = scanNumber(text, skipSpace(text, at));
  if (number === undefined) return noNumber(text, at);
  return isFault(number) ? number : withUnit(text, number);
}

function withUnit(text: string, number: ScannedNumber): Measure {
  return {number, unit: scanUnit(text, number.span.end)};
}

function endOf(measure: Measure): number {
  return measure.unit?.span.end ?? measure.number.span.end;
}

function groupedComma(text: string): AmountFault | undefined {
  const found = /\d,[1-9]\d{2}(?!\d)/.exec(text);
  if (found === null) return undefined;
  const span = {start: found.index, end: found.index + found[0].length};
  const says = `"${clip(text.trim())}" is one number or several`;
  return {
    name: 'amount-form',
    span,
    says,
    hint: 'put a space after the comma between values, or leave it out',
  };
}

function noNumber(text: string, at: number): AmountFault {
  const start = Math.min(skipSpace(text, at), text.trimEnd().length);
  const rest = text.slice(start).trimEnd();
  const says = rest === '' ? 'a number is missing' : `"${clip(rest)}" does not start with a number`;
  return form(text, {start, end: start + rest.length}, says);
}

function form(text: string, span: Span, says: string): AmountFault {
  const end = Math.min(span.end, text.length);
  const hint =
    'write a value as 85 lbf·ft, 0.0015–0.0025 in, 2.4995 ±0.0005 in, +0.001/-0.000 or max 5 lbf·ft';
  return {name: 'amount-form', span: {start: Math.min(span.start, end), end}, says, hint};
}

/** The other sign, without making a negative nought. */
export function flip(value: number): number {
  return value === 0 ? 0 : -value;
}

/** Tells a fault from what was read: only faults say something. */
export function isFault<T extends object>(result: T | AmountFault): result is AmountFault {
  return 'says' in result;
}

function clip(text: string): string {
  return clipped(text, 40);
}
