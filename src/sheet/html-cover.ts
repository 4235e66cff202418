/** The cover of a book as one self-contained HTML file that links to its sheets. */
import type {Element} from 'hast';
import {h} from 'hastscript';
import {document} from './html-document.js';
import {cells, standing, titleBlock} from './html-head.js';
import {box, line} from './html-parts.js';
import {signs, waiverTable} from './html-signs.js';
import type {Cover, CoverLine} from './model.js';
import {fill, type Words} from './words.js';

export function coverHtml(cover: Cover): string {
  const {words} = cover;
  return document({
    words,
    title: `${words.cover} · ${cover.engine}`,
    running: {
      paper: cover.paper,
      words,
      topLeft: `${cover.shop} · ${words.cover}`,
      topRight: `${cover.engine} · ${cover.fingerprint}`,
      bottomLeft: `${words.engineNumber} ${cover.engineNumber ?? '____________'}`,
    },
    body: [
      header(cover),
      h('main', [
        procedureTable(cover.procedures, words),
        ...(cover.holds.length === 0 ? [] : [holdTable(cover)]),
        ...(cover.waivers.length === 0 ? [] : [waiverTable(cover.waivers, words)]),
        ...(cover.sources.length === 0 ? [] : [sourceTable(cover)]),
      ]),
      closing(words),
    ],
  });
}

function header(cover: Cover): Element {
  const {words} = cover;
  return h('header', [
    titleBlock({shop: cover.shop, kind: words.cover, title: cover.engine}, [
      cells([
        {label: words.engineNumber, text: cover.engineNumber ?? '', width: 4},
        {label: words.job, text: cover.job ?? '', width: 4},
        {label: words.fingerprint, text: cover.fingerprint, width: 4, digits: true},
      ]),
    ]),
    ...(cover.engineNote === undefined ? [] : [h('p.engine-note', `${cover.engine}: ${cover.engineNote}`)]),
    standing(words),
  ]);
}

function procedureTable(lines: readonly CoverLine[], words: Words): Element {
  const titles = [
    words.done,
    words.number,
    words.procedure,
    words.revision,
    words.steps,
    words.holds,
    words.sheetSigned,
  ];
  return section(
    'contents',
    words.contents,
    titles,
    lines.map((one) => lineRow(one, words)),
  );
}

function lineRow({number, title, revision, date, steps, holds, file}: CoverLine, words: Words): Element {
  void words;
  return h('tr', [
    h('td', box('small')),
    h('td', String(number)),
    h('th', {scope: 'row'}, h('a', {href: `${encodeURIComponent(file)}.html`}, title)),
    h('td', [revision, h('span.also-line', date)]),
    h('td', String(steps)),
    h('td', holds === 0 ? '–' : String(holds)),
    h('td', line()),
  ]);
}

function holdTable({holds, words}: Cover): Element {
  const titles = [words.done, words.number, words.hold, words.sheetSigned];
  const rows = holds.map(({procedure, step, name, by}) =>
    h('tr', [
      h('td', box('small')),
      h('td', `${procedure} · ${step}`),
      h('th', {scope: 'row'}, by === undefined ? name : `${name} (${by})`),
      h('td', line()),
    ]),
  );
  return section('holds', words.holds, titles, rows);
}

function sourceTable({sources, words}: Cover): Element {
  const rows = sources.map(({title, date, note}) =>
    h('tr', [h('th', {scope: 'row'}, title), h('td', date ?? '–'), h('td', note ?? '–')]),
  );
  return section('sources', words.sources, [words.name, words.date, words.note], rows);
}

function section(id: string, title: string, titles: readonly string[], rows: readonly Element[]): Element {
  return h('section', {ariaLabelledBy: [id]}, [
    h('h2', {id}, title),
    h('table.list', [
      h(
        'thead',
        h(
          'tr',
          titles.map((text) => h('th', {scope: 'col'}, text)),
        ),
      ),
      h('tbody', [...rows]),
    ]),
  ]);
}

function closing(words: Words): Element {
  return h('section.closing', {ariaLabelledBy: ['closing']}, [
    h('h2', {id: 'closing'}, words.buildClosing),
    h('p', words.buildClosingText),
    h('p.complete', [box('large'), h('span', fill(words.closingBox, {}))]),
    signs([words.builtBy, words.checkedBy], words),
  ]);
}
