/** The state of the boxes of one sheet as its entries leave them: the last answer counts, and every earlier one is kept. */
import {grouped} from '../text/grouped.js';
import type {Entry} from './record.js';

/** An entry with its place in the sheet's record, from 0. */
export interface Said extends Entry {
  readonly index: number;
}

/** A box, and everything that was written into it. */
export interface Answer {
  /** Everything that was ever said of the box, in the order of the record; never empty. */
  readonly history: readonly Said[];
  /** What stands now; undefined where it was taken back. */
  readonly now?: Said;
}

/** By the key of the box, in the order in which they were first answered. */
export function answersOf(entries: readonly Entry[]): ReadonlyMap<string, Answer> {
  const said = entries.map((entry, index): Said => ({...entry, index}));
  // Before each round had boxes of its own, a second reading was called so.
  const byBox = grouped(said, ({box}) => box.replace(/:again$/, '@2'));
  return new Map([...byBox].map(([box, history]) => [box, answerOf(history)]));
}

function answerOf(history: readonly Said[]): Answer {
  const last = history.at(-1);
  return last === undefined || last.value.trim() === '' ? {history} : {history, now: last};
}
