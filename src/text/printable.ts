/** Text from a stranger made safe to print on one line: it can neither drive a terminal nor hide its own order. */

/**
 * The text with every character that is not meant to be seen written as an escape: controls (C0, DEL, C1), line
 * and paragraph separators, and the marks that turn the direction of text (Unicode TR 36, section 2.9).
 */
export function printable(text: string): string {
  return text.replace(UNSEEN, escaped);
}

// biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters to be found.
const UNSEEN = /[\u0000-\u001F\u007F-\u009F\u061C\u200E\u200F\u2028\u2029\u202A-\u202E\u2066-\u2069\uFEFF]/g;

const SHORT: {readonly [character: string]: string} = {'\n': '\\n', '\r': '\\r', '\t': '\\t'};

function escaped(character: string): string {
  return SHORT[character] ?? `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`;
}
