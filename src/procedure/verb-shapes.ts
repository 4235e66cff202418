/**
 * Holds a tag's clauses against what its verb takes and needs. Plain checks and no zod shapes, because this runs for
 * every tag, and no schema is made from it.
 */
import type {ClauseValue} from './model.js';
import {type ClauseSpec, type ClauseWord, tagSpec, type Verb} from './verbs.js';

/** The value of a tag's clause by its word; undefined where it could not be read. */
export type ClauseValues = ReadonlyMap<ClauseWord, ClauseValue | undefined>;

export interface ShapeFault {
  readonly word: ClauseWord;
  /** The verb does not take the clause, cannot do without it, or takes another value. */
  readonly fault: 'not-taken' | 'missing' | 'wrong-value';
}

/** What is wrong with the clauses that stand in a tag, and which of those that it needs do not. */
export function shapeFaults(verb: Verb, values: ClauseValues): ShapeFault[] {
  const {clauses, needs} = tagSpec(verb);
  const faults: ShapeFault[] = [];
  for (const word of needs ?? NOTHING) {
    if (values.get(word) === undefined) faults.push({word, fault: 'missing'});
  }
  for (const [word, value] of values) {
    const spec = clauses[word];
    if (spec === undefined) faults.push({word, fault: 'not-taken'});
    else if (value !== undefined && !fits(spec, value)) faults.push({word, fault: 'wrong-value'});
  }
  return faults;
}

const NOTHING: readonly ClauseWord[] = [];

function fits(spec: ClauseSpec, value: ClauseValue): boolean {
  switch (value.type) {
    case 'ids':
      return spec.type === 'ids' && value.ids.length > 0;
    case 'amount':
      return spec.type === 'amount';
    case 'amounts':
      return spec.type === 'amounts' && value.amounts.length > 0;
    case 'word':
      return 'words' in spec && spec.words !== undefined && spec.words.includes(value.word);
    case 'text':
      return value.text !== '' && (spec.type === 'text' || (spec.type === 'amount' && spec.orText === true));
  }
}
