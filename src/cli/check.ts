/** `wmark check`: reads books, checks them, and prints what is found. */
import {checkWithJobs} from '../findings/check-jobs.js';
import {today} from '../host/clock.js';
import {failureText} from '../host/failure.js';
import {jobsAsked, loadBooks} from '../host/load.js';
import {printable} from '../text/printable.js';
import {checkJson, checkText} from './check-report.js';
import {EXIT, type Exit} from './exit.js';
import type {Streams} from './streams.js';

export interface CheckOptions {
  readonly as: 'text' | 'json';
}

export async function check(
  paths: readonly string[],
  {as}: CheckOptions,
  {report, aside}: Streams,
): Promise<Exit> {
  const {books, failures} = await loadBooks(paths);
  for (const failure of failures) aside(`wmark: ${printable(failureText(failure))}\n`);
  if (books.length === 0) return EXIT.unable;
  const date = today();
  const result = checkJson(
    books.map((loaded) => ({
      loaded,
      report: checkWithJobs(loaded.book, jobsAsked(loaded), {today: date, alone: loaded.alone === true}),
    })),
  );
  report(as === 'json' ? `${JSON.stringify(result, null, 2)}\n` : checkText(result));
  if (failures.length > 0) return EXIT.unable;
  return result.summary.errors > 0 ? EXIT.errors : EXIT.clean;
}
