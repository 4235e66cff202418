/** A reading as it was typed in, as a number. */

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
