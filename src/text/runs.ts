/** Runs of characters at the end of a text, for which a regular expression would try every place of the text. */

/** Where the run begins that ends at `end` and whose UTF-16 units all match `belongs`, a pattern for one character. */
export function runBefore(text: string, end: number, belongs: RegExp): number {
  let start = end;
  while (start > 0 && belongs.test(text.charAt(start - 1))) start--;
  return start;
}

/** The text without the run of such characters at its end. */
export function withoutEnd(text: string, belongs: RegExp): string {
  return text.slice(0, runBefore(text, text.length, belongs));
}
