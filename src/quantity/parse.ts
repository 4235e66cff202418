/**
 * Reads an amount as shops write it: one value, limits, or a value with a tolerance. Never throws and never guesses:
 * what could be read two ways, or lacks its unit, comes back as a fault with the place and what to write instead.
 */
import type {Span} from '../text/source.js';
import {difference, si} from './convert.js';
import {type Draft, draftOf, flip, isFault, type Measure} from './draft.js';
import {missingUnit, unknownUnit, wrongKind} from './faults.js';
import type {Amount, AmountFault, Dimension, Quantity, Reading, Unit} from './model.js';
import {type ScannedNumber, skipSpace} from './scan.js';

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
  const [minus, plus] = difference(one) < difference(other) ? [one, other] : [other, one];
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

function failed(fault: AmountFault): Reading {
  return {ok: false, fault};
}

function shifted(reading: Reading, by: number): Reading {
  if (reading.ok) return reading;
  const {span} = reading.fault;
  return {ok: false, fault: {...reading.fault, span: {start: span.start + by, end: span.end + by}}};
}

function isUnit(found: Unit | undefined): found is Unit {
  return found !== undefined;
}
