/** The nearest name for a hint, within bounds that no file can stretch: the search takes time with every name there is. */
import {nearest} from '../text/nearest.js';

/** A longer word is no name that anybody mistyped. */
const LONGEST = 64;

/** Past this many problems of a kind no name is looked for: a file so wrong is not cured by hints. */
const HINTS = 30;

/** A near name out of the candidates; none where `before`, the number of problems told already, is past bounds. */
export function nearName(word: string, candidates: Iterable<string>, before: number): string | undefined {
  if (before >= HINTS || word.length > LONGEST) return undefined;
  const all = [...candidates];
  return nearest(word, all) ?? shortened(word, all);
}

/** The one name of which each word was cut short, or the last left out: `engine-no` for `engine-number`. */
function shortened(word: string, candidates: readonly string[]): string | undefined {
  const parts = word.split('-');
  if (parts.length < 2) return undefined;
  const fitting = candidates.filter((candidate) => {
    const whole = candidate.split('-');
    return parts.every((part, at) => part !== '' && isCut(part, whole[at] ?? ''));
  });
  return fitting.length === 1 ? fitting[0] : undefined;
}

/** `no` is short for number as well, though it is cut out of numero. */
function isCut(part: string, whole: string): boolean {
  return whole.startsWith(part) || (part === 'no' && whole === 'number');
}
