/** The result of a check over several books, and its two forms: lines for people and editors, JSON for programs. */
import type {CheckOptions} from '../findings/check.js';
import {checkWithJobs, type JobFinding, type JobsReport} from '../findings/check-jobs.js';
import type {Finding} from '../findings/model.js';
import type {Summary} from '../findings/summary.js';
import {jobsAsked, type LoadedBook} from '../host/load.js';
import {placeOf, textsOf} from '../host/places.js';
import {printable} from '../text/printable.js';
import type {Source} from '../text/source.js';
import type {CheckJson} from './check-shape.js';
import {faultJson, type HouseFaultJson} from './house.js';

export type FindingJson = CheckJson['findings'][number];
type SummaryJson = CheckJson['summary'];

/** A book and what the check says of it. */
export interface Checked {
  readonly loaded: LoadedBook;
  readonly report: JobsReport;
}

/**
 * All that was found, as plain data with lines and columns; of a book asked for in part, that part's findings.
 * What only a job has comes after what its book has.
 */
export function checkJson(checked: readonly Checked[]): CheckJson {
  const findings = checked.flatMap(({loaded, report}) => {
    const texts = textsOf(loaded.book, loaded.jobs);
    return asked(loaded, report).map((finding) => findingJson(finding, texts));
  });
  return {summary: summed(checked, findings), findings};
}

/** A book with a job in it is checked as it holds for that job; any other as it holds for all, and then for each job. */
export function checkBooks(
  books: readonly LoadedBook[],
  options: Pick<CheckOptions, 'today' | 'house'>,
): {readonly result: CheckJson; readonly faults: readonly HouseFaultJson[]} {
  const checked = books.map((loaded) => {
    const jobs = loaded.book.job === undefined ? jobsAsked(loaded) : [];
    const alone = loaded.alone === true;
    return {loaded, report: checkWithJobs(loaded.book, jobs, {...options, alone})};
  });
  return {result: checkJson(checked), faults: faultsIn(checked)};
}

/** What went wrong in rules of the house. */
export function faultsIn(checked: readonly Checked[]): HouseFaultJson[] {
  return checked.flatMap(({loaded, report}) => {
    const texts = textsOf(loaded.book, loaded.jobs);
    return report.houseFaults.map((fault) => faultJson(fault, texts));
  });
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

export function findingJson(finding: Finding, texts: ReadonlyMap<string, Source>): FindingJson {
  const {name, severity, where, message, item = null, place = null, story, related, fix} = finding;
  const remark = (one: Finding['story'][number]) => ({...placeOf(one.where, texts), message: one.says});
  return {
    name,
    severity,
    ...placeOf(where, texts),
    message,
    item,
    place,
    story: story.map(remark),
    related: related.map(remark),
    fix: fix ? fixJson(fix, texts) : null,
  };
}

function fixJson({title, file, edits}: NonNullable<Finding['fix']>, texts: ReadonlyMap<string, Source>) {
  return {title, edits: edits.map(({span, text}) => ({...placeOf({file, span}, texts), text}))};
}

const COUNTS = ['procedures', 'steps', 'tags', 'items', 'covered'] as const satisfies (keyof Summary)[];

function summed(checked: readonly Checked[], findings: readonly FindingJson[]): SummaryJson {
  const total = (count: (typeof COUNTS)[number]) =>
    checked.reduce((sum, {report}) => sum + report.summary[count], 0);
  return {
    books: checked.length,
    jobs: checked.reduce((sum, {loaded}) => sum + jobsAsked(loaded).length, 0),
    procedures: total('procedures'),
    steps: total('steps'),
    tags: total('tags'),
    items: total('items'),
    covered: total('covered'),
    ...weighed(findings),
    known: 0,
  };
}

/** How many of the findings are errors, and how many warnings. */
export function weighed(findings: readonly FindingJson[]): {
  readonly errors: number;
  readonly warnings: number;
} {
  const of = (weight: FindingJson['severity']) => findings.filter(({severity}) => severity === weight).length;
  return {errors: of('error'), warnings: of('warning')};
}

/** One line a finding, its story indented below it, and the sums at the end. */
export function checkText({summary, findings}: CheckJson): string {
  return [...findings.map(findingText), ...summaryText(summary)].map((line) => `${line}\n`).join('');
}

export function findingText(finding: FindingJson): string {
  const {name, severity, message, story, related, fix} = finding;
  const lines = [
    `${lead(finding)}: ${severity}: ${printable(message)}  [${name}]`,
    ...[...story, ...related].map((one) => `    ${lead(one)}: ${printable(one.message)}`),
    ...(fix ? [`    can be mended: ${printable(fix.title)}`] : []),
  ];
  return lines.join('\n');
}

function lead({file, line, column}: {readonly file: string; readonly line: number; readonly column: number}) {
  return `${printable(file)}:${line}:${column}`;
}

function summaryText(summary: SummaryJson): string[] {
  const {books, jobs, procedures, steps, tags, items, covered, errors, warnings, known} = summary;
  const size = [
    counted(books, 'book'),
    ...(jobs > 0 ? [counted(jobs, 'job')] : []),
    counted(procedures, 'procedure'),
    counted(steps, 'step'),
    counted(tags, 'tag'),
  ];
  return [
    `${size.join(', ')}; ${covered} of ${counted(items, 'item')} covered`,
    `${counted(errors, 'error')}, ${counted(warnings, 'warning')}${known > 0 ? `; ${known} known and let stand` : ''}`,
  ];
}

/** `1 step`, `2 steps`. */
export function counted(count: number, word: string, several = `${word}s`): string {
  return `${count} ${count === 1 ? word : several}`;
}
