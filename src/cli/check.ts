/** `wmark check`: reads books, checks them, and prints what is found. */
import {today} from '../host/clock.js';
import {type Failure, failureText} from '../host/failure.js';
import {loadBooks} from '../host/load.js';
import {printable} from '../text/printable.js';
import {type Asked, askedBooks} from './asked-books.js';
import {changedFiles, inFiles} from './changed-files.js';
import {type CheckForm, rendered} from './check-forms.js';
import {checkBooks} from './check-report.js';
import type {CheckJson} from './check-shape.js';
import {EXIT, type Exit} from './exit.js';
import {askedHouse, type HouseOptions, tellFaults} from './house.js';
import type {StopOn} from './stop-on.js';
import type {Streams} from './streams.js';
import {withoutKnown} from './without-known.js';

export interface CheckOptions extends HouseOptions {
  readonly as: CheckForm;
  /** Number of the job for which the books are judged, or `all`; left out, they are judged with all of their jobs. */
  readonly job?: string;
  /** With `since`: only findings in files that changed since. */
  readonly onlyChanged?: boolean;
  readonly since?: string;
  /** The list of known findings, which do not count. */
  readonly known?: string;
  readonly stopOn?: readonly Exclude<StopOn, 'weakened'>[];
}

export async function check(
  paths: readonly string[],
  options: CheckOptions,
  streams: Streams,
): Promise<Exit> {
  const {report, aside} = streams;
  const complain = (failure: Failure) => aside(`wmark: ${printable(failureText(failure))}\n`);
  const house = await askedHouse(options);
  if (!house.ok) {
    complain(house);
    return EXIT.unable;
  }
  const changed = await changedFiles(paths, options);
  if (changed && !changed.ok) {
    complain(changed);
    return EXIT.unable;
  }
  const {job} = options;
  const {books, failed} =
    job === undefined ? await wholeBooks(paths, streams) : await askedBooks(paths, job, streams);
  if (books.length === 0) return EXIT.unable;
  const {result: whole, faults} = checkBooks(books, {today: today(), house: house.findings});
  tellFaults(faults, house, streams);
  const all = changed ? inFiles(whole, changed.names) : whole;
  const held = await withoutKnown(all, books, {known: options.known, house: house.findings}, aside);
  if (!held.ok) {
    complain(held);
    return EXIT.unable;
  }
  const {result} = held;
  report(await rendered(options.as, held, books, house.findings));
  if (failed || faults.length > 0) return EXIT.unable;
  return stops(result, options.stopOn ?? []) ? EXIT.errors : EXIT.clean;
}

function stops({summary}: CheckJson, on: readonly StopOn[]): boolean {
  return summary.errors > 0 || (on.includes('warning') && summary.warnings > 0);
}

/** The file of a job asks for what its job has beyond the book, and not for the book as it holds for the job. */
async function wholeBooks(paths: readonly string[], {aside}: Streams): Promise<Asked> {
  const {books, failures} = await loadBooks(paths);
  for (const failure of failures) aside(`wmark: ${printable(failureText(failure))}\n`);
  return {books, failed: failures.length > 0};
}
