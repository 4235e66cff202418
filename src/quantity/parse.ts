/**
 * Reads an amount as shops write it: one value, limits, or a value with a tolerance. Never throws and never guesses:
 * what could be read two ways, or lacks its unit, comes back as a fault with the place and what to write instead.
 */
import type {Span} from '../text/source.js';
import {missingUnit, unknownUnit, wrongKind} from './faults.js';
import type {Amount, AmountFault, Dimension, Quantity, Reading, Unit} from './model.js';
import {
  type ScannedNumber,
  type ScannedUnit,
  scanMark,
  scanNumber,
  scanSign,
  scanUnit,
  skipSpace,
} from './scan.js';
import {difference, si} from './si.js';

/** One entry of a list, and where it stands in the list's text. */
export interface ListedReading {
  readonly span: Span;
  readonly reading: Reading;
}

/**
 * Reads the whole of `text` as one amount. With `due`, its unit must be of that dimension. Forms: `85 lbf·ft`,
 * `0.0015–0.0025 in` (also `-`, `..`, `to`), `2.4995 ±0.0005 in`, `1.000 +0.001/-0.000 in`, `85 ±5 % lbf·ft`,
 * `max 5 lbf·ft`, `min …`, `≤`, `≥`; numbers as `1,250`, `.0015`, `1-1/2`, `1 1/2`, `1½`.
 */
export function readAmount(text: string, due?: Dimension): Reading {
  const draft = draftOf(text);
  return isFault(draft) ? {ok: false, fault: draft} : finish(text, draft, due, undefined);
}

/**
 * Reads a list apart by commas: `30, 60, 85 lbf·ft`. An entry without a unit takes that of the next entry that has
 * one, else of the one before, else `inherit`. Spans, and those of faults, are offsets into `text`.
 */
export function readAmounts(text: string, due?: Dimension, inherit?: Unit): readonly ListedReading[] {
  const grouped = looksGrouped(text);
  const entries = splitList(text).map((span) => {
    const part = text.slice(span.start, span.end);
    return {span, part, draft: draftOf(part, grouped)};
  });
  const units = inherited(
    entries.map(({draft}) => (isFault(draft) ? undefined : statedUnit(draft))),
    inherit,
  );
  return entries.map(({span, part, draft}, index) => {
    const reading: Reading = isFault(draft)
      ? {ok: false, fault: draft}
      : finish(part, draft, due, units[index]);
    return {span, reading: shifted(reading, span.start)};
  });
}

/** For each entry the unit stated in it or after it, else before it, else `fallback`. */
function inherited(stated: readonly (Unit | undefined)[], fallback: Unit | undefined): (Unit | undefined)[] {
  const units = [...stated];
  let near = stated.findLast(isUnit) ?? fallback;
  for (let index = units.length - 1; index >= 0; index--) {
    near = units[index] ?? near;
    units[index] = near;
  }
  return units;
}

/** A number and the unit beside it, if any. */
interface Measure {
  readonly number: ScannedNumber;
  readonly unit: ScannedUnit | undefined;
}

/** An amount before every number has found its unit. */
type Draft =
  | {readonly form: 'single' | 'most' | 'least'; readonly measures: readonly [Measure]}
  | {readonly form: 'range'; readonly measures: readonly [Measure, Measure]}
  /** The two deviations as signed numbers, in either order. */
  | {readonly form: 'tolerance'; readonly measures: readonly [Measure, Measure, Measure]}
  | {readonly form: 'percent'; readonly measures: readonly [Measure]; readonly percent: ScannedNumber};

interface Drafted {
  readonly draft: Draft;
  readonly end: number;
}

function draftOf(text: string, ambiguousCommas = false): Draft | AmountFault {
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
  if (isFault(plus)) return plus;
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

function withUnit(text: string, number: ScannedNumber): Measure | AmountFault {
  const found = scanUnit(text, number.span.end);
  return {number, unit: found};
}

function endOf(measure: Measure): number {
  return measure.unit?.span.end ?? measure.number.span.end;
}

/** Gives every number its unit and checks what can only be checked then. */
function finish(text: string, draft: Draft, due: Dimension | undefined, inherit: Unit | undefined): Reading {
  const units = draft.measures.map((measure) => measure.unit).filter((found) => found !== undefined);
  for (const found of units) {
    if (found.unit === undefined) return failed(unknownUnit(found.text, found.span, due));
    if (due !== undefined && found.unit.dimension !== due)
      return failed(wrongKind(found.text, found.unit, found.span, due));
  }
  const fallback = statedUnit(draft) ?? inherit;
  const numbers = {start: skipSpace(text, 0), end: text.trimEnd().length};
  if (fallback === undefined) return failed(missingUnit(text.trim(), numbers, due));
  if (due !== undefined && fallback.dimension !== due)
    return failed(wrongKind(fallback.symbol, fallback, numbers, due));
  const odd = units.find((found) => found.unit?.dimension !== fallback.dimension);
  if (odd?.unit !== undefined) return failed(wrongKind(odd.text, odd.unit, odd.span, fallback.dimension));
  return amountOf(draft, fallback, numbers);
}

/** The unit that the numbers of a draft share: the last one stated, since limits carry it at their end. */
function statedUnit(draft: Draft): Unit | undefined {
  return draft.measures.findLast((measure) => measure.unit?.unit !== undefined)?.unit?.unit;
}

function amountOf(draft: Draft, fallback: Unit, span: Span): Reading {
  const [first] = draft.measures;
  switch (draft.form) {
    case 'single':
      return {ok: true, amount: {form: 'single', value: quantityOf(first, fallback)}};
    case 'most':
      return {ok: true, amount: {form: 'most', high: quantityOf(first, fallback)}};
    case 'least':
      return {ok: true, amount: {form: 'least', low: quantityOf(first, fallback)}};
    case 'percent':
      return percentOf(quantityOf(first, fallback), draft.percent);
    case 'range':
      return rangeOf(quantityOf(first, fallback), quantityOf(draft.measures[1], fallback), span);
    case 'tolerance': {
      const nominal = quantityOf(first, draft.measures[0].unit?.unit ?? fallback);
      return toleranceOf(
        nominal,
        quantityOf(draft.measures[1], draft.measures[2].unit?.unit ?? nominal.unit),
        quantityOf(draft.measures[2], draft.measures[1].unit?.unit ?? nominal.unit),
      );
    }
  }
}

function quantityOf({number, unit}: Measure, fallback: Unit): Quantity {
  return {value: number.value, unit: unit?.unit ?? fallback, step: number.step};
}

function rangeOf(low: Quantity, high: Quantity, span: Span): Reading {
  if (si(low) <= si(high)) return {ok: true, amount: {form: 'range', low, high}};
  const says = 'the lower limit stands above the upper one';
  return failed({name: 'amount-form', span, says, hint: 'write the lower limit first'});
}

function toleranceOf(nominal: Quantity, one: Quantity, other: Quantity): Reading {
  const [minus, plus] = difference(one) <= difference(other) ? [one, other] : [other, one];
  const amount: Amount = {form: 'tolerance', nominal, minus: {...minus, value: flip(minus.value)}, plus};
  return {ok: true, amount};
}

function percentOf(nominal: Quantity, percent: ScannedNumber): Reading {
  // Twelve figures keep the product of two stated numbers and drop the noise of the division.
  const value = Number(((Math.abs(nominal.value) * percent.value) / 100).toPrecision(12));
  const decimals = String(value).split('.')[1]?.length ?? 0;
  const part = {value, unit: nominal.unit, step: Number(`1e-${decimals}`)};
  return {ok: true, amount: {form: 'tolerance', nominal, minus: part, plus: part}};
}

/** The other sign, without making a negative nought. */
function flip(value: number): number {
  return value === 0 ? 0 : -value;
}

function splitList(text: string): Span[] {
  const spans: Span[] = [];
  let start = 0;
  for (let index = 0; index <= text.length; index++) {
    if (index < text.length && (text[index] !== ',' || groupsDigits(text, index))) continue;
    spans.push(trimmed(text, start, index));
    start = index + 1;
  }
  return spans;
}

function trimmed(text: string, start: number, end: number): Span {
  const part = text.slice(start, end);
  const from = start + part.length - part.trimStart().length;
  return {start: from, end: Math.max(from, start + part.trimEnd().length)};
}

/** Whether the comma stands between digits with just three after it, as in `1,250`. */
function groupsDigits(text: string, comma: number): boolean {
  return /\d/.test(text[comma - 1] ?? '') && /^\d{3}(?!\d)/.test(text.slice(comma + 1, comma + 5));
}

/** `100,150,200` is three values or one number; a list with a space after any comma shows that the writer spaces. */
function looksGrouped(text: string): boolean {
  return !/,\s/.test(text);
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

function clip(text: string): string {
  return text.length > 40 ? `${text.slice(0, 39)}…` : text;
}

function failed(fault: AmountFault): Reading {
  return {ok: false, fault};
}

function shifted(reading: Reading, by: number): Reading {
  if (reading.ok) return reading;
  const {span} = reading.fault;
  return {ok: false, fault: {...reading.fault, span: {start: span.start + by, end: span.end + by}}};
}

function isFault<T extends object>(result: T | AmountFault): result is AmountFault {
  return 'says' in result;
}

function isUnit(found: Unit | undefined): found is Unit {
  return found !== undefined;
}
