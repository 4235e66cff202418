/** The cover of a book as one self-contained HTML file that links to its sheets. */
import type {Element} from 'hast';
import {h} from 'hastscript';
import type {Cover, CoverLine} from './cover-model.js';
import {paperPage} from './html-paper.js';
import {box, underHeads, valueNodes} from './html-parts.js';
import {closing, waiverTable} from './html-signs.js';
import {sheetHeader} from './html-title-block.js';
import type {Fact} from './model.js';
import {coverTitles} from './title-block.js';
import type {Words} from './words.js';

export function coverHtml(cover: Cover): string {
  const {words} = cover;
  const titles = coverTitles(cover);
  return paperPage({
    words,
    title: titles.document,
    paper: cover.paper,
    running: titles.running,
    body: [
      sheetHeader(titles, words),
      h('main', [
        ...(cover.thisJob === undefined ? [] : [jobTable(cover.thisJob, words)]),
        procedureTable(cover.procedures, words),
        ...(cover.holds.length === 0 ? [] : [holdTable(cover)]),
        ...(cover.waivers.length === 0 ? [] : [waiverTable(cover.waivers, words)]),
        ...(cover.sources.length === 0 ? [] : [sourceTable(cover)]),
      ]),
      closing(words.buildClosing, words.buildClosingText, words),
    ],
  });
}

function jobTable(lines: readonly Fact[], words: Words): Element {
  const rows = lines.map(({label, note, ...value}) =>
    h('tr', [
      h('th', {scope: 'row'}, label),
      h('td', [h('b', valueNodes(value)), ...(note === undefined ? [] : [` (${note})`])]),
    ]),
  );
  return h('section', {ariaLabelledBy: ['this-job']}, [
    h('h2', {id: 'this-job'}, words.thisJob),
    h('table.list.job', h('tbody', rows)),
  ]);
}

function procedureTable(lines: readonly CoverLine[], words: Words): Element {
  const columns = [
    column(words.done, 'done'),
    column(words.sheetNumber, 'number'),
    column(words.procedure),
    column(words.revision, 'dated'),
    column(words.steps, 'few'),
    column(words.holds, 'few'),
    column(words.sheetSigned, 'sign'),
  ];
  const {sheetNumber, revision, steps, holds} = words;
  const heads = ['', sheetNumber, '', revision, steps, holds];
  const rows = lines.map((line) => underHeads(lineRow(line), heads));
  return section({id: 'contents', title: words.contents, columns}, rows);
}

function lineRow({number, title, revision, date, steps, holds, file}: CoverLine): Element {
  return h('tr', [
    h('td', box('small')),
    h('td', String(number)),
    // Sheets lie in the same folder, wherever that is taken.
    h('th', {scope: 'row'}, h('a', {href: `${encodeURIComponent(file)}.html`}, title)),
    h('td', [revision, h('span.also-line.date', date)]),
    h('td', String(steps)),
    h('td', holds === 0 ? '–' : String(holds)),
    h('td.sign'),
  ]);
}

function holdTable({holds, words}: Cover): Element {
  const columns = [
    column(words.done, 'done'),
    column(words.sheetAndStep, 'pair'),
    column(words.hold),
    column(words.sheetSigned, 'sign'),
  ];
  const rows = holds.map(({procedure, step, name, by}) => {
    const row = h('tr', [
      h('td', box('small')),
      h('td.number', `${procedure} · ${step}`),
      h('th', {scope: 'row'}, by === undefined ? name : `${name} (${by})`),
      h('td.sign'),
    ]);
    return underHeads(row, ['', words.sheetAndStep]);
  });
  return section({id: 'holds', title: words.holds, columns}, rows);
}

function sourceTable({sources, words}: Cover): Element {
  const rows = sources.map(({title, date, note}) => {
    const row = h('tr', [h('th', {scope: 'row'}, title), h('td.date', date ?? '–'), h('td', note ?? '–')]);
    return underHeads(row, ['', words.date, words.note]);
  });
  const columns = [column(words.name), column(words.date, 'dated'), column(words.note)];
  return section({id: 'sources', title: words.sources, columns}, rows);
}

function column(title: string, className = 'any'): Element {
  return h('th', {scope: 'col', className: [className]}, title);
}

interface Table {
  readonly id: string;
  readonly title: string;
  readonly columns: readonly Element[];
}

function section({id, title, columns}: Table, rows: readonly Element[]): Element {
  return h('section', {ariaLabelledBy: [id]}, [
    h('h2', {id}, title),
    h('table.list.fixed', [h('thead', h('tr', [...columns])), h('tbody', [...rows])]),
  ]);
}
