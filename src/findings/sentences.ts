/** Cuts shop prose into sentences and words, each word with its place, so that what is found can be pointed at. */

/** A word, a number or a mark, in lower case. */
export interface Word {
  readonly text: string;
  readonly start: number;
  readonly end: number;
}

export type Sentence = readonly Word[];

/** No sentence of a shop is longer; what is read further is no prose, and would only cost time. */
const MOST_WORDS = 120;

/** A full stop after one of these ends no sentence. */
const ABBREVIATIONS = new Set('no fig approx dia incl e.g i.e ft lb lbs hr hrs min max'.split(' '));

/**
 * The sentences of a text. Semicolons, colons, dashes between spaces and blank lines end one too; what stands in
 * round brackets is an aside and left out. A noun that only looks like a verb (`oil pump`) is blanked.
 */
export function sentences(text: string): Sentence[] {
  const all: Word[][] = [];
  let current: Word[] = [];
  let depth = 0;
  const close = () => {
    if (current.length > 0) all.push(current.slice(0, MOST_WORDS));
    current = [];
  };
  for (const word of wordsOf(withoutCompounds(text))) {
    if (word.text === '(') depth += 1;
    else if (word.text === ')') depth = Math.max(0, depth - 1);
    else if (depth > 0) continue;
    else if (ends(text, word, current.at(-1))) close();
    else current.push(word);
  }
  close();
  return all;
}

const WORD = /[a-zµ°]+(?:[-'’][a-z]+)*|\d[\d.,/]*(?<![.,])|\n[ \t\r]*\n|[^\sa-z\d]/giu;

function* wordsOf(text: string): Generator<Word> {
  for (const found of text.matchAll(WORD)) {
    // Quotation marks, emoji and the like say nothing of where a sentence ends or a command begins.
    if (!/^[a-zµ°\d\s,.;:!?…()–—&]/iu.test(found[0])) continue;
    yield {
      text: found[0] === '&' ? 'and' : found[0].toLowerCase(),
      start: found.index,
      end: found.index + found[0].length,
    };
  }
}

function ends(text: string, word: Word, before: Word | undefined): boolean {
  if (/^[;:!?…]$/.test(word.text) || word.text.startsWith('\n')) return true;
  if (/^[–—]$/.test(word.text)) return /\s/.test(text[word.start - 1] ?? ' ');
  if (word.text !== '.' || !/\s|^$/.test(text[word.end] ?? '')) return false;
  const capital = /^\s+["“'‘*_]*[A-Z]/.test(text.slice(word.end, word.end + 12));
  return capital ? before?.text !== 'no' && before?.text !== 'fig' : !ABBREVIATIONS.has(before?.text ?? '');
}

/** Nouns of two words of which the first looks like a command. */
const COMPOUNDS = new RegExp(
  `\\b(?:${[
    'oil (?:pumps?|seals?|holes?|ways?|pans?|filters?|galler(?:y|ies)|pressure|levels?|rings?|feeds?|coolers?|cans?|drains?|lines?|pipes?|passages?|tubes?|baths?)',
    'lock ?(?:washers?|plates?|nuts?|rings?|tabs?)',
    'check (?:valves?|sheets?|lists?|marks?)',
    'seal (?:rings?|seats?|lips?|faces?|housings?|grooves?)',
    'torque (?:wrench(?:es)?|settings?|figures?|plates?|values?|tables?|specs?)',
    'press fits?',
    'fill (?:levels?|necks?|plugs?|caps?)',
    'wire brush(?:es)?',
    'gauge blocks?',
    'record sheets?',
    'stamp marks?',
    'cure times?',
    'turn signals?',
    'feeler gauges?',
    'drive (?:shafts?|gears?|belts?|wrench(?:es)?)',
    'drop (?:forgings?|links?)',
    'thrust washers?',
  ].join('|')})\\b`,
  'gi',
);

function withoutCompounds(text: string): string {
  return text.replace(COMPOUNDS, (found) => {
    const first = /^[a-z]+/i.exec(found)?.[0] ?? '';
    return `${'x'.repeat(first.length)}${found.slice(first.length)}`;
  });
}
