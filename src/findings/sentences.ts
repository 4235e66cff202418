/** Cuts shop prose into sentences and words, each word with its place, so that what is found can be pointed at. */
import {type Word, wordsOf} from './words.js';

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
  for (const word of wordsOf(text)) {
    if (word.text === '(') depth += 1;
    else if (word.text === ')') depth = Math.max(0, depth - 1);
    else if (depth > 0) continue;
    else if (isMark(word) && ends(text, word, current.at(-1))) close();
    else current.push(word);
  }
  close();
  return all;
}

/** Most words are words, of which none ends a sentence. */
function isMark({text}: Word): boolean {
  const code = text.charCodeAt(0);
  return code < 48 || code > 122 || code === 58 || code === 59 || code === 63;
}

const ENDS = new Set([';', ':', '!', '?', '…']);

function ends(text: string, word: Word, before: Word | undefined): boolean {
  if (ENDS.has(word.text) || word.text.startsWith('\n')) return true;
  if (word.text === '–' || word.text === '—') return !/\S/.test(text.charAt(word.start - 1));
  if (word.text !== '.' || !/\s|^$/.test(text[word.end] ?? '')) return false;
  const capital = /^\s+["“'‘*_]*[A-Z]/.test(text.slice(word.end, word.end + 12));
  return capital ? before?.text !== 'no' && before?.text !== 'fig' : !ABBREVIATIONS.has(before?.text ?? '');
}
