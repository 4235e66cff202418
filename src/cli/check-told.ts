/** Tells the answers of a check, of one run or of slices put together, and decides the exit status. */
import {noSuchJob} from '../host/choose-jobs.js';
import {type Failure, failureText} from '../host/failure.js';
import {onlyBases} from '../host/find-books.js';
import {printable} from '../text/printable.js';
import type {BookReport} from './answer.js';
import type {PlacedAnswer} from './asked-answers.js';
import {inFiles} from './changed-files.js';
import {type CheckForm, rendered} from './check-forms.js';
import {checkJson, findingsText, sumsText} from './check-report.js';
import type {CheckJson} from './check-shape.js';
import {EXIT, type Exit} from './exit.js';
import {type SliceHead, slicePart} from './slice-part.js';
import type {StopOn} from './stop-on.js';
import type {Streams} from './streams.js';
import type {Held} from './without-known.js';

export interface TellOptions {
  readonly as: CheckForm;
  readonly job?: string | undefined;
  /** The list of known findings, which do not count. */
  readonly known?: string;
  readonly stopOn?: readonly Exclude<StopOn, 'weakened'>[];
}

export interface Answers {
  /** Of paths that lead to no book. */
  readonly failures: readonly Failure[];
  readonly answers: AsyncIterable<PlacedAnswer> | Iterable<PlacedAnswer>;
  /** The first path that was asked about. */
  readonly path: string;
  /** Names of files outside of which findings are left out. */
  readonly changed?: ReadonlySet<string>;
  /** The answers are those of a slice only: what is missing may be in another. */
  readonly slice?: SliceHead;
}

export async function told(asked: Answers, options: TellOptions, streams: Streams): Promise<Exit> {
  const {report, aside} = streams;
  const complain = (failure: Failure) => aside(`wmark: ${printable(failureText(failure))}\n`);
  const {reports, failed, placed, missing} = await collected(asked, options, {report, complain});
  if (missing) complain(missing);
  if (missing || (reports.length === 0 && !asked.slice)) return EXIT.unable;
  const whole = checkJson(reports);
  const held = await heldBack(whole, reports, options, aside);
  if (!held.ok) {
    complain(held);
    return EXIT.unable;
  }
  if (isStreamed(options)) report(sumsText(whole.summary));
  else {
    const slice = asked.slice && slicePart(asked.slice, placed, asked);
    const procedures = reports.flatMap((one) => one.procedures);
    report(
      await rendered(options.as, {...held, result: {...held.result, ...(slice && {slice})}}, procedures),
    );
  }
  if (failed) return EXIT.unable;
  return stops(held.result, options.stopOn ?? []) ? EXIT.errors : EXIT.clean;
}

/** What is needed for the list of known findings is loaded only where there is one. */
async function heldBack(
  whole: CheckJson,
  reports: readonly BookReport[],
  {known}: TellOptions,
  aside: Streams['aside'],
): Promise<Held | Failure> {
  if (known === undefined) return {ok: true, result: whole, known: []};
  const {withoutKnown} = await import('./without-known.js');
  const files = reports.flatMap((one) => one.files);
  return withoutKnown(whole, files, known, aside);
}

/** Lines for people come as soon as they are known, unless the list of known findings has to see them all first. */
function isStreamed({as, known}: TellOptions): boolean {
  return as === 'text' && known === undefined;
}

interface Collected {
  readonly reports: readonly BookReport[];
  readonly placed: readonly PlacedAnswer[];
  readonly failed: boolean;
  /** Why there is no report at all. */
  readonly missing: Failure | undefined;
}

async function collected(
  {failures, answers, path, changed, slice}: Answers,
  options: TellOptions,
  {report, complain}: {readonly report: Streams['report']; readonly complain: (failure: Failure) => void},
): Promise<Collected> {
  failures.forEach(complain);
  const placed: PlacedAnswer[] = [];
  for await (const {at, answer} of answers) {
    if (answer.failure) complain(answer.failure);
    const reports = answer.reports.map((one) =>
      changed ? {...one, findings: inFiles(one.findings, changed)} : one,
    );
    const lines = isStreamed(options) ? findingsText(reports.flatMap(({findings}) => findings)) : '';
    if (lines !== '') report(lines);
    placed.push({at, answer: {...answer, reports}});
  }
  const all = placed.map(({answer}) => answer);
  const reports = all.flatMap((answer) => answer.reports);
  const failed = failures.length > 0 || all.some(({failure}) => failure !== undefined);
  const books = all.filter(({base, failure}) => !base && !failure);
  const none = reports.length === 0 && !slice;
  if (none && options.job !== undefined && books.length > 0) {
    return {
      reports,
      placed,
      failed,
      missing: noSuchJob(
        books.flatMap(({jobs}) => jobs),
        options.job,
      ),
    };
  }
  return {reports, placed, failed, missing: none && !failed ? onlyBases(path, process.cwd()) : undefined};
}

function stops({summary}: CheckJson, on: readonly StopOn[]): boolean {
  return summary.errors > 0 || (on.includes('warning') && summary.warnings > 0);
}
