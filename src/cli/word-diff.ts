/** Two wordings of one text laid beside each other word by word: the longest run of words that both hold is kept. */

/** Words as they stand, one after another, with whether the other wording holds them too. */
export interface Stretch {
  readonly text: string;
  readonly kept: boolean;
}

/** Both wordings, each in full; where they are too long to be laid beside each other, as a whole. */
export function wordDiff(before: string, now: string): {before: readonly Stretch[]; now: readonly Stretch[]} {
  const [a, b] = [before.split(' '), now.split(' ')];
  if (a.length * b.length > LARGEST_TABLE)
    return {before: [{text: before, kept: false}], now: [{text: now, kept: false}]};
  const [keptA, keptB] = common(a, b);
  return {before: stretches(a, keptA), now: stretches(b, keptB)};
}

const LARGEST_TABLE = 250_000;

/** Indexes of the words of the longest common subsequence (Needleman and Wunsch without gap penalty; from memory). */
function common(a: readonly string[], b: readonly string[]): [ReadonlySet<number>, ReadonlySet<number>] {
  const width = b.length + 1;
  const length = new Uint32Array((a.length + 1) * width);
  const at = (i: number, j: number) => length[i * width + j] ?? 0;
  for (let i = a.length - 1; i >= 0; i--) {
    for (let j = b.length - 1; j >= 0; j--)
      length[i * width + j] = a[i] === b[j] ? at(i + 1, j + 1) + 1 : Math.max(at(i + 1, j), at(i, j + 1));
  }
  const [keptA, keptB] = [new Set<number>(), new Set<number>()];
  for (let [i, j] = [0, 0]; i < a.length && j < b.length; ) {
    if (a[i] === b[j]) {
      keptA.add(i++);
      keptB.add(j++);
    } else if (at(i + 1, j) >= at(i, j + 1)) i++;
    else j++;
  }
  return [keptA, keptB];
}

function stretches(words: readonly string[], kept: ReadonlySet<number>): Stretch[] {
  const found: {text: string; kept: boolean}[] = [];
  for (const [index, word] of words.entries()) {
    const last = found.at(-1);
    if (last !== undefined && last.kept === kept.has(index)) last.text += ` ${word}`;
    else found.push({text: word, kept: kept.has(index)});
  }
  return found;
}
