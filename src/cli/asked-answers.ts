/** Finds the books that a check was asked about, or one slice of them, and has them answered for. */
import type {HouseFinding} from '../findings/house.js';
import {NO_CACHE} from '../host/cache.js';
import {today} from '../host/clock.js';
import type {Failure} from '../host/failure.js';
import {findBooks} from '../host/find-books.js';
import {shownName} from '../host/names.js';
import type {Answer} from './answer.js';
import {answers} from './answers.js';
import {type CacheOptions, cacheFor} from './cache-for.js';
import {listDigest, placesIn, type Slice} from './slice.js';
import type {Streams} from './streams.js';

export interface AskedAnswers {
  /** Of paths that lead to no book. */
  readonly failures: readonly Failure[];
  /** Each with the place of its book among all that were found, in order. */
  readonly answers: AsyncIterable<PlacedAnswer>;
  /** Of the names of all books found. */
  readonly list: string;
}

/** `at` is the place of the book among all that were found, so that slices can be put together in order. */
export interface PlacedAnswer {
  readonly at: number;
  readonly answer: Answer;
}

export interface AskedOptions extends CacheOptions {
  readonly job?: string | undefined;
  readonly slice?: Slice | undefined;
  readonly rules?: readonly HouseFinding[] | undefined;
}

export async function askedAnswers(
  paths: readonly string[],
  options: AskedOptions,
  {progress}: Pick<Streams, 'progress'>,
): Promise<AskedAnswers> {
  const cwd = process.cwd();
  const {found, failures} = await findBooks(paths, cwd);
  const names = found.map(
    ({engineFile, alone = ''}) => `${shownName(engineFile, cwd)}\n${shownName(alone, cwd)}`,
  );
  const places = placesIn(names, options.slice ?? {number: 1, of: 1});
  const chosen = found.filter((_, at) => places.includes(at));
  return {failures, list: listDigest(names), answers: placed()};

  async function* placed(): AsyncGenerator<PlacedAnswer> {
    const {job, rules} = options;
    const cache = rules ? NO_CACHE : cacheFor(options);
    let done = 0;
    for await (const answer of answers(chosen, {cwd, date: today(), job, rules}, cache)) {
      yield {at: places[done] ?? 0, answer};
      done++;
      progress(`${done} of ${chosen.length} books checked`);
    }
    await cache.sweep();
    progress('');
  }
}
