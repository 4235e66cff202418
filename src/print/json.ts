/** The data of a print as JSON, its texts washed and made to fit: the last that happens before Typst reads it. */

import {withoutUnseen} from '../text/printable.js';
import type {Print} from './document.js';

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
  return shown.replace(LONG_WORD, withBreaks);
}

/** A word so long that a column of the sheet may be too narrow for it. */
const LONG_WORD = /\S{25,}/gu;

/** May break after every twelve characters, by a space of no width. */
function withBreaks(word: string): string {
  return word.replace(/\S{12}/gu, '$&\u200B');
}
