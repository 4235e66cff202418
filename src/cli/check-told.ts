/** Tells the answers of a check, of one run or of slices put together, and decides the exit status. */
import {noSuchJob} from '../host/choose-jobs.js';
import type {Failure} from '../host/failure.js';
import {onlyBases} from '../host/find-books.js';
import type {House} from '../host/house.js';
import type {Answer, BookReport} from './answer.js';
import type {PlacedAnswer} from './asked-answers.js';
import {inFiles} from './changed-files.js';
import {type CheckForm, rendered} from './check-forms.js';
import {checkJson, findingsText, sumsText} from './check-report.js';
import type {CheckJson} from './check-shape.js';
import {complain, unable} from './complain.js';
import {EXIT, type Exit} from './exit.js';
import {type HouseFaultJson, tellFaults} from './house-faults.js';
import type {Looked} from './known-file.js';
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
  /** The rules of the house that were asked beside ours. */
  readonly house?: House;
  /** The answers are those of a slice only: what is missing may be in another. */
  readonly slice?: SliceHead;
}

/** Says what keeps it from telling, and gives the exit status of the whole run. */
export async function told(asked: Answers, options: TellOptions, streams: Streams): Promise<Exit> {
  const {report, aside} = streams;
  const {reports, failed, placed, missing, faults} = await collected(asked, options, streams);
  if (asked.house) tellFaults(faults, asked.house, {aside});
  if (missing) return unable(streams, missing);
  if (reports.length === 0 && !asked.slice) return EXIT.unable;
  const whole = checkJson(placed.map(({answer}) => answer.reports));
  const rules = asked.house?.findings ?? [];
  const looked = {files: reports.flatMap((one) => one.files), house: rules};
  const held = await heldBack(whole, looked, options, aside);
  if (!held.ok) return unable(streams, held);
  if (isStreamed(options)) report(sumsText(whole.summary));
  else {
    const slice = asked.slice && slicePart(asked.slice, placed, asked);
    const procedures = reports.flatMap((one) => one.procedures);
    report(
      await rendered(
        options.as,
        {...held, result: {...held.result, ...(slice && {slice})}},
        procedures,
        rules,
      ),
    );
  }
  if (failed || faults.length > 0) return EXIT.unable;
  return stops(held.result, options.stopOn ?? []) ? EXIT.errors : EXIT.clean;
}

/** What is needed for the list of known findings is loaded only where there is one. */
async function heldBack(
  whole: CheckJson,
  looked: Looked,
  {known}: TellOptions,
  aside: Streams['aside'],
): Promise<Held | Failure> {
  if (known === undefined) return {ok: true, result: whole, known: []};
  const {withoutKnown} = await import('./without-known.js');
  return withoutKnown(whole, looked, known, aside);
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
  readonly faults: readonly HouseFaultJson[];
}

async function collected(
  {failures, answers, path, changed, slice}: Answers,
  options: TellOptions,
  streams: Streams,
): Promise<Collected> {
  for (const failure of failures) complain(streams, failure);
  const placed: PlacedAnswer[] = [];
  for await (const {at, answer} of answers) {
    if (answer.failure) complain(streams, answer.failure);
    const reports = answer.reports.map((one) =>
      changed ? {...one, findings: inFiles(one.findings, changed)} : one,
    );
    const lines = isStreamed(options) ? findingsText(reports.flatMap(({findings}) => findings)) : '';
    if (lines !== '') streams.report(lines);
    placed.push({at, answer: {...answer, reports}});
  }
  const all = placed.map(({answer}) => answer);
  const reports = all.flatMap((answer) => answer.reports);
  const faults = all.flatMap(({houseFaults = []}) => houseFaults);
  const failed = failures.length > 0 || all.some(({failure}) => failure !== undefined);
  const books = all.filter(({base, failure}) => !base && !failure);
  const missing =
    reports.length > 0 || slice ? undefined : missingFrom(books, {job: options.job, path, failed});
  return {reports, placed, failed, faults, missing};
}

/** Why not one book was judged; undefined where what failed has been said already. */
function missingFrom(
  books: readonly Answer[],
  {job, path, failed}: {readonly job: string | undefined; readonly path: string; readonly failed: boolean},
): Failure | undefined {
  if (job !== undefined && books.length > 0) {
    return noSuchJob(
      books.flatMap(({jobs}) => jobs),
      job,
    );
  }
  return failed ? undefined : onlyBases(path, process.cwd());
}

function stops({summary}: CheckJson, on: readonly StopOn[]): boolean {
  return summary.errors > 0 || (on.includes('warning') && summary.warnings > 0);
}
