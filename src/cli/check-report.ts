/** The result of a check over several books, and its form as lines for people and editors. */
import {counted} from '../text/counted.js';
import {printable} from '../text/printable.js';
import type {BookReport, FindingJson} from './answer.js';
import type {CheckJson} from './check-shape.js';
import {placeText} from './place-text.js';

type SummaryJson = CheckJson['summary'];

/** The reports of books put together, in their order: one list a book, of one report or of one for each of its jobs. */
export function checkJson(books: readonly (readonly BookReport[])[]): CheckJson {
  const told = books.filter((reports) => reports.length > 0);
  const findings = told.flatMap((reports) => reports.flatMap((report) => report.findings));
  const sums = told.map(bookSums);
  const total = (count: keyof BookReport['counts']) => sums.reduce((sum, {counts}) => sum + counts[count], 0);
  const summary = {
    books: told.length,
    jobs: total('jobs'),
    procedures: total('procedures'),
    steps: total('steps'),
    tags: total('tags'),
    items: total('items'),
    covered: total('covered'),
    uncovered: sums.flatMap(({uncovered}) => uncovered),
    unjudged: total('unjudged'),
    ...weighed(findings),
    known: 0,
  };
  return {summary, findings};
}

/** A book that was judged for each of several jobs is one book: it has as much as it has for the job with the most. */
function bookSums(reports: readonly BookReport[]): Pick<BookReport, 'counts' | 'uncovered'> {
  const most = (count: keyof BookReport['counts']) => Math.max(...reports.map(({counts}) => counts[count]));
  const uncovered = [...new Set(reports.flatMap((report) => report.uncovered))];
  const items = most('items');
  const counts = {
    jobs: reports.reduce((sum, one) => sum + one.counts.jobs, 0),
    procedures: most('procedures'),
    steps: most('steps'),
    tags: most('tags'),
    items,
    covered: reports.length === 1 ? most('covered') : Math.max(0, items - uncovered.length),
    unjudged: most('unjudged'),
  };
  return {counts, uncovered};
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
  return findingsText(findings) + sumsText(summary);
}

export function findingsText(findings: readonly FindingJson[]): string {
  return findings.map((finding) => `${findingText(finding)}\n`).join('');
}

function findingText(finding: FindingJson): string {
  const {name, severity, message, story, related, fix} = finding;
  const lines = [
    `${placeText(finding)}: ${severity}: ${printable(message)}  [${name}]`,
    ...[...story, ...related].map((one) => `    ${placeText(one)}: ${printable(one.message)}`),
    ...(fix ? [`    can be mended: ${printable(fix.title)}`] : []),
  ];
  return lines.join('\n');
}

export function sumsText(summary: SummaryJson): string {
  const {books, jobs, procedures, steps, tags, errors, warnings, known} = summary;
  const size = [
    counted(books, 'book'),
    ...(jobs > 0 ? [counted(jobs, 'job')] : []),
    counted(procedures, 'procedure'),
    counted(steps, 'step'),
    counted(tags, 'tag'),
  ];
  const lines = [
    `${size.join(', ')}; ${coveredText(summary)}`,
    `${counted(errors, 'error')}, ${counted(warnings, 'warning')}${known > 0 ? `; ${known} known and let stand` : ''}`,
  ];
  return lines.map((line) => `${line}\n`).join('');
}

/** A book that could not be judged is none of which all was found covered. */
function coveredText({books, items, covered, uncovered, unjudged}: SummaryJson): string {
  if (unjudged > 0 && unjudged === books) return 'not judged';
  const missing = unjudged > 0 ? `; ${counted(unjudged, 'book')} not judged` : '';
  return `${covered} of ${counted(items, 'item')} covered${allBut(uncovered)}${missing}`;
}

/** Which are not: with more than a few, the findings say why. */
function allBut(uncovered: readonly string[]): string {
  if (uncovered.length === 0) return '';
  const each = [...new Set(uncovered)];
  const named = each.slice(0, MOST_NAMED).map(printable);
  const more = each.length - named.length;
  const last = more > 0 ? `${more} more` : named.pop();
  return `, all but ${[named.join(', '), last].filter((part) => part !== '').join(' and ')}`;
}

const MOST_NAMED = 3;
