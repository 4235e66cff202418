/** The job done by one pair of hands: never idle while there is work that may be started, the longest chain first. */
import type {Graph} from './task-graph.js';

export interface OnePair {
  /** In seconds from the start, waits included. */
  readonly finish: number;
  /** Indices of tasks, in the order in which they are started. */
  readonly order: readonly number[];
}

/**
 * A list schedule by the length of the chain that starts with a task. Finding the best order is a hard problem
 * (scheduling one machine with delays); this one is at most as long as all work and all waits together.
 */
export function byOnePair(graph: Graph): OnePair {
  const left = graph.before.map((before) => before.length);
  const open = new Set(left.flatMap((count, index) => (count === 0 ? [index] : [])));
  const ready: number[] = [];
  const order: number[] = [];
  let now = 0;
  let finish = 0;
  while (open.size > 0) {
    const next = choose(open, ready, now, graph.tails);
    const start = Math.max(now, ready[next] ?? 0);
    now = start + (graph.hands[next] ?? 0);
    const end = start + (graph.lengths[next] ?? 0);
    finish = Math.max(finish, end);
    order.push(next);
    open.delete(next);
    for (const after of graph.after[next] ?? []) {
      ready[after] = Math.max(ready[after] ?? 0, end);
      const count = (left[after] ?? 0) - 1;
      left[after] = count;
      if (count === 0) open.add(after);
    }
  }
  return {finish, order};
}

/** Of those that may start now the one with the longest chain behind it; if none may, the first that will. */
function choose(
  open: ReadonlySet<number>,
  ready: readonly number[],
  now: number,
  tails: readonly number[],
): number {
  const startOf = (index: number) => Math.max(now, ready[index] ?? 0);
  const better = (one: number, best: number) =>
    startOf(one) < startOf(best) ||
    (startOf(one) === startOf(best) && (tails[one] ?? 0) > (tails[best] ?? 0));
  let best: number | undefined;
  for (const index of open) if (best === undefined || better(index, best)) best = index;
  return best ?? 0;
}
