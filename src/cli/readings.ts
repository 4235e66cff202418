/** `wmark readings`: judges records of builds against the sheets that they answer. */
import {askerAt} from '../host/asked.js';
import {type Failure, failureText} from '../host/failure.js';
import {readRecords} from '../host/records.js';
import {type Build, buildsOf} from '../readings/builds.js';
import {readingsCsv} from '../readings/csv.js';
import {readingsHtml} from '../readings/html.js';
import {isWell, judgeBuild} from '../readings/judge.js';
import type {BuildReport, ReadingsReport} from '../readings/report.js';
import {spreadOf} from '../readings/spread.js';
import {reportText} from '../readings/text.js';
import {printable} from '../text/printable.js';
import {EXIT, type Exit} from './exit.js';
import type {Streams} from './streams.js';

export interface ReadingsOptions {
  /** Where to look for the book. */
  readonly book: string;
  readonly as: ReadingsForm;
  readonly evenIfChanged?: boolean;
}

export type ReadingsForm = 'text' | 'json' | 'csv' | 'html';

/** Exit status 1 where anything is out, missing or otherwise wrong with a build. */
export async function readings(
  paths: readonly string[],
  {book, as, evenIfChanged}: ReadingsOptions,
  {report, aside}: Streams,
): Promise<Exit> {
  const {records, failures} = await readRecords(paths);
  const complain = (failure: Failure) => aside(`wmark: ${printable(failureText(failure))}\n`);
  failures.forEach(complain);
  let unable = failures.length > 0;
  const builds: BuildReport[] = [];
  const asker = askerAt(book);
  for (const build of buildsOf(records)) {
    const found = await asker(build);
    if (!found.ok) {
      complain({...found, says: `${build.files.join(', ')}: ${found.says}`});
      unable = true;
      continue;
    }
    if (found.lacksJob) aside(`wmark: ${printable(noJob(build, found.file))}\n`);
    builds.push(judgeBuild(build, found.asked, {evenIfChanged}));
  }
  if (builds.length === 0) return EXIT.unable;
  report(written({builds, spread: spreadOf(builds)}, as));
  if (unable) return EXIT.unable;
  return builds.every(isWell) ? EXIT.clean : EXIT.errors;
}

function written(result: ReadingsReport, as: ReadingsForm): string {
  switch (as) {
    case 'json':
      return `${JSON.stringify(result, null, 2)}\n`;
    case 'csv':
      return readingsCsv(result.builds);
    case 'html':
      return readingsHtml(result);
    default:
      return reportText(result);
  }
}

function noJob({job, files}: Build, book: string): string {
  return `${files.join(', ')}: the book of ${book} has no job ${job}, so the sheets for every engine are taken`;
}
