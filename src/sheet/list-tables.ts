/** The lists of a build as plain tables of text, which every rendering lays out in its own way. */
import type {BookLists, ListName, StretchLine, TimeList} from './list-model.js';
import type {PartLine, Value} from './model.js';
import {bySheet} from './step-runs.js';
import {fill, type Words} from './words.js';

/** One list, ready to be laid out: nothing of it is worked out by a rendering. */
export interface ListTable {
  readonly name: ListName;
  readonly title: string;
  readonly columns: readonly ListColumn[];
  /** A value a column. */
  readonly rows: readonly (readonly Value[])[];
  /** What is said below the table. */
  readonly notes: readonly string[];
}

export interface ListColumn {
  readonly title: string;
  /** Its values may have a second one, in the other system. */
  readonly both?: true;
  /** It may stand in a line of its own below the first column, where the page is too narrow. */
  readonly detail?: true;
}

/** The lists that hold anything, or those of them that are asked for. */
export function listTables(lists: BookLists, asked?: readonly ListName[]): ListTable[] {
  const {words} = lists;
  const all = [
    tools(lists),
    consumables(lists),
    parts('parts', words.parts, lists.parts, words),
    parts('new-parts', words.toOrder, lists.newParts, words),
    torques(lists),
    ...(lists.time ? [time(lists.time, words)] : []),
  ];
  return all.filter(({name, rows}) => rows.length > 0 && (asked?.includes(name) ?? true));
}

function tools({tools: lines, words}: BookLists): ListTable {
  return {
    name: 'tools',
    title: words.tools,
    columns: [
      {title: words.name},
      {title: words.serialNumber, detail: true},
      {title: words.range, both: true, detail: true},
      {title: words.calibrationDue},
      {title: words.sheetAndStep},
    ],
    rows: lines.map(({names, serial, range, due = '', overdue, steps}) => [
      plain(names.join(words.or)),
      plain(serial),
      range ?? plain(),
      plain(overdue ? fill(words.overdue, {date: due}) : due),
      plain(bySheet(steps)),
    ]),
    notes: [],
  };
}

function consumables({consumables: lines, words}: BookLists): ListTable {
  return {
    name: 'consumables',
    title: words.consumables,
    columns: [
      {title: words.name},
      {title: words.quantity, both: true},
      {title: words.uses},
      {title: words.hazards},
      {title: words.cureTime},
      {title: words.sheetAndStep},
    ],
    rows: lines.map(({names, quantities, uses, hazards, cure, steps}) => [
      plain(names.join(words.or)),
      together(quantities),
      plain(String(uses)),
      plain(hazards.join(words.and)),
      cure ?? plain(),
      plain(bySheet(steps)),
    ]),
    notes: [],
  };
}

function parts(name: ListName, title: string, lines: readonly PartLine[], words: Words): ListTable {
  return {
    name,
    title,
    columns: [
      {title: words.name},
      {title: words.quantity},
      {title: words.hazards},
      {title: words.sheetAndStep},
    ],
    rows: lines.map((line) => [
      plain(line.name),
      plain(String(line.quantity)),
      plain(line.hazards.join(words.and)),
      plain(bySheet(line.steps)),
    ]),
    notes: [],
  };
}

function torques({torques: lines, words}: BookLists): ListTable {
  return {
    name: 'torques',
    title: words.torqueTable,
    columns: [
      {title: words.fastener},
      {title: words.count, detail: true},
      {title: words.thread, detail: true},
      {title: words.grade, detail: true},
      {title: words.threads},
      {title: words.passes, both: true},
      {title: words.torque, both: true},
      {title: words.angle},
      {title: words.lock},
      {title: words.sheetAndStep},
      {title: words.source, detail: true},
      {title: words.note, detail: true},
    ],
    rows: lines.map((line) => [
      plain(line.name),
      plain(String(line.count)),
      plain(line.thread),
      plain(line.grade),
      plain(line.threads),
      together(line.passes, words.and),
      line.torque,
      line.angle ?? plain(),
      plain([line.lock, line.stripe && words.stripe].filter(Boolean).join('; ')),
      plain(bySheet(line.steps)),
      plain(line.source),
      plain(line.note),
    ]),
    notes: [words.listsCaution],
  };
}

function time(plan: TimeList, words: Words): ListTable {
  const {stretches, handsOn, waits, earliest, path, alone, untimed, unknownWaits} = plan;
  const list = (ids: readonly string[]) => ids.join(words.and);
  return {
    name: 'time',
    title: words.timePlan,
    columns: [
      {title: words.part},
      {title: words.work},
      {title: words.wait},
      {title: words.curing, detail: true},
      {title: words.start},
      {title: words.end},
      {title: words.slack},
      {title: words.during},
    ],
    rows: stretches.map((line) => stretchRow(line, words)),
    notes: [
      fill(words.timeSums, {work: handsOn.text, wait: waits.text, earliest: earliest.text, path: list(path)}),
      fill(words.timeAlone, {finish: alone.finish.text, order: list(alone.order)}),
      ...(untimed.length === 0 ? [] : [fill(words.untimed, {titles: list(untimed)})]),
      ...(unknownWaits.length === 0 ? [] : [fill(words.unknownWaits, {names: list(unknownWaits)})]),
      words.timeCaution,
    ],
  };
}

function stretchRow({id, title, hands, wait, curing, start, end, slack, during}: StretchLine, words: Words) {
  return [
    plain(`${id} ${title}`),
    hands ?? plain(),
    wait ?? plain(),
    plain(curing.join(words.and)),
    start,
    end,
    slack,
    plain(during.join(words.and)),
  ];
}

function plain(text = ''): Value {
  return {text};
}

/** Amounts of one thing add up; passes follow each other, so that their joiner says so. */
function together(values: readonly Value[], between = ' + '): Value {
  const text = values.map((value) => value.text).join(between);
  if (values.every(({also}) => also === undefined)) return {text};
  return {text, also: values.map((value) => value.also ?? value.text).join(between)};
}
