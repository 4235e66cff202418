/** A reading as it is typed: whether it can be written down, and what it says of its limits. */
import type {ReadingBox} from '../build/form.js';
import {clockText, clockTime} from '../readings/clock-time.js';
import {numberIn, readingNumber} from '../readings/reading-number.js';
import {sideOf, verdictOf} from '../readings/verdict.js';

/** What was typed, as it is written down: as the shop writes it, without its unit. */
export type Typed =
  | {readonly ok: true; readonly value: string}
  /** `comma`: could be a decimal or groups of three digits; `number`: no number alone; `nought`: less than it can be. */
  | {readonly ok: false; readonly why: 'comma' | 'number' | 'nought'};

/** A number in the unit of its box; the unit may stand behind it. Empty takes the reading back. */
export function typedReading(text: string, box: Pick<ReadingBox, 'unit' | 'fromNought'>): Typed {
  const {unit} = box;
  const trimmed = text.trim();
  const bare = unit !== '' && trimmed.endsWith(unit) ? trimmed.slice(0, -unit.length).trim() : trimmed;
  if (bare === '') return trimmed === '' ? {ok: true, value: ''} : {ok: false, why: 'number'};
  if (bare.includes(',')) return {ok: false, why: 'comma'};
  if (readingNumber(bare) === undefined) return {ok: false, why: 'number'};
  return numberIn(bare, box) === undefined ? {ok: false, why: 'nought'} : {ok: true, value: bare};
}

/** A date and time of day as they are written down; a time alone is of the day. */
export function typedTime(text: string, day: string): Typed | {readonly ok: false; readonly why: 'time'} {
  if (text.trim() === '') return {ok: true, value: ''};
  const minutes = clockTime(text, day);
  return minutes === undefined ? {ok: false, why: 'time'} : {ok: true, value: clockText(minutes)};
}

/** How many of the smallest divisions that people call out alone go to a unit (common practice, no source). */
const DIVISIONS: Readonly<Record<string, number>> = {in: 1000, mm: 100};

/** A reading that is less than so many times its upper limit may well be one, and nobody is led away from it. */
const BEYOND_DOUBT = 20;

/**
 * What may have been meant by a reading that is out: `3` for 0.003 in or 0.03 mm, as it is called out across a shop.
 * Only for a whole number without point or sign, at least twenty times the upper limit, whose divisions lie within the
 * limits. Anything else that is out stays out: a hint would lead to a value that passes and was never read.
 */
export function meant(value: string, box: ReadingBox): string | undefined {
  const divisions = DIVISIONS[box.unit];
  const {most} = box;
  if (divisions === undefined || most === undefined || !/^[1-9]\d*$/.test(value)) return undefined;
  const number = Number(value);
  const likely = Number((number / divisions).toPrecision(12));
  if (number < BEYOND_DOUBT * most || verdictOf(likely, box) === 'out') return undefined;
  return String(likely);
}

/** `near` says what makes it so: the doubt of the gauge, or where that is not known the last tenth of the tolerance. */
export type Judged =
  | {readonly verdict: 'in'}
  | {readonly verdict: 'out'; readonly side: 'over' | 'under'}
  | {readonly verdict: 'unjudged'}
  | {readonly verdict: 'near'; readonly why: 'doubt' | 'tenth'};

/** A value that was written down; undefined for an empty one, and for what is no number. */
export function judged(value: string, box: ReadingBox): Judged | undefined {
  const number = numberIn(value, box);
  if (number === undefined) return undefined;
  const verdict = verdictOf(number, box);
  if (verdict === undefined) return {verdict: 'unjudged'};
  if (verdict === 'out') return {verdict, side: sideOf(number, box) ?? 'over'};
  return verdict === 'near' ? {verdict, why: box.doubt === undefined ? 'tenth' : 'doubt'} : {verdict};
}
