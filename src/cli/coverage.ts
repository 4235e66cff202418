/** `wmark coverage`: for every item and place of the specification, the steps that deal with it. */

import {coverage as coverageOf} from '../build/coverage.js';
import {ledger} from '../build/ledger.js';
import {failureText} from '../host/failure.js';
import {loadBooks} from '../host/load.js';
import {printable} from '../text/printable.js';
import {coverageHtml} from './coverage-html.js';
import {coverageMarkdown} from './coverage-markdown.js';
import {type CoverageForm, coverageJson, coverageText} from './coverage-report.js';
import {EXIT, type Exit} from './exit.js';
import type {Streams} from './streams.js';

export interface CoverageOptions {
  readonly as: CoverageForm;
}

/** Exit status 1 where something that must be done is not. */
export async function coverage(
  paths: readonly string[],
  {as}: CoverageOptions,
  {report, aside}: Streams,
): Promise<Exit> {
  const {books, failures} = await loadBooks(paths);
  for (const failure of failures) aside(`wmark: ${printable(failureText(failure))}\n`);
  if (books.length === 0) return EXIT.unable;
  const tables = books.map(({file, book}) => coverageJson(file, book, coverageOf(ledger(book))));
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
  if (failures.length > 0) return EXIT.unable;
  return tables.some(({missing}) => missing > 0) ? EXIT.errors : EXIT.clean;
}
