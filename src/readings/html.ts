/** The report on builds as one self-contained HTML page that prints well: no script, no request, every text escaped. */
import {h} from 'hastscript';
import {htmlPage} from '../print/html-page.js';
import {printable} from '../text/printable.js';
import {blockNodes} from './html-parts.js';
import {STYLE} from './html-style.js';
import {reportPage} from './page-report.js';
import type {ReadingsReport} from './report.js';
import {ENGLISH, type ReportWords} from './words.js';

/** One file that needs nothing else; each build begins on a page of its own where it is printed. */
export function readingsHtml(report: ReadingsReport, words: ReportWords = ENGLISH): string {
  const {title, overview, key, content} = reportPage(report, words);
  const main = h('main', [
    h('h1', words.report),
    ...overview.flatMap((block) => blockNodes(block, words)),
    h('p', {className: 'key'}, key),
    ...content.flatMap((block) => blockNodes(block, words)),
  ]);
  return htmlPage({language: words.language, title: printable(title), style: STYLE, body: [main]});
}
