/** One run of the fuzzer over one subject: inputs that reach new parts of the program join the corpus. */
import {createHash} from 'node:crypto';
import type {Random} from '../help/random.js';
import type {Coverage} from './coverage.js';
import {minimised} from './minimise.js';
import {mutated, pick} from './mutate.js';
import type {Subject} from './subjects.js';

export interface Crash {
  readonly subject: string;
  readonly text: string;
  readonly says: string;
}

export interface Fuzzed {
  readonly inputs: number;
  readonly kept: number;
  readonly crashes: readonly Crash[];
}

/** How many inputs are tried between two looks at the coverage, which is dear. */
const BATCH = 20;

/** Goes on while `more` says so; a fault that was seen before is not told again. */
export async function fuzz(
  subject: Subject,
  {
    random,
    coverage,
    more,
  }: {readonly random: Random; readonly coverage?: Coverage; readonly more: (inputs: number) => boolean},
): Promise<Fuzzed> {
  const corpus = [...subject.seeds];
  const crashes = new Map<string, Crash>();
  let inputs = 0;
  let kept = 0;
  const tell = async (text: string, says: string) => {
    if (crashes.has(kindOf(says))) return;
    crashes.set(kindOf(says), {subject: subject.name, text, says});
    const shows = async (shorter: string) => kindOf(faultOf(subject, shorter) ?? '') === kindOf(says);
    crashes.set(kindOf(says), {subject: subject.name, text: await minimised(text, shows), says});
  };
  for (const seed of subject.seeds) {
    const says = faultOf(subject, seed);
    if (says !== undefined) await tell(seed, says);
  }
  await coverage?.fresh();
  while (more(inputs)) {
    const batch = Array.from({length: BATCH}, () => mutated(pick(corpus, random) ?? '', corpus, random));
    for (const text of batch) {
      inputs++;
      const says = faultOf(subject, text);
      if (says !== undefined) await tell(text, says);
    }
    if (coverage === undefined || (await coverage.fresh()) === 0) continue;
    // Which of them it was is not worth a second run of each.
    corpus.push(...batch);
    kept += batch.length;
  }
  return {inputs, kept, crashes: [...crashes.values()]};
}

/** What is wrong with a text; nothing where all holds. */
export function faultOf(subject: Subject, text: string): string | undefined {
  try {
    subject.run(text);
    return undefined;
  } catch (error) {
    return error instanceof Error ? (error.stack ?? error.message) : String(error);
  }
}

/** Two faults are one where the message, its figures apart, and the place of the throw are the same. */
function kindOf(says: string): string {
  return says
    .split('\n')
    .slice(0, 2)
    .join(' ')
    .replace(/\d+/g, '0')
    .replace(/"[^"]*"/g, '""')
    .slice(0, 160);
}

/** A name for the file of a kept input. */
export function nameOf(text: string): string {
  return `${createHash('sha256').update(text).digest('hex').slice(0, 10)}.txt`;
}
