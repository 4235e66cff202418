/**
 * A calculation as a person at the bench asks for it: a subject with options that are read from text. Each subject is a
 * file in `figures/`; the command line and the editor read these descriptions and know no calculation themselves.
 */
import {nearest} from '../text/nearest.js';
import type {Option} from './figure-options.js';
import {type Named, type Refused, refused, type Worked} from './worked.js';

/** Text given for options, by name; an option that repeats has several. */
export type Given = ReadonlyMap<string, readonly string[]>;

export interface Figure {
  /** Kebab-case; the name of its file. */
  readonly name: string;
  /** What it answers, a clause without capital or full stop. */
  readonly says: string;
  /** In the order in which they are explained. */
  readonly options: ReadonlyMap<string, Option<unknown>>;
  /** A call that works: for each option its texts. */
  readonly example: Given;
  /** Reads the options and works the figure out; what can't be read is refused with its option's name. */
  readonly work: (given: Given) => Worked<readonly Named[]>;
}

type Options = Readonly<Record<string, Option<unknown>>>;
type Inputs<O extends Options> = {readonly [K in keyof O]: O[K] extends Option<infer T> ? T : never};

interface Description<O extends Options> {
  readonly name: string;
  readonly says: string;
  readonly options: O;
  /** Options that the example shows beside the required ones. */
  readonly shows?: readonly (keyof O & string)[];
  readonly work: (inputs: Inputs<O>) => Worked<readonly Named[]>;
}

export function figure<const O extends Options>(description: Description<O>): Figure {
  const {name, says, work, shows = []} = description;
  const options = new Map(Object.entries<Option<unknown>>(description.options));
  const shown = [...options].filter(([key, option]) => option.required || shows.includes(key));
  return {
    name,
    says,
    options,
    example: new Map(shown.map(([key, option]) => [key, option.examples])),
    work: (given) => {
      const read = readGiven(options, given);
      // Every key of the options has been read by its own reader, which the compiler can't follow through the map.
      return 'refusal' in read ? read.refusal : work(read.values as Inputs<O>);
    },
  };
}

/** The option that a mistyped name was meant for, for hints. */
export function optionHint(options: ReadonlyMap<string, unknown>, word: string): string {
  const meant = nearest(word, options.keys());
  if (meant !== undefined) return `did you mean --${meant}?`;
  return `it takes ${[...options.keys()].map((key) => `--${key}`).join(', ')}`;
}

type ReadGiven = {readonly refusal: Refused} | {readonly values: Readonly<Record<string, unknown>>};

function readGiven(options: ReadonlyMap<string, Option<unknown>>, given: Given): ReadGiven {
  const unknown = [...given.keys()].find((key) => !options.has(key));
  if (unknown !== undefined)
    return {refusal: refused(`there is no option --${unknown}`, optionHint(options, unknown))};
  const values: Record<string, unknown> = {};
  for (const [key, option] of options) {
    const texts = given.get(key);
    if (texts === undefined && option.required) return {refusal: missing(key, option)};
    const read = texts === undefined ? option.absent : option.read(texts);
    if (!read.ok) return {refusal: refused(`--${key}: ${read.says}`, read.hint)};
    values[key] = read.value;
  }
  return {values};
}

function missing(key: string, {says, examples}: Option<unknown>): Refused {
  return refused(`--${key} is missing: ${says}`, `write --${key} "${examples[0] ?? ''}"`);
}
