/** What stands beside a step: its values, and the boxes, blanks and lines that the hand fills. */
import type {Element} from 'hast';
import {h} from 'hastscript';
import {wireRuns} from './drawing-text.js';
import {drawingNode} from './html-drawing.js';
import {blank, box, line, valueNodes} from './html-parts.js';
import {tighteningNode} from './html-tightening.js';
import {laterRounds, readsInColumns} from './layout.js';
import type {Blanks, Drawing, Entry, Fact, ReadingBlanks} from './model.js';
import type {Words} from './words.js';

/** One block for each tag that says anything beside the prose of its step. */
export function entryNodes(entries: readonly Entry[], words: Words): Element[] {
  return entries.map((entry) =>
    h('div.entry', [
      h('p.entry-title', [h('b', entry.title), ` ${entry.subject}`]),
      ...(entry.facts.length === 0 ? [] : [h(factsOf(entry), entry.facts.map(factNode))]),
      ...(entry.drawing === undefined ? [] : [drawnNode(entry.drawing, words)]),
      ...(entry.blanks === undefined ? [] : [blanksNode(entry.blanks, words)]),
    ]),
  );
}

/** What a way back asks for is said for paper; a tablet does it by itself. */
function factsOf({verb}: Entry): string {
  return verb === 'repeat' ? 'dl.facts.later' : 'dl.facts';
}

/** The runs of a wire stand beside their drawing as text too. */
function drawnNode(drawing: Drawing, words: Words): Element {
  const runs = wireRuns(drawing, words).map((run) => h('li', run));
  return h('figure.drawn', [
    drawingNode(drawing, words),
    ...(runs.length === 0 ? [] : [h('ul.plain', runs)]),
  ]);
}

function factNode({label, note, ...value}: Fact): Element {
  return h('div', [
    h('dt', label),
    ' ',
    h('dd', [...valueNodes(value), ...(note === undefined ? [] : [' ', h('span.note', `(${note})`)])]),
  ]);
}

function blanksNode(blanks: Blanks, words: Words): Element {
  switch (blanks.type) {
    case 'ticks':
      return ticksNode(blanks.labels, blanks.keys);
    case 'lines':
      return h(
        'dl.facts.lines',
        blanks.labels.map((label, at) =>
          h('div', [h('dt', label), h('dd', line('name', {box: blanks.keys[at]}))]),
        ),
      );
    case 'readings':
      return readingsNode(blanks, words);
    case 'tightening':
      return tighteningNode(blanks, words);
  }
}

/** Small boxes with their names beside them, and the keys of the boxes. */
export function ticksNode(labels: readonly string[], keys: readonly string[]): Element {
  return h(
    'ul.ticks',
    labels.map((label, at) => h('li', [box('small', keys[at]), h('span', label)])),
  );
}

function readingsNode(readings: ReadingBlanks, words: Words): Element {
  const {limits} = readings;
  return h('div', [
    ...(limits === undefined
      ? []
      : [h('p.limits', [h('span.label', words.limits), ' ', h('span.value', valueNodes(limits))])]),
    readsInColumns(readings) ? readingColumns(readings) : readingTable(readings, words),
  ]);
}

function readingTable(readings: ReadingBlanks, words: Words): Element {
  const {labels, unit, again, keys} = readings;
  const later = laterRounds(readings, words);
  const head = h('tr', [
    h('th', {scope: 'col'}, words.place),
    h('th', {scope: 'col'}, words.reading),
    ...later.map((title) => h('th.later', {scope: 'col'}, title)),
  ]);
  return h('table.readings', [
    ...(again ? [h('thead', head)] : []),
    h(
      'tbody',
      labels.map((label, at) =>
        h('tr', [
          h('th', {scope: 'row'}, label === '' ? words.reading : label),
          h('td', [blank(keys[at]), unitNode(unit)]),
          ...later.map(() => h('td.later', [blank(), unitNode(unit)])),
        ]),
      ),
    ),
  ]);
}

function readingColumns({labels, unit, keys}: ReadingBlanks): Element {
  return h(
    'div.columns',
    labels.map((label, at) => h('div.reading', [h('span.label', label), blank(keys[at]), unitNode(unit)])),
  );
}

function unitNode(unit: string): Element {
  return h('span.unit', unit);
}
