/** Whose initials are the same hand. */

/** `A. B.`, `a b` and `ＡＢ` are one hand: the initials without case, blanks and marks between. */
export function hand(initials: string): string {
  return initials
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[\s.,\-_/]/g, '');
}
