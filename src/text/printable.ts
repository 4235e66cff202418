/**
 * Text from a stranger made safe to print: it can neither drive a terminal nor hide its own order. There are three ways,
 * by where it goes: `printable` for a text within a line, `disarmed` for a whole report, `withoutUnseen` for a page.
 */

/**
 * The text with every character that is not meant to be seen written as an escape: controls (C0, DEL, C1), line
 * and paragraph separators, the marks that turn the direction of text (Unicode TR 36, section 2.9), halves of surrogate
 * pairs, and what takes no room at all. The joiners stay, without which neither Persian nor many an emoji can be written.
 */
export function printable(text: string): string {
  return text.replace(UNSEEN, escaped);
}

const UNSEEN =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters to be found.
  /[\u0000-\u001F\u007F-\u009F\u00AD\u061C\u180E\u200B\u200E\u200F\u2028-\u202E\u2060-\u206F\uFEFF\uFFF9-\uFFFB]|[\u{E0000}-\u{E007F}]|\p{Cs}/gu;

/**
 * The text of a whole report, whatever its form, with what could drive a terminal or turn the order of its lines written
 * as an escape. The escapes are those of JSON, so that a report in JSON says what it said; line ends and tabs stay.
 */
export function disarmed(report: string): string {
  return report.replace(ARMED, escaped);
}

const ARMED =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters to be found.
  /[\u0000-\u0008\u000B\u000C\u000E-\u001F\u007F-\u009F\u202A-\u202E\u2066-\u2069]|\r(?!\n)/g;

/**
 * The text of a page without what could turn the direction of a line or hide a part of it (Unicode TR 36, section 2.9).
 * On paper an escape would only puzzle the reader, so these are left out. Marks that turn nothing by themselves
 * (U+200E, U+200F, the joiners) stay, without which some scripts can't be set.
 */
export function withoutUnseen(text: string): string {
  return text.replace(TURNING, '');
}

const TURNING =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters to be found.
  /[\u0000-\u0008\u000B-\u001F\u007F-\u009F\u202A-\u202E\u2066-\u2069\uFEFF]/g;

const SHORT: {readonly [character: string]: string} = {'\n': '\\n', '\r': '\\r', '\t': '\\t'};

function escaped(character: string): string {
  const code = (character.codePointAt(0) ?? 0).toString(16);
  return SHORT[character] ?? (code.length > 4 ? `\\u{${code}}` : `\\u${code.padStart(4, '0')}`);
}
