/** The zod shape of every verb's clauses, built from the table of verbs: which it takes, which it needs, in what form. */
import * as z from 'zod';
import type {Amount} from '../quantity/model.js';
import type {ClauseValue} from './model.js';
import {
  CLAUSE_WORDS,
  type ClauseSpec,
  type ClauseWord,
  isClauseWord,
  tagSpec,
  VERBS,
  type Verb,
} from './verbs.js';

/** The values of a tag's clauses by their words. */
export type ClauseValues = {readonly [word in ClauseWord]?: ClauseValue};

export interface ShapeFault {
  readonly word: ClauseWord;
  /** The verb does not take the clause, cannot do without it, or takes another value. */
  readonly fault: 'not-taken' | 'missing' | 'wrong-value';
}

/** Holds the values of a tag's clauses against the shape of its verb. */
export function shapeFaults(verb: Verb, values: ClauseValues): ShapeFault[] {
  const result = SHAPES.get(verb)?.safeParse(values);
  return (result?.error?.issues ?? []).flatMap((issue): ShapeFault[] => {
    if (issue.code === 'unrecognized_keys') {
      return issue.keys.filter(isClauseWord).map((word) => ({word, fault: 'not-taken'}));
    }
    const [word] = issue.path;
    if (typeof word !== 'string' || !isClauseWord(word)) return [];
    return [{word, fault: values[word] === undefined ? 'missing' : 'wrong-value'}];
  });
}

function shapeOf(verb: Verb): z.ZodObject {
  const {clauses, needs} = tagSpec(verb);
  const fields: Record<string, z.ZodType> = {};
  for (const word of CLAUSE_WORDS) {
    const spec = clauses[word];
    if (spec !== undefined)
      fields[word] = needs?.includes(word) ? valueShape(spec) : valueShape(spec).optional();
  }
  return z.strictObject(fields);
}

const amount = z.custom<Amount>((value) => typeof value === 'object' && value !== null && 'form' in value);
const text = z.object({type: z.literal('text'), text: z.string().min(1)});

function valueShape(spec: ClauseSpec): z.ZodType {
  switch (spec.type) {
    case 'ids':
      return z.object({
        type: z.literal('ids'),
        ids: z.array(z.object({id: z.string(), rest: z.string()})).min(1),
      });
    case 'amount':
      return z.union([
        z.object({type: z.literal('amount'), amount}),
        ...(spec.words ? [oneOf(spec.words)] : []),
        ...(spec.orText ? [text] : []),
      ]);
    case 'amounts':
      return z.object({type: z.literal('amounts'), amounts: z.array(amount).min(1)});
    case 'word':
      return oneOf(spec.words);
    case 'text':
      return text;
  }
}

function oneOf(words: readonly string[]): z.ZodType {
  return z.object({type: z.literal('word'), word: z.enum([...words])});
}

// Stands last: the shapes are made of everything above.
const SHAPES: ReadonlyMap<Verb, z.ZodObject> = new Map(VERBS.map((verb) => [verb, shapeOf(verb)]));
