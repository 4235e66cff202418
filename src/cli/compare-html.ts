/** A comparison as one page in the look of the sheets: what it means first, then the steps of both sides beside each other. */
import type {Element, ElementContent} from 'hast';
import {h} from 'hastscript';
import {EFFECTS, type Effect} from '../compare/model.js';
import {htmlPage} from '../print/html-page.js';
import {titleBlock} from '../sheet/html-title-block.js';
import {STYLE} from '../sheet/style.js';
import {printable} from '../text/printable.js';
import {lineAt} from './compare-html-lines.js';
import {type RowOf, rowsOf, stepTables} from './compare-html-steps.js';
import type {BookJson, ChangeJson, Compared} from './compare-report.js';
import type {CompareJson} from './compare-shape.js';
import {sideText} from './compare-sides.js';
import {requiredText, unseenText} from './compare-text.js';

export function compareHtml(json: CompareJson, compared: readonly Compared[]): string {
  return htmlPage({
    language: 'en',
    title: `${sideText(json.before)} and ${sideText(json.now)} compared`,
    style: STYLE + OWN_STYLE,
    body: [
      ...json.unseen.map((one) => h('div.standing', [h('p', `Not seen: ${unseenText(one)}`)])),
      ...json.books.flatMap((book, index) => bookNodes(book, json, compared[index], `book-${index + 1}`)),
    ],
  });
}

function bookNodes(
  book: BookJson,
  json: CompareJson,
  compared: Compared | undefined,
  name: string,
): ElementContent[] {
  const of = (effect: Effect) => book.changes.filter((one) => one.effect === effect);
  const counts = EFFECTS.map((effect) => ({label: effect, text: String(of(effect).length)}));
  const show: Shown = {compared, rowOf: compared === undefined ? () => undefined : rowsOf(compared, name)};
  const sides = [
    {label: 'before', text: sideText(json.before), width: 6 as const},
    {label: 'now', text: sideText(json.now), width: 6 as const},
  ];
  return [
    h('header', [
      titleBlock({
        shop: 'What a change means',
        kind: 'Comparison',
        title: printable(book.engine),
        cells: [...sides, ...counts],
      }),
    ]),
    h('main', [
      ...(book.changes.length === 0 ? [h('p', 'Both sides are the same.')] : []),
      ...EFFECTS.flatMap((effect) => changeTable(effect, book.changes, show)),
      ...findingList('Findings that it brings', book.brought),
      ...findingList('Findings that it settles', book.settled),
      ...(compared === undefined ? [] : sideBySide(compared, name)),
    ]),
  ];
}

const TITLES: {readonly [effect in Effect]: string} = {
  weakened: 'Weakened',
  strengthened: 'Strengthened',
  changed: 'Changed',
  reworded: 'Reworded: no tag or value changed, so read the words',
};

/** What a change is looked up in: the books of both sides, and the rows of their steps to link to. */
interface Shown {
  readonly compared: Compared | undefined;
  readonly rowOf: RowOf;
}

function changeTable(effect: Effect, all: readonly ChangeJson[], show: Shown): Element[] {
  const rows = all.flatMap((change, index) =>
    change.effect === effect ? [changeRow(change, index, show)] : [],
  );
  if (rows.length === 0) return [];
  const heads = ['Change', 'Before', 'Now'].map((head) => h('th', {scope: 'col'}, head));
  return [
    h('h2', TITLES[effect]),
    h('table.list.compared', {className: effect}, [h('thead', h('tr', heads)), h('tbody', rows)]),
  ];
}

function changeRow(change: ChangeJson, index: number, show: Shown): Element {
  const asked =
    change.item === null ? [] : [h('span.also-line', `required ${printable(requiredText(change))}`)];
  const brings = change.brings.map((one) =>
    h('span.also-line', `brings ${one.name}: ${printable(one.message)}`),
  );
  const side = (which: 'before' | 'now') =>
    h('td', {dataSide: which === 'before' ? 'Before' : 'Now'}, sideNodes(change, index, which, show));
  return h('tr', [
    h('th', {scope: 'row'}, [printable(change.message), ...asked, ...brings]),
    side('before'),
    side('now'),
  ]);
}

function sideNodes(
  change: ChangeJson,
  index: number,
  which: 'before' | 'now',
  {compared, rowOf}: Shown,
): ElementContent[] {
  const {at} = change[which];
  if (at.length === 0) return [{type: 'text', value: 'nothing'}];
  // The report's places are lines and columns; a link to the row of a step wants the span.
  const places = compared?.comparison?.changes[index]?.[which].at ?? [];
  return at.map((one, position) => {
    const where = places[position]?.where;
    const row = where && rowOf(where);
    const line = where && lineAt(where, compared?.books[which]);
    const place = h('code', `${printable(one.file)}:${one.line}`);
    return h('p', [
      row === undefined ? place : h('a', {href: `#${row}`}, place),
      ` ${printable(one.message)}`,
      ...(line === undefined ? [] : [h('span.also-line', h('code', printable(line)))]),
    ]);
  });
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

function sideBySide(compared: Compared, name: string): Element[] {
  const tables = stepTables(compared, name);
  return tables.length === 0 ? [] : [h('h2', 'Side by side'), ...tables];
}

/** Wider than a sheet, and an effect is told by its rule and its word, never by colour alone. */
const OWN_STYLE = `
body { max-width: 297mm; }
body > main + header { margin-top: 16mm; }
main > p:first-child { margin-top: 4mm; }
@page { size: A4 landscape; margin: 12mm; }
.compared, .sides { table-layout: fixed; }
.compared.weakened { border-left: 2mm solid var(--ink); }
.compared td p { margin: 0 0 1mm; }
.compared tbody, .sides tbody { overflow-wrap: break-word; }
.compared code, .sides code { overflow-wrap: anywhere; }
.sides tr > :nth-child(odd):not(:last-child) { width: 14mm; }
.sides tr > :last-child { width: 30mm; }
.sides tr.weakened > :last-child { background: var(--ink); color: #fff; font-weight: 700; }
.sides tr.plain { color: #444; }
.sides td p { margin: 0 0 1mm; }
.sides tr:target { outline: 0.6mm solid var(--mark); }
.sides ins, .sides del { text-decoration-thickness: 0.6mm; }
.sides td.empty { background: var(--shade); }
summary { cursor: pointer; padding: 1.5mm 0; }
.procedure { border-top: 0.5pt solid var(--rule); }
.procedure > summary { font-weight: 700; }
@media screen and (max-width: 760px) {
  .compared, .sides, .compared tbody, .sides tbody, .compared tr, .sides tr { display: block; }
  .compared thead, .sides thead, .sides td.empty, .sides td:empty { display: none; }
  .compared tr > *, .sides tr > *, .sides tr > :nth-child(odd):not(:last-child), .sides tr > :last-child { display: block; width: auto; border: 0; text-align: left; }
  .compared tr, .sides tr { border-bottom: 0.8pt solid var(--ink); padding: 1.5mm 0; }
  h1, h1.long { font-size: 15pt; }
  .block-top { padding-right: 2mm; }
  .cells > div, .cells > .w6 { grid-column: span 6; }
  [data-side]::before { content: attr(data-side) ' '; font-weight: 700; }
}
`;
