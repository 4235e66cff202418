/** Which text of the new side is which of the old, for what is not a step: cautions, and the prose between the steps. */
import {align, type Pair} from './align.js';
import {assign} from './assign.js';
import type {Features} from './likeness.js';

/**
 * Pairs of indexes, each index at most once: first those that kept their order, then of the rest the most alike. Order
 * goes first because a shop says the same before every use of a solvent, and only the place tells which is which.
 */
export function matchTexts(before: readonly Features[], now: readonly Features[]): Pair[] {
  const inOrder = align(before, now);
  const restBefore = left(
    before,
    inOrder.map(([a]) => a),
  );
  const restNow = left(
    now,
    inOrder.map(([, b]) => b),
  );
  const moved = assign(
    restBefore.map(({one}) => one),
    restNow.map(({one}) => one),
  );
  return [
    ...inOrder,
    ...moved.flatMap(([a, b]): Pair[] => {
      const [old, fresh] = [restBefore[a], restNow[b]];
      return old === undefined || fresh === undefined ? [] : [[old.index, fresh.index]];
    }),
  ];
}

/** What is not taken, each with its place in the whole list. */
function left(all: readonly Features[], taken: readonly number[]) {
  const used = new Set(taken);
  return all.flatMap((one, index) => (used.has(index) ? [] : [{one, index}]));
}
