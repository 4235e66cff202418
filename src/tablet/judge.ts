/** A reading as it is typed: whether it can be written down, and what it says of its limits. */
import type {ReadingBox} from '../build/form.js';
import {clockText, clockTime} from '../readings/clock-time.js';
import {readingNumber} from '../readings/reading-number.js';
import {sideOf, verdictOf} from '../readings/verdict.js';

/** What was typed, as it is written down: as the shop writes it, without its unit. */
export type Typed =
  | {readonly ok: true; readonly value: string}
  /** `comma`: could be a decimal or groups of three digits; `number`: no number alone. */
  | {readonly ok: false; readonly why: 'comma' | 'number'};

/** A number in the unit of its box; the unit may stand behind it. Empty takes the reading back. */
export function typedReading(text: string, unit: string): Typed {
  const trimmed = text.trim();
  const bare = unit !== '' && trimmed.endsWith(unit) ? trimmed.slice(0, -unit.length).trim() : trimmed;
  if (bare === '') return trimmed === '' ? {ok: true, value: ''} : {ok: false, why: 'number'};
  if (bare.includes(',')) return {ok: false, why: 'comma'};
  return readingNumber(bare) === undefined ? {ok: false, why: 'number'} : {ok: true, value: bare};
}

/** A date and time of day as they are written down; a time alone is of the day. */
export function typedTime(text: string, day: string): Typed | {readonly ok: false; readonly why: 'time'} {
  if (text.trim() === '') return {ok: true, value: ''};
  const minutes = clockTime(text, day);
  return minutes === undefined ? {ok: false, why: 'time'} : {ok: true, value: clockText(minutes)};
}

/** What may have been meant by a reading that is out: thousandths, or no minus. Undefined where neither is within. */
export function meant(value: string, box: ReadingBox): string | undefined {
  const number = readingNumber(value);
  if (number === undefined) return undefined;
  const likely = [number / 1000, -number].map((one) => Number(one.toPrecision(12)));
  const within = likely.find((one) => one > 0 && ['in', 'near'].includes(verdictOf(one, box) ?? ''));
  return within === undefined ? undefined : String(within);
}

/** `near` says what makes it so: the doubt of the gauge, or where that is not known the last tenth of the tolerance. */
export type Judged =
  | {readonly verdict: 'in'}
  | {readonly verdict: 'out'; readonly side: 'over' | 'under'}
  | {readonly verdict: 'unjudged'}
  | {readonly verdict: 'near'; readonly why: 'doubt' | 'tenth'};

/** A value that was written down; undefined for an empty one, and for what is no number. */
export function judged(value: string, box: ReadingBox): Judged | undefined {
  const number = readingNumber(value);
  if (number === undefined) return undefined;
  const verdict = verdictOf(number, box);
  if (verdict === undefined) return {verdict: 'unjudged'};
  if (verdict === 'out') return {verdict, side: sideOf(number, box) ?? 'over'};
  return verdict === 'near' ? {verdict, why: box.doubt === undefined ? 'tenth' : 'doubt'} : {verdict};
}
