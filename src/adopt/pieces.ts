/** One command that stands for two: `lube the lobes with paste and the bores with oil`. */
import type {Span} from '../text/source.js';

/**
 * The text for each of them, of the same length: what belongs to the other is blanked out. `after` is where the commanding
 * word ends, `end` where the clause does. One text where the command is one.
 */
export function piecesOf(text: string, {start: after, end}: Span): readonly string[] {
  const clause = text.slice(after, end);
  for (const {index, 0: joint} of clause.matchAll(/,? and (?!an? )/g)) {
    const [first, second] = [clause.slice(0, index), clause.slice(index + joint.length)];
    if (!SAME_WAY.some((word) => word.test(first) && word.test(second) && !opens(word, second))) continue;
    const from = after + index;
    return [blanked(text, from, end), blanked(text, after, from + joint.length)];
  }
  return [text];
}

/** The same small word in both of them: with what, or to how much. */
const SAME_WAY: readonly RegExp[] = [/\b(?:with|using)\s/, /\bto\s+\d/];

/** `with paste and with oil` is one thing done with two. */
function opens(word: RegExp, text: string): boolean {
  return text.search(word) === 0;
}

function blanked(text: string, start: number, end: number): string {
  return text.slice(0, start) + ' '.repeat(end - start) + text.slice(end);
}
