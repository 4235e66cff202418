/** `wmark readings`: judges records of builds against the sheets that they answer. */
import {resolve} from 'node:path';
import {askerAt} from '../host/asked-of-build.js';
import type {Failure} from '../host/failure.js';
import {missingText, pdfMaker} from '../host/pdf.js';
import {readRecords} from '../host/records.js';
import {writeFiles} from '../host/write.js';
import {type Build, buildsOf} from '../readings/builds.js';
import {readingsCsv} from '../readings/csv.js';
import {readingsHtml} from '../readings/html.js';
import {isWell, judgeBuild} from '../readings/judge.js';
import {LANGUAGES} from '../readings/languages.js';
import {reportPrint} from '../readings/print.js';
import type {BuildReport, ReadingsReport} from '../readings/report.js';
import {spreadOf} from '../readings/spread.js';
import {reportText} from '../readings/text.js';
import type {ReportWords} from '../readings/words.js';
import type {Paper, Shop} from '../spec/model.js';
import {printable} from '../text/printable.js';
import {complain, unable} from './complain.js';
import {EXIT, type Exit} from './exit.js';
import type {Streams} from './streams.js';

export interface ReadingsOptions {
  /** Where to look for the book. */
  readonly book: string;
  readonly as: ReadingsForm;
  /** File for the report; standard output where it is left out. */
  readonly out?: string;
  /** Of a PDF; that of the first book where it is left out. */
  readonly paper?: Paper;
  readonly evenIfChanged?: boolean;
}

type ReadingsForm = 'text' | 'json' | 'csv' | 'html' | 'pdf';

/** Exit status 1 where anything is out, missing or otherwise wrong with a build. */
export async function readings(
  paths: readonly string[],
  options: ReadingsOptions,
  streams: Streams,
): Promise<Exit> {
  if (options.as === 'pdf' && options.out === undefined) {
    return unable(streams, {
      ok: false,
      says: 'a PDF needs a file to go to',
      hint: 'name it with --out, as in --out report.pdf',
    });
  }
  const {builds, shops, failures} = await judgedBuilds(paths, options, streams);
  for (const one of failures) complain(streams, one);
  if (builds.length === 0) return EXIT.unable;
  const paper = options.paper ?? shops[0]?.paper ?? 'A4';
  const words = LANGUAGES[shops[0]?.language ?? 'en'];
  const failure = await put({builds, spread: spreadOf(builds)}, {...options, paper, words}, streams);
  if (failure) complain(streams, failure);
  if (failure || failures.length > 0) return EXIT.unable;
  return builds.every(isWell) ? EXIT.clean : EXIT.errors;
}

interface JudgedBuilds {
  readonly builds: BuildReport[];
  /** That of each build. */
  readonly shops: readonly Shop[];
  readonly failures: readonly Failure[];
}

async function judgedBuilds(
  paths: readonly string[],
  {book, evenIfChanged}: ReadingsOptions,
  {aside}: Streams,
): Promise<JudgedBuilds> {
  const {records, failures: unread} = await readRecords(paths);
  const failures = [...unread];
  const builds: BuildReport[] = [];
  const shops: Shop[] = [];
  const asker = askerAt(book);
  for (const build of buildsOf(records)) {
    const found = await asker(build);
    if (!found.ok) {
      failures.push({...found, says: `${build.files.join(', ')}: ${found.says}`});
      continue;
    }
    if (found.lacksJob) aside(`wmark: ${printable(noJob(build, found.file))}\n`);
    builds.push(judgeBuild(build, found.asked, {evenIfChanged}));
    shops.push(found.asked.spec.shop);
  }
  return {builds, shops, failures};
}

interface Put {
  readonly as: ReadingsForm;
  readonly out?: string | undefined;
  readonly paper: Paper;
  readonly words: ReportWords;
}

/** Writes the report to where it belongs. */
async function put(
  result: ReadingsReport,
  {as, out, paper, words}: Put,
  {report, aside}: Streams,
): Promise<Failure | undefined> {
  if (out === undefined) {
    report(written(result, as, words));
    return undefined;
  }
  let text: string | Uint8Array = written(result, as, words);
  if (as === 'pdf') {
    const make = await pdfMaker();
    const pdf = make(() => reportPrint(result, paper, words), []);
    if (!pdf.ok) return pdf;
    const missing = missingText(out, pdf);
    if (missing !== undefined) aside(`wmark: ${printable(missing)}\n`);
    text = pdf.bytes;
  }
  const made = await writeFiles([{path: resolve(out), text}]);
  return made.ok ? undefined : made;
}

/** The report as text; a PDF has none. */
function written(result: ReadingsReport, as: ReadingsForm, words: ReportWords): string {
  switch (as) {
    case 'json':
      return `${JSON.stringify(result, null, 2)}\n`;
    case 'csv':
      return readingsCsv(result.builds);
    case 'html':
      return readingsHtml(result, words);
    case 'text':
      return reportText(result, words);
    case 'pdf':
      return '';
  }
}

function noJob({job, files}: Build, book: string): string {
  return `${files.join(', ')}: the book of ${book} has no job ${job}, so the sheets for every engine are taken`;
}
