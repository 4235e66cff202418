/** Reads one found book from the disk and checks it. */
import {checkWithJobs, type JobFinding, type JobsReport} from '../findings/check-jobs.js';
import {lastDateOf} from '../findings/date-bound.js';
import type {Finding} from '../findings/model.js';
import {booksForJob} from '../host/choose-jobs.js';
import type {FoundBook} from '../host/find-books.js';
import {jobsAsked, type LoadedBook, loadFound} from '../host/load.js';
import {textsOf} from '../host/places.js';
import type {Reader} from '../host/reader.js';
import type {Answer, AnswerOptions, BookReport} from './answer.js';
import {findingJson} from './finding-json.js';
import {faultJson, type HouseFaultJson} from './house-faults.js';

/** An answer, and how long it holds while no file changes. */
export interface FreshAnswer {
  readonly answer: Answer;
  /** By the calendar it holds up to this ISO 8601 date; always, where there is none. */
  readonly lastDate?: string;
}

export async function answerFresh(
  found: FoundBook,
  {cwd, date, job, rules}: AnswerOptions,
  reader: Reader,
): Promise<FreshAnswer> {
  const loaded = await loadFound(found, cwd, reader);
  if (loaded === undefined) return {answer: {reports: [], jobs: [], base: true}};
  if (!loaded.ok) return {answer: {reports: [], jobs: [], failure: loaded}};
  const chosen = job === undefined ? [loaded] : booksForJob([loaded], job);
  const judged = 'ok' in chosen ? [] : chosen.map((one) => [one, reportOf(one, date, rules)] as const);
  const reports = judged.map(([one, report]) => bookReport(one, report));
  const houseFaults = judged.flatMap(([one, report]) => faultsIn(one, report));
  const lastDate = lastDateOf(loaded.book.spec, date);
  const jobs = loaded.jobs.map(({number}) => number);
  const answer = {reports, jobs, ...(houseFaults.length > 0 && {houseFaults})};
  return {answer, ...(lastDate !== undefined && {lastDate})};
}

/** A book with a job in it is checked as it holds for that job; any other as it holds for all, and then for each job. */
function reportOf(loaded: LoadedBook, date: string, house: AnswerOptions['rules']): JobsReport {
  const jobs = loaded.book.job === undefined ? jobsAsked(loaded) : [];
  return checkWithJobs(loaded.book, jobs, {today: date, alone: loaded.alone === true, ...(house && {house})});
}

/**
 * All that was found, as plain data with lines and columns; of a book asked for in part, that part's findings.
 * What only a job has comes after what its book has.
 */
export function bookReport(loaded: LoadedBook, report: JobsReport): BookReport {
  const {book, jobs, only} = loaded;
  const texts = textsOf(book, jobs);
  const {procedures, steps, tags, judged, items, covered, uncovered} = report.summary;
  const names = [...texts.keys()];
  return {
    counts: {
      jobs: jobsAsked(loaded).length,
      procedures,
      steps,
      tags,
      items,
      covered,
      unjudged: judged ? 0 : 1,
    },
    uncovered,
    procedures: book.procedures.map(({source}) => source.file),
    files: only ? names.filter((name) => only.has(name)) : names,
    findings: asked(loaded, report).map((finding) => findingJson(finding, texts)),
  };
}

/** What went wrong in rules of the house. */
export function faultsIn({book, jobs}: LoadedBook, {houseFaults}: JobsReport): HouseFaultJson[] {
  if (houseFaults.length === 0) return [];
  const texts = textsOf(book, jobs);
  return houseFaults.map((fault) => faultJson(fault, texts));
}

function asked({only}: LoadedBook, {findings, ofJobs}: JobsReport): readonly Finding[] {
  if (only === undefined) return [...findings, ...ofJobs.map(({finding}) => finding)];
  const belongs = ({finding, jobs}: JobFinding) =>
    only.has(finding.where.file) || jobs.some(({source}) => only.has(source.file));
  return [
    ...findings.filter(({where}) => only.has(where.file)),
    ...ofJobs.filter(belongs).map(({finding}) => finding),
  ];
}
