/** The nearest name for a hint, within bounds that no file can stretch: the search takes time with every name there is. */
import {nearest} from '../text/nearest.js';

/** A longer word is no name that anybody mistyped. */
const LONGEST = 64;

/** Past this many problems of a kind no name is looked for: a file so wrong is not cured by hints. */
const HINTS = 30;

/** A near name out of the candidates; none where `before`, the number of problems told already, is past bounds. */
export function nearName(word: string, candidates: Iterable<string>, before: number): string | undefined {
  return before < HINTS && word.length <= LONGEST ? nearest(word, candidates) : undefined;
}
