/** The report on builds as one self-contained HTML page that prints well: no script, no request, every text escaped. */
import {toHtml} from 'hast-util-to-html';
import {h} from 'hastscript';
import {printable} from '../text/printable.js';
import {blockNodes} from './html-parts.js';
import {STYLE} from './html-style.js';
import {reportPage} from './page-report.js';
import type {ReadingsReport} from './report.js';
import {ENGLISH, type ReportWords} from './words.js';

const POLICY = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'";

export function readingsHtml(report: ReadingsReport, words: ReportWords = ENGLISH): string {
  const {title, overview, key, content} = reportPage(report, words);
  const page = h('html', {lang: words.language}, [
    h('head', [
      h('meta', {charSet: 'utf-8'}),
      h('meta', {httpEquiv: 'Content-Security-Policy', content: POLICY}),
      h('meta', {name: 'viewport', content: 'width=device-width, initial-scale=1'}),
      h('meta', {name: 'referrer', content: 'no-referrer'}),
      h('title', printable(title)),
      h('style', STYLE),
    ]),
    h('body', [
      h('main', [
        h('h1', words.report),
        ...overview.flatMap((block) => blockNodes(block, words)),
        h('p', {className: 'key'}, key),
        ...content.flatMap((block) => blockNodes(block, words)),
      ]),
    ]),
  ]);
  return `<!doctype html>\n${toHtml(page)}\n`;
}
