/** A reading as it was typed in, as a number. */
import type {ReadingBox} from '../build/form.js';

/** At most twenty characters: no gauge shows more figures. */
const NUMBER = /^[+\-−]?(?:\d{1,18}(?:[.,]\d{0,18})?|[.,]\d{1,18})$/;

/**
 * The number, in the unit of its box; a comma is a decimal comma. Undefined for anything else: `3/4`, `1e3`, `2 thou`
 * would be guesses.
 */
export function readingNumber(text: string): number | undefined {
  const trimmed = text.trim();
  if (!NUMBER.test(trimmed)) return undefined;
  return Number(trimmed.replace('−', '-').replace(',', '.'));
}

/** The same of a box: undefined for what its reading cannot be, too. */
export function numberIn(text: string, {fromNought}: Pick<ReadingBox, 'fromNought'>): number | undefined {
  const number = readingNumber(text);
  return fromNought === true && number !== undefined && number < 0 ? undefined : number;
}
