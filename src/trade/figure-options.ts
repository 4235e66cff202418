/** The kinds of option that a figure takes, each with the reader that turns its text into a value or says what is wrong. */
import {usualUnits, withArticle} from '../quantity/faults.js';
import type {Amount, Dimension, Quantity} from '../quantity/model.js';
import {readAmount, readAmounts} from '../quantity/parse.js';
import {clipped} from '../text/clipped.js';
import {nearest} from '../text/nearest.js';
import {type Refused, refused} from './worked.js';

export type Read<T> = {readonly ok: true; readonly value: T} | Refused;

export interface Option<T> {
  /** What it is: "bore of the cylinder". */
  readonly says: string;
  /** What it takes: "a length", "one of cup, domed". */
  readonly takes: string;
  /** One text that it takes, or as many as show how it repeats. */
  readonly examples: readonly string[];
  readonly required: boolean;
  readonly repeats: boolean;
  /** Of all texts that were given for it, one at least. */
  readonly read: (texts: readonly string[]) => Read<T>;
  /** What stands for it where it is not given. */
  readonly absent: Read<T>;
}

/** One value with a unit of the dimension. */
export function quantity(dimension: Dimension, says: string, example: string): Option<Quantity> {
  const takes = withArticle(dimension);
  return one(takes, says, example, (text) => singleOf(readAmountOf(text, dimension), takes));
}

/** A value or limits: `1.500 in`, `1.500–1.502 in`, `1.501 ±0.001 in`. */
export function amount(dimension: Dimension, says: string, example: string): Option<Amount> {
  const takes = `${withArticle(dimension)}, or its limits`;
  return one(takes, says, example, (text) => readAmountOf(text, dimension));
}

/** Values apart by commas, which may share one unit: `30, 60, 85 lbf·ft`. */
export function list(dimension: Dimension, says: string, example: string): Option<readonly Quantity[]> {
  const takes = `values in ${usualUnits(dimension)}, apart by commas`;
  return one(takes, says, example, (text) => readList(text, dimension));
}

/** A plain number. */
export function number(says: string, example: string): Option<number> {
  return one('a number', says, example, (text) => {
    const plain = text.trim().replace('−', '-');
    const value = /^[-+]?(?:\d+(?:\.\d*)?|\.\d+)$/.test(plain) ? Number(plain) : Number.NaN;
    if (Number.isFinite(value)) return {ok: true, value};
    return refused(`"${clip(text)}" is not a plain number`, `write it as ${example}, without a unit`);
  });
}

/** One of some words. */
export function word<const W extends string>(words: readonly W[], says: string, example: W): Option<W> {
  const all = words.join(', ');
  return one(`one of ${all}`, says, example, (text) => {
    const plain = text.trim().toLowerCase();
    const found = words.find((one) => one === plain);
    if (found !== undefined) return {ok: true, value: found};
    const meant = nearest(plain, words);
    return refused(`"${clip(text)}" is not known`, meant ? `did you mean ${meant}?` : `write one of ${all}`);
  });
}

/** A text with a reader of its own. */
export function text<T>(
  takes: string,
  says: string,
  example: string,
  read: (text: string) => Read<T>,
): Option<T> {
  return one(takes, says, example, read);
}

export function optional<T>(option: Option<T>): Option<T | undefined> {
  return {...option, required: false, absent: {ok: true, value: undefined}};
}

/** Given once or more, each time with one value. */
export function repeated<T>(option: Option<T>, ...more: readonly string[]): Option<readonly T[]> {
  return {
    ...option,
    examples: [...option.examples, ...more],
    repeats: true,
    absent: refused('nothing was given', 'give one at least'),
    read: (texts) => {
      const values: T[] = [];
      for (const each of texts) {
        const read = option.read([each]);
        if (!read.ok) return read;
        values.push(read.value);
      }
      return {ok: true, value: values};
    },
  };
}

/** Reads values apart by commas, all of one dimension. */
export function readList(text: string, dimension: Dimension): Read<readonly Quantity[]> {
  const values: Quantity[] = [];
  for (const {reading} of readAmounts(text, dimension)) {
    if (!reading.ok) {
      const hint = withCommas(text) ?? reading.fault.hint;
      return refused(reading.fault.says, hint);
    }
    const read = singleOf({ok: true, value: reading.amount}, withArticle(dimension));
    if (!read.ok) return read;
    values.push(read.value);
  }
  return {ok: true, value: values};
}

/** What numbers that only blanks part were meant to be. */
function withCommas(text: string): string | undefined {
  const parted = text.trim().replace(/(\d)\s+(?=[\d.])/g, '$1, ');
  return text.includes(',') || parted === text.trim() ? undefined : `part them by commas: ${parted}`;
}

/** Reads an amount with a unit of the dimension. */
export function readAmountOf(text: string, dimension: Dimension): Read<Amount> {
  const reading = readAmount(text, dimension);
  if (reading.ok) return {ok: true, value: reading.amount};
  return refused(reading.fault.says, reading.fault.hint);
}

function singleOf(read: Read<Amount>, takes: string): Read<Quantity> {
  if (!read.ok) return read;
  if (read.value.form === 'single') return {ok: true, value: read.value.value};
  return refused(`limits were given where ${takes} is due`, 'give one value');
}

function one<T>(takes: string, says: string, example: string, read: (text: string) => Read<T>): Option<T> {
  return {
    says,
    takes,
    examples: [example],
    required: true,
    repeats: false,
    absent: refused('nothing was given', `such as ${example}`),
    read: ([first = '', ...more]) =>
      more.length > 0 ? refused('it was given more than once', 'give it once') : read(first),
  };
}

function clip(given: string): string {
  return clipped(given, 30);
}
