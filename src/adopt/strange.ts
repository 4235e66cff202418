/**
 * Materials that the specification does not know. A tag leaves its material out where the text names none, and the sheet
 * then takes the one that is specified: where the text names another, that would put words into its author's mouth.
 */
import type {Verb} from '../procedure/verbs.js';
import type {Phrase} from './phrases.js';
import {OF_ANYTHING} from './scores.js';
import {mentioned, type Vocabulary} from './vocabulary.js';

/** Verbs whose material the specification supplies. */
const SUPPLIED: ReadonlySet<Verb> = new Set(['lube', 'seal', 'lock', 'fill', 'stripe']);

/** Whether a command says with what, and that is no material or tool of the specification. */
export function namesStrangeMaterial(
  verb: Verb,
  phrases: readonly Phrase[],
  vocabulary: Vocabulary,
): boolean {
  if (!SUPPLIED.has(verb)) return false;
  const onto = phrases.some(({role}) => role === 'onto');
  // Of `a film of grease` only the grease is a material.
  return phrases.some((phrase) => {
    if (phrase.of === 'whole' || phrase.of === 'head') return false;
    if (phrase.role === 'with') return isStrange(phrase, vocabulary);
    // `Smear moly paste on the gears`.
    return phrase.role === 'object' && onto && isStrange(phrase, vocabulary) && !knowsAny(phrase, vocabulary);
  });
}

/** Some of its words are nobody's, and none of the names that they may be short for stands there in full. */
function isStrange({words}: Phrase, vocabulary: Vocabulary): boolean {
  const stems = new Set(words.map(({stem}) => stem));
  if (words.some(({stem}) => NO_MATERIAL.has(stem))) return false;
  const unknown = words.filter(
    ({stem, text}) => !vocabulary.weights.has(stem) && !OF_ANYTHING.has(stem) && !/^\d/.test(text),
  );
  if (unknown.length === 0) return false;
  return ![...vocabulary.spec.items.values()].some((item) => mentioned(item, stems, vocabulary) === 1);
}

function knowsAny({words}: Phrase, {weights}: Vocabulary): boolean {
  return words.some(({stem}) => weights.has(stem));
}

/** What something is put on with, and how. */
const NO_MATERIAL: ReadonlySet<string> = new Set(
  `brush rag cloth finger fingertip hand gun can bottle towel swab syringe spatula stick spray care plier wrench
  spanner twister hammer punch force pressure help`.split(/\s+/),
);
