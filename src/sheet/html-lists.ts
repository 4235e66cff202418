/** The before-you-start lists as HTML tables. */
import type {Element, ElementContent} from 'hast';
import {h} from 'hastscript';
import {placeItems} from './drawing-text.js';
import {drawingNode} from './html-drawing.js';
import {box, underHeads, valueNodes} from './html-parts.js';
import {beforeKey} from './keys.js';
import type {Before, ConsumableLine, PartLine, PlaceNames, ToolLine} from './model.js';
import {runs} from './step-runs.js';
import {fill, type Words} from './words.js';

/** All lists that hold anything; a procedure that needs nothing says so, lest a list be taken for forgotten. */
export function beforeSection(before: Before, words: Words): Element {
  const lists = [
    listOf('tools', words.tools, before.tools, toolColumns(words), words),
    listOf('consumables', words.consumables, before.consumables, consumableColumns(words), words),
    listOf('parts', words.parts, before.parts, partColumns(words), words),
    listOf('new-parts', words.newParts, before.newParts, partColumns(words), words),
  ].flat();
  return h('section.lists', {ariaLabelledBy: ['before'], dataSection: 'before'}, [
    h('h2', {id: 'before'}, words.before),
    ...(lists.length === 0 ? [h('p', words.nothing)] : lists),
    ...placesSection(before.places, words),
  ]);
}

function placesSection(places: readonly PlaceNames[], words: Words): Element[] {
  if (places.length === 0) return [];
  const figures = places.map((one) =>
    h('figure.drawn', [drawingNode(one.drawing, words), h('figcaption', placeItems(one, words))]),
  );
  return [h('section', {ariaLabelledBy: ['places']}, [h('h3', {id: 'places'}, words.places), ...figures])];
}

interface Column<Line> {
  readonly title: string;
  readonly className: string;
  readonly cell: (line: Line) => string | ElementContent[];
}

function listOf<Line>(
  id: Parameters<typeof beforeKey>[0],
  title: string,
  lines: readonly Line[],
  columns: readonly Column<Line>[],
  words: Words,
): Element[] {
  if (lines.length === 0) return [];
  const headings = columns.map(({title, className}) =>
    h('th', {scope: 'col', className: [className]}, title),
  );
  return [
    h('section', {ariaLabelledBy: [`list-${id}`]}, [
      h('h3', {id: `list-${id}`}, title),
      h('table.list', [
        h('thead', h('tr', [h('th.box-cell', {scope: 'col'}, words.toHand), ...headings])),
        h(
          'tbody',
          lines.map((line, at) => lineRow(line, columns, beforeKey(id, at))),
        ),
      ]),
    ]),
  ];
}

function lineRow<Line>(line: Line, columns: readonly Column<Line>[], key: string): Element {
  const [first, ...others] = columns;
  const row = h('tr', [
    h('td', box('small', key)),
    ...(first === undefined ? [] : [h('th', {scope: 'row'}, first.cell(line))]),
    ...others.map(({cell}) => h('td', cell(line))),
  ]);
  return underHeads(row, ['', '', ...others.map(({title}) => title)]);
}

function toolColumns(words: Words): Column<ToolLine>[] {
  return [
    {title: words.name, className: 'wide', cell: (tool) => named(tool, words)},
    {title: words.calibrationDue, className: 'narrow', cell: ({due}) => due ?? '–'},
    stepsColumn(words),
  ];
}

function named({names, serial, range}: ToolLine, words: Words): ElementContent[] {
  const more = [
    ...(range === undefined ? [] : [h('span', valueNodes(range))]),
    ...(serial === undefined ? [] : [h('span', fill(words.serial, {serial}))]),
  ];
  const details = more.flatMap((node, at) => (at === 0 ? [node] : [text(' · '), node]));
  const name = text(names.join(words.or));
  return details.length === 0 ? [name] : [name, h('span.also-line', details)];
}

function consumableColumns(words: Words): Column<ConsumableLine>[] {
  return [
    {title: words.name, className: 'wide', cell: ({names}) => names.join(words.or)},
    {title: words.hazards, className: 'narrow', cell: ({hazards}) => hazards.join(words.and) || '–'},
    {
      title: words.cureTime,
      className: 'narrow',
      cell: ({cure}) => (cure === undefined ? '–' : valueNodes(cure)),
    },
    stepsColumn(words),
  ];
}

function partColumns(words: Words): Column<PartLine>[] {
  return [
    {title: words.name, className: 'wide', cell: ({name}) => name},
    {title: words.quantity, className: 'count', cell: ({quantity}) => String(quantity)},
    {title: words.hazards, className: 'narrow', cell: ({hazards}) => hazards.join(words.and) || '–'},
    stepsColumn(words),
  ];
}

function stepsColumn<Line extends {readonly steps: readonly string[]}>(words: Words): Column<Line> {
  return {title: words.neededAt, className: 'steps', cell: ({steps}) => runs(steps).join(', ')};
}

function text(value: string): ElementContent {
  return {type: 'text', value};
}
