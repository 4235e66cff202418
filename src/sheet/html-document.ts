/** The shell of an HTML page: head, style, content policy; and the last washing of its text. */
import type {Element, ElementContent, Nodes} from 'hast';
import {toHtml} from 'hast-util-to-html';
import {h} from 'hastscript';
import type {Running} from '../print/running.js';
import type {Paper} from '../spec/model.js';
import {addAll} from '../text/add-all.js';
import {withoutUnseen} from '../text/printable.js';
import {scriptSource} from './html-script.js';
import {pageStyle} from './page.js';
import {STYLE} from './style.js';
import type {Words} from './words.js';

export interface Page {
  readonly words: Words;
  readonly title: string;
  readonly paper: Paper;
  readonly running: Running;
  readonly body: readonly ElementContent[];
  /** The one script that may run, and the style that goes with it. */
  readonly active?: {readonly script: string; readonly style: string};
}

/** Scripts, frames, forms and requests are all forbidden but one script; pictures come only from inside the file. */
const POLICY =
  "default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none'; form-action 'none'";

export function document({words, title, paper, running, body, active}: Page): string {
  const policy = active === undefined ? POLICY : `${POLICY}; script-src ${scriptSource(active.script)}`;
  const html = h('html', {lang: words.language}, [
    h('head', [
      h('meta', {charSet: 'utf-8'}),
      h('meta', {httpEquiv: 'Content-Security-Policy', content: policy}),
      h('meta', {name: 'viewport', content: 'width=device-width, initial-scale=1'}),
      h('meta', {name: 'referrer', content: 'no-referrer'}),
      h('title', title),
      h('style', pageStyle(running, paper, words) + STYLE + (active?.style ?? '')),
    ]),
    h('body', [...body]),
  ]);
  return `<!doctype html>\n${toHtml(washed(html))}\n`;
}

function washed(root: Element): Element {
  const waiting: Nodes[] = [root];
  for (let node = waiting.pop(); node !== undefined; node = waiting.pop()) {
    if (node.type === 'text') node.value = withoutUnseen(node.value);
    if (node.type === 'element') washLabels(node);
    if ('children' in node) addAll(waiting, node.children);
  }
  return root;
}

/** Those attributes whose texts come from a book: labels for who cannot see, words for a picture. */
function washLabels({properties}: Element): void {
  for (const [name, value] of Object.entries(properties)) {
    if (typeof value === 'string') properties[name] = withoutUnseen(value);
  }
}
