/** The before-you-start lists as tables of the Typst template. */
import type {Before, Value} from './model.js';
import {runs} from './step-runs.js';
import {valueText} from './value.js';
import {fill, type Words} from './words.js';

/** A text, or a name with details in smaller type below it. */
export type PrintCell = string | {readonly name: string; readonly details: readonly Value[]};

export interface PrintList {
  readonly title: string;
  /** Widths in mm; 0 takes what is left. */
  readonly columns: readonly {readonly title: string; readonly width: number}[];
  readonly rows: readonly (readonly PrintCell[])[];
}

/** Those lists that hold anything. */
export function printLists(before: Before, words: Words): PrintList[] {
  const lists = [toolList(before, words), consumableList(before, words), ...partLists(before, words)];
  return lists.filter(({rows}) => rows.length > 0);
}

const column = (title: string, width: number) => ({title, width});

function toolList({tools}: Before, words: Words): PrintList {
  return {
    title: words.tools,
    columns: [column(words.name, 0), column(words.calibrationDue, 34), column(words.neededAt, 28)],
    rows: tools.map(({names, range, serial, due, steps}) => {
      const details = [range, serial === undefined ? undefined : {text: fill(words.serial, {serial})}];
      return [
        {name: names.join(words.or), details: details.filter((detail) => detail !== undefined)},
        due ?? '–',
        runs(steps).join(', '),
      ];
    }),
  };
}

function consumableList({consumables}: Before, words: Words): PrintList {
  return {
    title: words.consumables,
    columns: [
      column(words.name, 0),
      column(words.hazards, 38),
      column(words.cureTime, 30),
      column(words.neededAt, 28),
    ],
    rows: consumables.map(({names, hazards, cure, steps}) => [
      names.join(words.or),
      hazards.join(words.and) || '–',
      cure === undefined ? '–' : valueText(cure),
      runs(steps).join(', '),
    ]),
  };
}

function partLists({parts, newParts}: Before, words: Words): PrintList[] {
  const columns = [
    column(words.name, 0),
    column(words.quantity, 22),
    column(words.hazards, 38),
    column(words.neededAt, 28),
  ];
  const listOf = (title: string, lines: Before['parts']): PrintList => ({
    title,
    columns,
    rows: lines.map(({name, quantity, hazards, steps}) => [
      name,
      String(quantity),
      hazards.join(words.and) || '–',
      runs(steps).join(', '),
    ]),
  });
  return [listOf(words.parts, parts), listOf(words.newParts, newParts)];
}
