/** One self-contained HTML page: the head that all pages share, what they may never do, and the last washing of their texts. */
import {sha256} from '@noble/hashes/sha2.js';
import {utf8ToBytes} from '@noble/hashes/utils.js';
import type {Element, ElementContent, Nodes} from 'hast';
import {toHtml} from 'hast-util-to-html';
import {h} from 'hastscript';
import {addAll} from '../text/add-all.js';
import {withoutUnseen} from '../text/printable.js';

export interface HtmlPage {
  /** An IETF language tag (BCP 47). */
  readonly language: string;
  readonly title: string;
  /** CSS of ours. A text of a book goes in as a CSS string only (`cssString`). */
  readonly style: string;
  readonly body: readonly ElementContent[];
  /** Pictures inside the file may be shown. */
  readonly pictures?: boolean;
  /** The one script that may run; it must stand in the body as it is given here. */
  readonly script?: string | undefined;
}

/** Whatever is not named below is forbidden: scripts, frames, forms, requests. */
const POLICY = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'";

/** The whole file. Every text in it is escaped by the serialiser. */
export function htmlPage({language, title, style, body, pictures, script}: HtmlPage): string {
  const policy = [
    POLICY,
    ...(pictures ? ['img-src data:'] : []),
    ...(script === undefined ? [] : [`script-src ${scriptSource(script)}`]),
  ];
  const html = h('html', {lang: language}, [
    h('head', [
      h('meta', {charSet: 'utf-8'}),
      h('meta', {httpEquiv: 'Content-Security-Policy', content: policy.join('; ')}),
      h('meta', {name: 'viewport', content: 'width=device-width, initial-scale=1'}),
      h('meta', {name: 'referrer', content: 'no-referrer'}),
      h('title', title),
      h('style', style),
    ]),
    h('body', [...body]),
  ]);
  return `<!doctype html>\n${toHtml(washed(html))}\n`;
}

/** The source by which a content policy knows the script (CSP Level 3, section 2.3.1). */
function scriptSource(script: string): string {
  return `'sha256-${btoa(String.fromCharCode(...sha256(utf8ToBytes(script))))}'`;
}

/** Walked without recursion: nobody bounds how deep a page is. */
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
