/** Takes the words behind `wmark figure` apart: the subject, and the text given for each option. */
import type {Given} from '../trade/figure.js';

export interface FigureWords {
  readonly subject: string | undefined;
  readonly help: boolean;
  readonly given: Given;
  /** Words that stand behind no option, and options without a value. */
  readonly stray: readonly string[];
  readonly empty: readonly string[];
}

/**
 * Reads `SUBJECT --name value --name=value`. All words up to the next `--` are one value, so that `--bore 4.000 in` does
 * without quotes; a value may start with a minus.
 */
export function figureWords(words: readonly string[]): FigureWords {
  const options: [name: string, parts: string[]][] = [];
  const loose: string[] = [];
  let help = false;
  for (const word of words) {
    if (word === '--help' || word === '-h') help = true;
    else if (word.startsWith('--') && word.length > 2) options.push(opened(word));
    else (options.at(-1)?.[1] ?? loose).push(word);
  }
  const [subject, ...stray] = loose;
  const given = new Map<string, string[]>();
  for (const [name, parts] of options) {
    const value = parts.join(' ').trim();
    if (value !== '') given.set(name, [...(given.get(name) ?? []), value]);
  }
  const empty = options.filter(([, parts]) => parts.join('').trim() === '').map(([name]) => name);
  return {subject, help, given, stray, empty};
}

/** `--name` or `--name=value`. */
function opened(word: string): [name: string, parts: string[]] {
  const sign = word.indexOf('=');
  return sign < 0 ? [word.slice(2), []] : [word.slice(2, sign), [word.slice(sign + 1)]];
}
