/** The report on builds as one self-contained HTML page that prints well: no script, no request, every text escaped. */
import type {ElementContent} from 'hast';
import {toHtml} from 'hast-util-to-html';
import {h} from 'hastscript';
import {printable} from '../text/printable.js';
import {buildPart} from './html-build.js';
import {strong, table} from './html-parts.js';
import {spreadPart} from './html-spread.js';
import {STYLE} from './html-style.js';
import type {BuildReport, ReadingsReport} from './report.js';
import {counted, titleOf} from './text.js';

const POLICY = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'";

export function readingsHtml({builds, spread}: ReadingsReport): string {
  const [only, second] = builds;
  const title = only && !second ? `Build report: ${titleOf(only)}` : 'Build reports';
  const page = h('html', {lang: 'en'}, [
    h('head', [
      h('meta', {charSet: 'utf-8'}),
      h('meta', {httpEquiv: 'Content-Security-Policy', content: POLICY}),
      h('meta', {name: 'viewport', content: 'width=device-width, initial-scale=1'}),
      h('meta', {name: 'referrer', content: 'no-referrer'}),
      h('title', printable(title)),
      h('style', STYLE),
    ]),
    h('body', [h('main', [h('h1', 'Build report'), ...overview(builds), KEY, ...content(builds, spread)])]),
  ]);
  return `<!doctype html>\n${toHtml(page)}\n`;
}

function content(builds: readonly BuildReport[], spread: ReadingsReport['spread']): ElementContent[] {
  return [...builds.flatMap((build, index) => buildPart(build, `build-${index + 1}`)), ...spreadPart(spread)];
}

/** How each build stands, with a way to it. */
function overview(builds: readonly BuildReport[]): ElementContent[] {
  const rows = builds.map((build, index) => {
    const count = (severity: string) => build.remarks.filter((one) => one.severity === severity).length;
    const errors = count('error');
    return [
      h('a', {href: `#build-${index + 1}`}, printable(titleOf(build))),
      errors === 0 ? 'nothing wrong' : strong(counted(errors, 'error')),
      counted(count('warning'), 'warning'),
    ];
  });
  return table(['Build', 'Wrong', 'To look at'], rows);
}

const KEY = h(
  'p',
  {className: 'key'},
  'In the drawings a disc is within its limits, an open diamond too near one for the gauge, a cross outside; small marks are earlier readings. The grey band lies between the limits, its light part where a reading proves that they are kept. Readings are what was entered: a drawing is no better than the gauge.',
);
