/** Text from a stranger made safe to print on one line: it can neither drive a terminal nor hide its own order. */

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

const SHORT: {readonly [character: string]: string} = {'\n': '\\n', '\r': '\\r', '\t': '\\t'};

function escaped(character: string): string {
  const code = (character.codePointAt(0) ?? 0).toString(16);
  return SHORT[character] ?? (code.length > 4 ? `\\u{${code}}` : `\\u${code.padStart(4, '0')}`);
}
