/** The nearest name to a mistyped one, for hints. */

/**
 * The candidate that takes the fewest single-character slips (insert, drop, change, swap of neighbours: the
 * optimal string alignment distance) to reach `word`, when that is at most a third of its length, and at least one.
 */
export function nearest(word: string, candidates: Iterable<string>): string | undefined {
  const reach = Math.max(1, Math.floor(word.length / 3));
  let best: string | undefined;
  let least = reach + 1;
  for (const candidate of candidates) {
    if (Math.abs(candidate.length - word.length) >= least) continue;
    const slips = distance(word, candidate);
    if (slips < least) {
      least = slips;
      best = candidate;
    }
  }
  return best;
}

function distance(from: string, to: string): number {
  let before: number[] = [];
  let last = Array.from({length: to.length + 1}, (_, index) => index);
  for (let row = 1; row <= from.length; row++) {
    const current = [row];
    for (let column = 1; column <= to.length; column++) {
      const same = from[row - 1] === to[column - 1];
      let cost = Math.min(
        (last[column] ?? 0) + 1,
        (current[column - 1] ?? 0) + 1,
        (last[column - 1] ?? 0) + (same ? 0 : 1),
      );
      const swapped = from[row - 1] === to[column - 2] && from[row - 2] === to[column - 1];
      if (swapped) cost = Math.min(cost, (before[column - 2] ?? 0) + 1);
      current.push(cost);
    }
    before = last;
    last = current;
  }
  return last[to.length] ?? 0;
}
