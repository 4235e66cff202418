/** Figures, limits, places and times as a report says them. */
import {fill} from '../text/fill.js';
import type {Spread} from './report.js';
import type {Limits} from './verdict.js';
import type {ReportWords} from './words.js';

/** Figures behind the point that the limits are printed with: those that the specification states, or that they need. */
export function limitPlaces({least, most, figures = 0}: Limits): number {
  return Math.max(figures, ...[least, most].map((end) => (end === undefined ? 0 : decimals(end))));
}

/** `0.0020–0.0035 in`, `at most 0.050 mm`; undefined without limits. Both ends with the figures of the finer. */
export function limitsText(limits: Limits & {readonly unit: string}, words: ReportWords): string | undefined {
  const {least, most, unit} = limits;
  const places = limitPlaces(limits);
  const ends = least !== undefined && most !== undefined;
  if (ends) return withUnit(`${plain(least, places)}–${plain(most, places)}`, unit);
  if (most !== undefined) return withUnit(fill(words.atMost, {most: plain(most, places)}), unit);
  return least === undefined ? undefined : withUnit(fill(words.atLeast, {least: plain(least, places)}), unit);
}

/** A check that is counted or looked at has no unit. */
export function withUnit(text: string, unit: string): string {
  return unit === '' ? text : `${text} ${unit}`;
}

/** The number in plain figures, with a true minus. */
export function plain(value: number, places = decimals(value)): string {
  return value.toFixed(Math.min(places, 12)).replace('-', '−');
}

/** Figures behind the point of the shortest decimal that gives the value. */
export function decimals(value: number): number {
  const [digits = '', exponent = '0'] = String(Number(value.toPrecision(12))).split('e');
  return Math.max(0, (digits.split('.')[1]?.length ?? 0) - Number(exponent));
}

/** `front, centre and 3 more`. */
export function few(texts: readonly string[], {andMore}: ReportWords, most = 4, between = ', '): string {
  if (texts.length <= most + 1) return texts.join(between);
  return fill(andMore, {list: texts.slice(0, most).join(between), count: texts.length - most});
}

/** `2026-03-01 09:30`: to the minute is what people remember. Whoever prints it says that it is UTC. */
export function minute(at: string): string {
  return at.slice(0, 16).replace('T', ' ');
}

/** `2026-03-01 09:30 UTC`. */
export function minuteUtc(at: string): string {
  return `${minute(at)} UTC`;
}

/** The figures as texts: those worked out have one place more than those read. */
export function figuresOf({values, smallest, mean, largest, deviation}: Spread) {
  const places = Math.max(...values.map(({value}) => decimals(value)));
  return {
    smallest: plain(smallest, places),
    mean: plain(mean, places + 1),
    largest: plain(largest, places),
    deviation: deviation === undefined ? undefined : plain(deviation, places + 1),
    places,
  };
}

/** `main bearing clearance, front`; the name alone where the item has but one place. */
export function namedAt({name, place}: {readonly name: string; readonly place: string}): string {
  return place === '' ? name : `${name}, ${place}`;
}
