/** What the JSON report of a slice holds beyond any other, so that slices can be put together to the report of one run. */
import type {Failure} from '../host/failure.js';
import type {PlacedAnswer} from './asked-answers.js';
import type {CheckJson, SliceJson} from './check-shape.js';
import type {Slice} from './slice.js';
import {build} from './version.js';

export interface SliceHead extends Slice {
  readonly job?: string | undefined;
  /** Digest of the names of all books that the run found. */
  readonly list: string;
}

/** Findings are not told twice: each report says how many of them are its own. */
export function slicePart(
  head: SliceHead,
  placed: readonly PlacedAnswer[],
  {failures, path}: {readonly failures: readonly Failure[]; readonly path: string},
): SliceJson {
  const {number, of, list, job = null} = head;
  return {
    number,
    of,
    build,
    list,
    job,
    path,
    failures: failures.map(failureJson),
    books: placed.map(({at, answer: {reports, jobs, base = false, failure}}) => ({
      at,
      jobs: [...jobs],
      base,
      failure: failure ? failureJson(failure) : null,
      reports: reports.map(({counts, uncovered, procedures, files, findings}) => ({
        counts,
        uncovered: [...uncovered],
        procedures: [...procedures],
        files: [...files],
        findings: findings.length,
      })),
    })),
  };
}

/** The answers that the report of a slice was made of, in order. */
export function answersIn(slice: SliceJson, findings: CheckJson['findings']): PlacedAnswer[] {
  let from = 0;
  return slice.books.map(({at, jobs, base, failure, reports}) => ({
    at,
    answer: {
      jobs,
      ...(base && {base}),
      ...(failure && {failure: failureIn(failure)}),
      reports: reports.map((report) => {
        const own = findings.slice(from, from + report.findings);
        from += report.findings;
        return {...report, findings: own};
      }),
    },
  }));
}

type FailureJson = SliceJson['failures'][number];

function failureJson({says, hint, where}: Failure): FailureJson {
  return {
    message: says,
    hint: hint ?? null,
    file: where?.file ?? null,
    line: where?.line ?? null,
    column: where?.column ?? null,
  };
}

export function failureIn({message, hint, file, line, column}: FailureJson): Failure {
  const place = {...(line !== null && {line}), ...(column !== null && {column})};
  const where = file === null ? {} : {where: {file, ...place}};
  return {ok: false, says: message, ...(hint !== null && {hint}), ...where};
}
