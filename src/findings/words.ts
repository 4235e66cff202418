/** The words, numbers and marks of shop prose, cut by hand: every step of every book goes through here. */

/** A word, a number or a mark, in lower case. */
export interface Word {
  readonly text: string;
  readonly start: number;
  readonly end: number;
}

/**
 * In order. A word may have hyphens and apostrophes inside, a number points, commas and strokes; a blank line is one
 * too. What is no mark of shop prose (quotation marks, emoji) says nothing of where a sentence ends, and is left out.
 */
export function wordsOf(raw: string): Word[] {
  const text = inSmallLetters(raw).replace(COMPOUND, withoutFirst);
  const found: Word[] = [];
  for (let start = 0; start < text.length; ) {
    const end = endOf(text, start);
    if (end === start) {
      start++;
      continue;
    }
    const said = text.slice(start, end);
    found.push({text: said === '&' ? 'and' : said, start, end});
    start = end;
  }
  return found;
}

/** Only the letters that a word is made of: one of another script might grow, and all behind it would stand elsewhere. */
function inSmallLetters(text: string): string {
  return text.replace(/[A-Z\u212a\u039c]/g, (letter) => letter.toLowerCase());
}

/** Where the word, number or mark that starts here ends; the start itself where none does. */
function endOf(text: string, start: number): number {
  const code = text.charCodeAt(start);
  if (isLetter(code)) return wordEnd(text, start);
  if (isDigit(code)) return numberEnd(text, start);
  if (code === NEWLINE) return blankLineEnd(text, start);
  return isMark(code) ? start + 1 : start;
}

const [NEWLINE, SPACE, APOSTROPHE, COMMA, HYPHEN, POINT, STROKE] = [10, 32, 39, 44, 45, 46, 47];

const MARKS = new Set([...',.;:!?…()–—&'].map((mark) => mark.charCodeAt(0)));

function isMark(code: number): boolean {
  return MARKS.has(code);
}

function wordEnd(text: string, start: number): number {
  let end = start + 1;
  while (isLetter(text.charCodeAt(end))) end++;
  while (isJoiner(text.charCodeAt(end)) && isPlainLetter(text.charCodeAt(end + 1))) {
    end += 2;
    while (isPlainLetter(text.charCodeAt(end))) end++;
  }
  return end;
}

/** A hyphen, or an apostrophe of either kind. */
function isJoiner(code: number): boolean {
  return code === HYPHEN || code === APOSTROPHE || code === 0x2019;
}

/** The points and commas at its end belong to the sentence. */
function numberEnd(text: string, start: number): number {
  let last = start;
  for (let at = start + 1; ; at++) {
    const code = text.charCodeAt(at);
    if (isDigit(code) || code === STROKE) last = at;
    else if (code !== POINT && code !== COMMA) return last + 1;
  }
}

function blankLineEnd(text: string, start: number): number {
  let end = start + 1;
  while (isBlank(text.charCodeAt(end))) end++;
  return text.charCodeAt(end) === NEWLINE ? end + 1 : start;
}

function isBlank(code: number): boolean {
  return code === SPACE || code === 9 || code === 13;
}

function isDigit(code: number): boolean {
  return code >= 48 && code <= 57;
}

/** Also the long s, which is a small s too. */
function isPlainLetter(code: number): boolean {
  return (code >= 97 && code <= 122) || code === 0x17f;
}

/** Also the signs for micro, of which there are two, and for degrees. */
function isLetter(code: number): boolean {
  return isPlainLetter(code) || code === 0xb5 || code === 0xb0 || code === 0x3bc;
}

/** Nouns of which the first word looks like a command. */
const COMPOUND = new RegExp(
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
  'g',
);

/** The noun with its first word crossed out; one that is written as one word is crossed out whole. */
function withoutFirst(noun: string): string {
  return noun.replace(/^[a-z]+/, (first) => 'x'.repeat(first.length));
}
