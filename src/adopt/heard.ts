/** What one command of a step says: its phrases, its sentence, and the numbers that are its own. */
import type {Command} from '../findings/commands.js';
import {type Phrase, phrasesOf} from './phrases.js';
import {type Stretch, stretchOf} from './values.js';
import {completed, type Vocabulary} from './vocabulary.js';
import {stemsOf, wordsOf} from './words.js';

export interface Heard {
  readonly phrases: readonly Phrase[];
  /** The same, with the commanding word before them: `oil the threads`. */
  readonly withWord: readonly Phrase[];
  /** Stems of the clause, and of the sentence that it stands in. */
  readonly clause: ReadonlySet<string>;
  readonly sentence: ReadonlySet<string>;
  /** From the command to the next of its verb. */
  readonly stretch: Stretch;
  readonly text: string;
}

/** The words of a command up to the next one; `heading` helps with words that are cut short. */
export function hear(
  text: string,
  commands: readonly Command[],
  index: number,
  {heading, vocabulary}: {readonly heading: ReadonlySet<string>; readonly vocabulary: Vocabulary},
): Heard | undefined {
  const command = commands[index];
  if (command === undefined) return undefined;
  const {span, verb} = command;
  const later = commands.slice(index + 1);
  const next = later[0]?.span.start ?? text.length;
  const clauseEnd = clauseEndOf(text, commands, index);
  const word = wordsOf(text.slice(span.start, span.end));
  const words = wordsOf(text.slice(span.end, clauseEnd)).map((one) => ({
    ...one,
    stem: completed(one.stem, heading, vocabulary),
  }));
  const phrases = phrasesOf(words);
  const stretchEnd = later.find((one) => one.verb === verb)?.span.start ?? text.length;
  return {
    phrases,
    withWord: [{role: 'with', named: false, words: word}, ...phrases],
    clause: stemsOf([...word, ...words]),
    sentence: stemsOf(wordsOf(text.slice(span.start, sentenceEnd(text, span.start, next)))),
    stretch: stretchOf(text.slice(span.start, stretchEnd)),
    text: text.slice(span.start, clauseEnd),
  };
}

/** Where the clause of a command ends, with what a list adds to its object. */
export function clauseEndOf(text: string, commands: readonly Command[], index: number): number {
  const next = commands[index + 1]?.span.start ?? text.length;
  return listEnd(text, Math.min(commands[index]?.clause.end ?? next, next), next);
}

/** `the bores, the journals and the seat`: a clause goes on with what the next commas add to its object. */
function listEnd(text: string, from: number, most: number): number {
  FURTHER.lastIndex = from;
  const found = FURTHER.exec(text);
  const end = from + (found?.[0].length ?? 0);
  return found === null || end > most ? from : end;
}

const FURTHER =
  /(?:,?\s+and\s+(?:the|both|all|its|their)\s[^,.;:!?]{1,60}|,\s+(?:the|both|all|its|their)\s[^,.;:!?]{1,60}(?=[,.;:]))*/y;

function sentenceEnd(text: string, from: number, most: number): number {
  const end = /[.!?;](?=\s|$)/.exec(text.slice(from, most));
  return end === null ? most : from + end.index;
}
