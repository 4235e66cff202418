/** The data of a print as JSON, its texts washed and made to fit: the last that happens before Typst reads it. */
import {withoutUnseen} from '../text/printable.js';
import type {Print} from './document.js';
import {widthOf} from './width.js';

/** What is printed for a character that no font on the machine has. */
export const NO_GLYPH = '▯';

/** `missing` holds the characters that no font has. */
export function printJson({data}: Print, missing: ReadonlySet<string> = new Set()): string {
  return JSON.stringify(data, (key, value: unknown) =>
    typeof value === 'string' && !UNTOUCHED.has(key) ? fitText(value, missing) : value,
  );
}

/** Names that the template looks up, addresses and drawings. */
const UNTOUCHED: ReadonlySet<string> = new Set(['type', 'signal', 'url', 'path', 'svg', 'language', 'paper']);

function fitText(text: string, missing: ReadonlySet<string>): string {
  const seen = withoutUnseen(text);
  const shown =
    missing.size === 0
      ? seen
      : [...seen].map((character) => (missing.has(character) ? NO_GLYPH : character)).join('');
  return withBreaks(shown);
}

/** A word that may be so long that a column of the sheet is too narrow for it. */
const LONG_WORD = /\S{13,}/gu;
/** It is, from this width on. */
const TOO_WIDE = 25;

/** After how much of its width a long word may break, at the least. */
const STRIDE = 12;
/** Typst gives up on a text in which one rule finds more than 512 places. */
const MOST_BREAKS = 400;

/** Long words may break after every twelve letters' width, by a space of no width; where that were too many, more rarely. */
function withBreaks(text: string): string {
  const widths = (text.match(LONG_WORD) ?? []).map(widthOf).filter((width) => width >= TOO_WIDE);
  let stride = STRIDE;
  while (widths.reduce((sum, width) => sum + Math.floor(width / stride), 0) > MOST_BREAKS) stride *= 2;
  return text.replace(LONG_WORD, (word) => (widthOf(word) < TOO_WIDE ? word : broken(word, stride)));
}

function broken(word: string, stride: number): string {
  let result = '';
  let width = 0;
  for (const character of word) {
    result += character;
    width += widthOf(character);
    if (width < stride) continue;
    result += '\u200B';
    width = 0;
  }
  return result;
}
