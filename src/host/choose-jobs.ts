/** Which engines on the stand a command is about: `--job NUMBER`, `--job all`, or the path of a job's own file. */
import type {Job} from '../spec/job.js';
import {nearest} from '../text/nearest.js';
import type {Failure} from './failure.js';
import type {LoadedBook} from './load.js';

/** In place of a number: every job of every book. */
const ALL = 'all';

/** No list of job numbers is printed longer than this. */
const MOST_LISTED = 20;

/**
 * The books as they stand, each asked for by the file of a job with that job in it; with a number, only the books
 * that have it, with it; with `all`, each book once for each of its jobs. A failure where no book has it.
 */
export function booksForJob(
  books: readonly LoadedBook[],
  wanted: string | undefined,
): readonly LoadedBook[] | Failure {
  if (wanted === undefined) return books.flatMap(byPath);
  const number = wanted.trim();
  const chosen = books.flatMap((loaded) =>
    loaded.jobs.filter((job) => number === ALL || job.number === number).map((job) => withJob(loaded, job)),
  );
  const known = books.flatMap(({jobs}) => jobs.map((job) => job.number));
  return chosen.length > 0 ? chosen : noSuchJob(known, number);
}

/** `only` that names jobs alone asks for all of each of them. */
function byPath(loaded: LoadedBook): LoadedBook[] {
  const {only, jobs, ...whole} = loaded;
  const named = only ? jobs.filter(({source}) => only.has(source.file)) : [];
  if (only === undefined || named.length === 0 || named.length < only.size) return [loaded];
  return named.map((job) => withJob({...whole, jobs}, job));
}

function withJob(loaded: LoadedBook, job: Job): LoadedBook {
  return {...loaded, jobs: [job], book: {...loaded.book, job}};
}

/** No book has the job; `numbers` are those of all their jobs. */
export function noSuchJob(numbers: readonly string[], wanted: string): Failure {
  const known = [...new Set(numbers)];
  const number = wanted.trim();
  if (known.length === 0) {
    return {
      ok: false,
      says: 'no book here has a job',
      hint: 'write one to jobs/NUMBER.yaml beside its engine.yaml',
    };
  }
  const near = nearest(
    number.toLowerCase(),
    known.map((one) => one.toLowerCase()),
  );
  const meant = known.find((one) => one.toLowerCase() === near);
  const more = known.length > MOST_LISTED ? ' …' : '';
  const list = `the jobs are ${known.slice(0, MOST_LISTED).join(', ')}${more}`;
  return {
    ok: false,
    says: `no book here has a job ${number}`,
    hint: meant === undefined ? list : `did you mean ${meant}? ${list}`,
  };
}
