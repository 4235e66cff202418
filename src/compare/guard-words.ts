/**
 * Words that a warning, a limit or a direction hangs on, and which of them a text lost when it was worded anew. A lost "never" can
 * turn an instruction round without a tag or value changed; the list is common practice of editors, no source.
 */
import {wordsOf} from './likeness.js';

/** Words of one group stand in for each other: "never" may become "do not". */
const GROUPS: readonly (readonly string[])[] = [
  'no not never nobody none nothing nor neither without cannot'.split(' '),
  ['only'],
  ['before', 'until', 'till'],
  ['unless', 'except'],
  ['every', 'all', 'each', 'both'],
  ['must', 'always'],
  ['stop'],
  // Which way round a part goes in, or a thread is turned.
  ['clockwise'],
  ['anticlockwise', 'counterclockwise'],
  ['left'],
  ['right'],
  ['inward', 'inwards'],
  ['outward', 'outwards'],
  ['arrow', 'arrows'],
];

/** Sentences of a text by their words alone, so that case and marks between words do not count. */
export function sentencesOf(text: string): readonly string[] {
  return spelledOut(text)
    .split(/[.!?;]/)
    .map((one) => wordsOf(one).join(' '))
    .filter((one) => one !== '');
}

/**
 * The words of the old text that the new one has no other of its group for, each once, in order. Sentences that stand
 * on both sides, or of which `elsewhere` says that they stand at another place now, are left out.
 */
export function lostGuards(before: string, now: string, elsewhere: (sentence: string) => boolean): string[] {
  const [old, fresh] = [sentencesOf(before), sentencesOf(now)];
  const gone = wordsIn(old.filter((one) => !fresh.includes(one) && !elsewhere(one)));
  const come = wordsIn(fresh.filter((one) => !old.includes(one)));
  return GROUPS.flatMap((group) => {
    const of = (words: readonly string[]) => words.filter((word) => group.includes(word));
    if (of(gone).length <= of(come).length) return [];
    return group.filter((word) => count(gone, word) > count(come, word));
  });
}

function count(words: readonly string[], word: string): number {
  return words.filter((one) => one === word).length;
}

function wordsIn(sentences: readonly string[]): string[] {
  return sentences.flatMap((one) => one.split(' '));
}

/** "don't" and "can't" are "do not" and "cannot"; "anti-clockwise" is one word. */
function spelledOut(text: string): string {
  return text
    .replace(/can['’]t\b/gi, 'cannot')
    .replace(/n['’]t\b/gi, ' not')
    .replace(/\b(anti|counter)-(?=clockwise)/gi, '$1');
}
