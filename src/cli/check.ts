/** `wmark check`: reads books, checks them, and prints what is found. */
import {checkWithJobs} from '../findings/check-jobs.js';
import {today} from '../host/clock.js';
import {failureText} from '../host/failure.js';
import {jobsAsked, type LoadedBook, loadBooks} from '../host/load.js';
import {printable} from '../text/printable.js';
import {type Asked, askedBooks} from './asked-books.js';
import {type Checked, checkJson, checkText} from './check-report.js';
import {EXIT, type Exit} from './exit.js';
import type {Streams} from './streams.js';

export interface CheckOptions {
  readonly as: 'text' | 'json';
  /** Number of the job for which the books are judged, or `all`; left out, they are judged with all of their jobs. */
  readonly job?: string;
}

export async function check(
  paths: readonly string[],
  {as, job}: CheckOptions,
  streams: Streams,
): Promise<Exit> {
  const {books, failed} =
    job === undefined ? await wholeBooks(paths, streams) : await askedBooks(paths, job, streams);
  if (books.length === 0) return EXIT.unable;
  const result = checkJson(books.map((loaded) => checked(loaded, today())));
  streams.report(as === 'json' ? `${JSON.stringify(result, null, 2)}\n` : checkText(result));
  if (failed) return EXIT.unable;
  return result.summary.errors > 0 ? EXIT.errors : EXIT.clean;
}

/** The file of a job asks for what its job has beyond the book, and not for the book as it holds for the job. */
async function wholeBooks(paths: readonly string[], {aside}: Streams): Promise<Asked> {
  const {books, failures} = await loadBooks(paths);
  for (const failure of failures) aside(`wmark: ${printable(failureText(failure))}\n`);
  return {books, failed: failures.length > 0};
}

/** A book with a job in it as it holds for that job; any other as it holds for all, and then for each job. */
function checked(loaded: LoadedBook, date: string): Checked {
  const jobs = loaded.book.job === undefined ? jobsAsked(loaded) : [];
  const alone = loaded.alone === true;
  return {loaded, report: checkWithJobs(loaded.book, jobs, {today: date, alone})};
}
