/** Loads what a command was asked about, says what could not be loaded, and puts the job asked for into the books. */
import {booksForJob} from '../host/choose-jobs.js';
import {type LoadedBook, loadBooks} from '../host/load.js';
import {complain} from './complain.js';
import type {Streams} from './streams.js';

export interface Asked {
  /** Each with its job in it where one was asked for. */
  readonly books: readonly LoadedBook[];
  /** Something could not be loaded, or no book has the job. */
  readonly failed: boolean;
}

/** `job` is a number or `all`; without it the books are for all engines, unless the path is that of a job itself. */
export async function askedBooks(
  paths: readonly string[],
  job: string | undefined,
  streams: Streams,
): Promise<Asked> {
  const {books, failures} = await loadBooks(paths);
  const chosen = books.length === 0 ? [] : booksForJob(books, job);
  const all = 'ok' in chosen ? [...failures, chosen] : failures;
  for (const failure of all) complain(streams, failure);
  return {books: 'ok' in chosen ? [] : chosen, failed: all.length > 0};
}
