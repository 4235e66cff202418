/** A section of steps as an HTML table: a body a step, so that nothing of a step is parted from the rest of it. */
import type {Element, ElementContent} from 'hast';
import {h} from 'hastscript';
import {ifNotOf} from './condition.js';
import {entryNodes} from './html-entry.js';
import {noticeNode} from './html-notice.js';
import {box, line} from './html-parts.js';
import {holdNode} from './html-signs.js';
import {sectionKey} from './keys.js';
import {arranged, figureText, laidOut, sectionEndText} from './layout.js';
import type {Figure, Row, SheetBlock, SheetSection} from './model.js';
import {proseNodes} from './prose.js';
import type {Words} from './words.js';

/** The `at`th section, whose end holds `signOff` where it is given. */
export function stepSection(section: SheetSection, at: number, words: Words, signOff?: Element): Element {
  const id = `section-${at + 1}`;
  const {title, level, groups, last} = laidOut(section, words);
  const end: End = {says: sectionEndText(section, words), key: sectionKey(at), signOff};
  return h('section', {ariaLabelledBy: [id], dataSection: id}, [
    h(`h${level}`, {id}, title),
    ...groups.flatMap(({blocks, rows}, index) => [
      ...blocks.map((block) => blockNode(block, words)),
      ...(rows.length === 0 ? [] : [rowTable(rows, index === last ? end : undefined, title, words)]),
    ]),
  ]);
}

/** `ends` closes the section below this table; undefined where it goes on. */
function rowTable(rows: readonly Row[], ends: End | undefined, label: string, words: Words): Element {
  const columns = [
    ['c-box', words.done],
    ['c-number', words.number],
    ['c-what', words.action],
    ['c-values', words.values],
    ['c-initials', words.initials],
  ] as const;
  return h('table.rows', {ariaLabel: label}, [
    h(
      'colgroup',
      columns.map(([className]) => h('col', {className: [className]})),
    ),
    h(
      'thead',
      h(
        'tr',
        columns.map(([, title]) => h('th', {scope: 'col'}, title)),
      ),
    ),
    ...rows.flatMap((row, at) => rowBodies(row, {depth: 0, inside: [], even: at % 2 === 1}, words)),
    ...(ends === undefined ? [] : [sectionEnd(ends, words)]),
  ]);
}

/** What stands below the last step of a section. */
interface End {
  readonly says: string;
  readonly key: string;
  readonly signOff: Element | undefined;
}

interface Standing {
  readonly depth: number;
  /** The steps, from the outermost, that open the branches which it stands in: each is followed in one case only. */
  readonly inside: readonly string[];
  readonly even: boolean;
}

function rowBodies(row: Row, standing: Standing, words: Words): Element[] {
  const className = [
    'step',
    ...(standing.even ? ['even'] : []),
    ...(standing.depth > 0 ? ['sub'] : []),
    ...(standing.inside.length > 0 ? ['only'] : []),
    ...(row.rows.length > 0 ? ['opens'] : []),
  ];
  const inside = row.onlyIf === undefined ? standing.inside : [...standing.inside, row.number];
  const below = {depth: standing.depth + 1, inside, even: standing.even};
  return [
    h('tbody', {className, dataInside: insideOf(standing)}, rowLines(row, words)),
    ...(row.onlyIf === undefined ? [] : [onlyIfBody(row, standing, words)]),
    ...row.rows.flatMap((sub) => rowBodies(sub, below, words)),
  ];
}

function insideOf({inside}: Standing): string | undefined {
  return inside.length === 0 ? undefined : inside.join(' ');
}

function onlyIfBody(row: Row, standing: Standing, words: Words): Element {
  const className = ['only', 'only-head', ...(standing.even ? ['even'] : [])];
  const places = {dataBranch: row.number, dataInside: insideOf(standing)};
  return h(
    'tbody',
    {className, ...places},
    h('tr.only-if', h('td', {colSpan: 5}, [`${row.onlyIf}: `, h('span.later.if-not', ifNotOf(row, words))])),
  );
}

function rowLines(row: Row, words: Words): Element[] {
  const {beside, wide} = arranged(row.entries);
  const what = [h('p', proseNodes(row.prose)), ...row.more.map((block) => blockNode(block, words))];
  // Box, number and initials are of the whole step, so they stand beside what goes below it as well.
  const rowSpan = wide.length === 0 ? 1 : 2;
  return [
    ...row.notices.map((notice) => h('tr.notice-row', h('td', {colSpan: 5}, noticeNode(notice, words)))),
    h('tr.main', [
      h('td', {rowSpan}, box('large', row.key)),
      h('th', {scope: 'row', rowSpan}, row.number),
      h('td.what', {colSpan: beside.length === 0 ? 2 : 1}, what),
      ...(beside.length === 0 ? [] : [h('td.values', entryNodes(beside, words))]),
      h('td.initials', {rowSpan, dataStamp: row.key}),
    ]),
    ...(wide.length === 0 ? [] : [h('tr.wide', h('td', {colSpan: 2}, entryNodes(wide, words)))]),
    ...row.holds.map((hold) => h('tr.hold-row', h('td', {colSpan: 5}, holdNode(hold, row.key, words)))),
  ];
}

/** A browser lets no page begin between the last step and this; it parts what stands below a table from it. */
function sectionEnd({says, key, signOff}: End, words: Words): Element {
  const end = h('p.end', [
    box('large', key),
    h('span.title', says),
    h('span', [`${words.initials} `, line('name', {by: key})]),
    h('span', [`${words.date} `, line('name', {at: key})]),
  ]);
  return h('tbody.section-end', [
    h('tr', h('td', {colSpan: 5}, end)),
    ...(signOff === undefined ? [] : [h('tr.sign-off', h('td', {colSpan: 5}, signOff))]),
  ]);
}

/** Anything between steps or below a step's first line. */
export function blockNode(block: SheetBlock, words: Words): ElementContent {
  switch (block.type) {
    case 'prose':
      return h('p', proseNodes(block.prose));
    case 'notice':
      return noticeNode(block.notice, words);
    case 'figure':
      return figureNode(block.figure, words);
    case 'list':
      return h(
        'ul.plain',
        block.items.map(({depth, prose}) =>
          h('li', {className: [`d${Math.min(depth, 2)}`]}, proseNodes(prose)),
        ),
      );
    case 'typed':
      return h('pre', block.text);
    case 'row':
      return h('p', proseNodes(block.row.prose));
  }
}

/** Only a bitmap inside the file is shown; anything else would be a request, or could hold a script. */
const EMBEDDED = /^data:image\/(?:png|jpeg|gif|webp);base64,[A-Za-z0-9+/=]+$/;

function figureNode(figure: Figure, words: Words): Element {
  const {url, alt, caption} = figure;
  const says = caption ?? alt;
  if (EMBEDDED.test(url)) {
    return h('figure.figure', [h('img', {src: url, alt}), ...(says === '' ? [] : [h('figcaption', says)])]);
  }
  return h('figure.figure', h('figcaption.missing', `${words.picture}: ${figureText(figure)}`));
}
