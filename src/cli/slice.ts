/** `--slice K/N`: one of N shares of the books, so that several machines can share a check. */
import {createHash} from 'node:crypto';
import {InvalidArgumentError} from 'commander';

/** Both count from 1. */
export interface Slice {
  readonly number: number;
  readonly of: number;
}

/** `2/3` as typed. */
export function sliceWord(word: string): Slice {
  const [, number, of] = /^([1-9]\d{0,5})\/([1-9]\d{0,5})$/.exec(word.trim()) ?? [];
  if (number === undefined || of === undefined || Number(number) > Number(of)) {
    throw new InvalidArgumentError(
      'It is the number of a slice and how many there are: 1/4, 2/4, 3/4 or 4/4.',
    );
  }
  return {number: Number(number), of: Number(of)};
}

/**
 * The places of the books that belong to a slice, in order. By their names alone: they are dealt out in the order of
 * their digests, so that slices differ by one book at most and large neighbours do not all fall to one.
 */
export function placesIn(names: readonly string[], {number, of}: Slice): number[] {
  const dealt = names.map((name, at) => ({at, digest: digestOf(name)}));
  dealt.sort((one, other) =>
    one.digest < other.digest ? -1 : one.digest > other.digest ? 1 : one.at - other.at,
  );
  return dealt
    .filter((_, rank) => rank % of === number - 1)
    .map(({at}) => at)
    .sort((one, other) => one - other);
}

/** Of all the books that a run found, so that slices of two different folders are not taken for one. */
export function listDigest(names: readonly string[]): string {
  return digestOf(JSON.stringify(names));
}

function digestOf(text: string): string {
  return createHash('sha256').update(text).digest('hex');
}
