/** Checks a book and then each of its jobs, and says of the jobs only what the book itself does not have. */
import type {Book} from '../build/book.js';
import type {Job} from '../spec/job.js';
import {type CheckOptions, type CheckReport, check} from './check.js';
import type {Finding} from './model.js';

/** Of a book and its jobs. */
export interface JobsReport extends CheckReport {
  /** What the jobs have beyond the book, each once, with the jobs that it concerns among `related`. */
  readonly ofJobs: readonly JobFinding[];
}

/** A finding and the jobs that have it, at least one. */
export interface JobFinding {
  readonly finding: Finding;
  readonly jobs: readonly Job[];
}

/**
 * What `wmark check` does: the book as it holds for all engines, then for each job.
 *
 * @throws {TypeError} as `check` does
 */
export function checkWithJobs(book: Book, jobs: readonly Job[], options: CheckOptions = {}): JobsReport {
  const plain = check(book, options);
  const reports = jobs.map((job) => ({job, ...check({...book, job}, options)}));
  const faults = [plain, ...reports].flatMap(({houseFaults}) => houseFaults);
  const houseFaults = faults.filter(
    ({name}, index) => faults.findIndex((fault) => fault.name === name) === index,
  );
  return {...plain, houseFaults, ofJobs: beyond(plain.findings, reports)};
}

/** What some jobs have beyond the plain book. */
export function beyond(
  plain: readonly Finding[],
  reports: readonly {readonly job: Job; readonly findings: readonly Finding[]}[],
): JobFinding[] {
  const known = new Set(plain.map(keyOf));
  const found = new Map<string, {finding: Finding; jobs: Job[]}>();
  for (const {job, findings} of reports) {
    for (const finding of findings) {
      const key = keyOf(finding);
      // A waiver may well be of use for one engine only, and the plain book has judged it already.
      if (known.has(key) || finding.name === 'waiver-stale') continue;
      const before = found.get(key);
      if (before === undefined) found.set(key, {finding, jobs: [job]});
      else before.jobs.push(job);
    }
  }
  return [...found.values()].map(withJobs);
}

function keyOf({name, where, message}: Finding): string {
  return JSON.stringify([name, where.file, where.span.start, where.span.end, message]);
}

/** A finding that stands in a job's own file needs no word on whose it is. */
function withJobs({finding, jobs}: JobFinding): JobFinding {
  const elsewhere = jobs.filter(({source}) => source.file !== finding.where.file);
  const remarks = elsewhere.map(({number, where}) => ({where, says: `on job ${number}`}));
  return {jobs, finding: {...finding, related: [...finding.related, ...remarks]}};
}
