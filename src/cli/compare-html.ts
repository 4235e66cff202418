/** A comparison as one page in the look of the sheets: what it means first, then the steps of both sides beside each other. */
import type {Element, ElementContent} from 'hast';
import {toHtml} from 'hast-util-to-html';
import {h} from 'hastscript';
import {EFFECTS, type Effect} from '../compare/model.js';
import {cells, titleBlock} from '../sheet/html-head.js';
import {STYLE} from '../sheet/style.js';
import {printable} from '../text/printable.js';
import {stepRows} from './compare-html-steps.js';
import type {BookJson, ChangeJson, Compared} from './compare-report.js';
import type {CompareJson} from './compare-shape.js';
import {requiredText, unseenText} from './compare-text.js';

export function compareHtml(json: CompareJson, compared: readonly Compared[]): string {
  const title = `${printable(json.before)} and ${printable(json.now)} compared`;
  const page = h('html', {lang: 'en'}, [
    h('head', [
      h('meta', {charSet: 'utf-8'}),
      h('meta', {
        httpEquiv: 'Content-Security-Policy',
        content: "default-src 'none'; style-src 'unsafe-inline'",
      }),
      h('meta', {name: 'viewport', content: 'width=device-width, initial-scale=1'}),
      h('title', title),
      h('style', STYLE + OWN_STYLE),
    ]),
    h('body', [
      ...json.unseen.map((one) => h('div.standing', [h('p', `Not seen: ${unseenText(one)}`)])),
      ...json.books.flatMap((book, index) => bookNodes(book, json, compared[index])),
    ]),
  ]);
  return `<!doctype html>\n${toHtml(page)}\n`;
}

function bookNodes(book: BookJson, json: CompareJson, compared: Compared | undefined): ElementContent[] {
  const of = (effect: Effect) => book.changes.filter((one) => one.effect === effect);
  const counts = EFFECTS.map((effect) => ({label: effect, text: String(of(effect).length)}));
  const sides = [
    {label: 'before', text: printable(json.before), width: 6 as const},
    {label: 'now', text: printable(json.now), width: 6 as const},
  ];
  return [
    h('header', [
      titleBlock({shop: 'What a change means', kind: 'Comparison', title: printable(book.engine)}, [
        cells([...sides, ...counts]),
      ]),
    ]),
    h('main', [
      ...EFFECTS.flatMap((effect) => changeTable(effect, of(effect))),
      ...findingList('Findings that it brings', book.brought),
      ...findingList('Findings that it settles', book.settled),
      ...(compared === undefined ? [] : stepTable(compared)),
    ]),
  ];
}

const TITLES: {readonly [effect in Effect]: string} = {
  weakened: 'Weakened',
  strengthened: 'Strengthened',
  changed: 'Changed',
  reworded: 'Reworded: no tag or value changed, so read the words',
};

function changeTable(effect: Effect, changes: readonly ChangeJson[]): Element[] {
  if (changes.length === 0) return [];
  const heads = ['Change', 'Before', 'Now'].map((head) => h('th', {scope: 'col'}, head));
  return [
    h('h2', TITLES[effect]),
    h('table.list.compared', {className: effect}, [
      h('thead', h('tr', heads)),
      h('tbody', changes.map(changeRow)),
    ]),
  ];
}

function changeRow(change: ChangeJson): Element {
  const asked =
    change.item === null ? [] : [h('span.also-line', `required ${printable(requiredText(change))}`)];
  const brings = change.brings.map((one) =>
    h('span.also-line', `brings ${one.name}: ${printable(one.message)}`),
  );
  return h('tr', [
    h('th', {scope: 'row'}, [printable(change.message), ...asked, ...brings]),
    h('td', sideNodes(change.before.at)),
    h('td', sideNodes(change.now.at)),
  ]);
}

function sideNodes(at: ChangeJson['now']['at']): ElementContent[] {
  if (at.length === 0) return [{type: 'text', value: 'nothing'}];
  return at.map((one) =>
    h('p', [h('code', `${printable(one.file)}:${one.line}`), ` ${printable(one.message)}`]),
  );
}

function findingList(title: string, found: BookJson['brought']): Element[] {
  if (found.length === 0) return [];
  const line = (one: BookJson['brought'][number]) =>
    h('li', [
      h('code', `${printable(one.file)}:${one.line}`),
      ` ${one.severity}: ${printable(one.message)} (${one.name})`,
    ]);
  return [h('h2', title), h('ul.plain', found.map(line))];
}

function stepTable(compared: Compared): Element[] {
  const rows = stepRows(compared);
  if (rows.length === 0) return [];
  const heads = ['No.', 'Before', 'No.', 'Now', 'Means'].map((head) => h('th', {scope: 'col'}, head));
  return [h('h2', 'Side by side'), h('table.list.sides', [h('thead', h('tr', heads)), h('tbody', rows)])];
}

/** Wider than a sheet, and an effect is told by its rule and its word, never by colour alone. */
const OWN_STYLE = `
body { max-width: 297mm; }
@page { size: A4 landscape; margin: 12mm; }
.compared th, .compared td { width: 33%; }
.compared.weakened { border-left: 2mm solid var(--ink); }
.compared td p { margin: 0 0 1mm; }
.sides { table-layout: fixed; }
.sides tr > :nth-child(odd):not(:last-child) { width: 14mm; }
.sides tr > :last-child { width: 30mm; }
.sides tr.weakened > :last-child { background: var(--ink); color: #fff; font-weight: 700; }
.sides tr.plain { color: #444; }
.sides td p { margin: 0 0 1mm; }
.sides ins, .sides del { text-decoration-thickness: 0.6mm; }
.sides td.empty { background: var(--shade); }
`;
