/** `wmark coverage`: for every item and place of the specification, the steps that deal with it. */
import {coverage as coverageOf, temporaries} from '../build/coverage.js';
import {forJob} from '../build/for-job.js';
import {ledger} from '../build/ledger.js';
import {askedBooks} from './asked-books.js';
import {coverageHtml} from './coverage-html.js';
import {coverageMarkdown} from './coverage-markdown.js';
import {type CoverageForm, coverageJson, coverageText} from './coverage-report.js';
import {EXIT, type Exit} from './exit.js';
import type {Streams} from './streams.js';

export interface CoverageOptions {
  readonly as: CoverageForm;
  /** Number of the job whose engine it is, or `all`. */
  readonly job?: string;
}

/** Exit status 1 where something that must be done is not, or nobody can say. */
export async function coverage(
  paths: readonly string[],
  {as, job}: CoverageOptions,
  streams: Streams,
): Promise<Exit> {
  const {report} = streams;
  const {books, failed} = await askedBooks(paths, job, streams);
  if (books.length === 0) return EXIT.unable;
  const tables = books.map(({file, book: whole}) => {
    const book = forJob(whole);
    const run = ledger(book);
    return coverageJson(file, book, {rows: coverageOf(run), temporary: temporaries(run)});
  });
  switch (as) {
    case 'json':
      report(`${JSON.stringify({books: tables}, null, 2)}\n`);
      break;
    case 'html':
      report(coverageHtml(tables));
      break;
    case 'markdown':
      report(coverageMarkdown(tables));
      break;
    default:
      report(tables.map(coverageText).join('\n'));
  }
  if (failed) return EXIT.unable;
  return tables.some(({missing, judged}) => missing > 0 || !judged) ? EXIT.errors : EXIT.clean;
}
