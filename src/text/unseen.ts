/** Characters that could turn the direction of a line or hide a part of it (Unicode TR 36, section 2.9). */

// biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters to be found.
const UNSEEN = /[\u0000-\u0008\u000B-\u001F\u007F-\u009F\u202A-\u202E\u2066-\u2069\uFEFF]/g;

export function withoutUnseen(text: string): string {
  return text.replace(UNSEEN, '');
}
