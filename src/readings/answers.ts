/** The state of the boxes of one sheet as its entries leave them: the last answer counts, and every earlier one is kept. */
import type {Entry} from './record.js';

/** An entry with its place in the sheet's record, from 0. */
export interface Said extends Entry {
  readonly index: number;
}

export interface Answer {
  /** Everything that was ever said of the box, in the order of the record; never empty. */
  readonly history: readonly Said[];
  /** What stands now; undefined where it was taken back. */
  readonly now?: Said;
}

/** By the key of the box, in the order in which they were first answered. */
export function answersOf(entries: readonly Entry[]): ReadonlyMap<string, Answer> {
  const said = new Map<string, Said[]>();
  for (const [index, entry] of entries.entries()) {
    // Before each round had boxes of its own, a second reading was called so.
    const box = entry.box.replace(/:again$/, '@2');
    const list = said.get(box);
    if (list) list.push({...entry, index});
    else said.set(box, [{...entry, index}]);
  }
  return new Map([...said].map(([box, history]) => [box, answerOf(history)]));
}

function answerOf(history: readonly Said[]): Answer {
  const last = history.at(-1);
  return last === undefined || last.value.trim() === '' ? {history} : {history, now: last};
}
