/** What a sheet asks for, box by box: what records of a build answer, and what the tablet works with. */
import {toString as textOf} from 'mdast-util-to-string';
import type {Box, Branch, Form, GoesBack} from '../build/form.js';
import {isHeading} from './condition.js';
import {beforeKey, CLOSING, sectionKey} from './keys.js';
import type {Before, Blanks, Entry, Hold, ReadingBlanks, Row, Sheet, SheetSection} from './model.js';
import type {Words} from './words.js';

/**
 * What a tablet asks for and a record is judged by: every box of the sheet in the order of the page, of the first
 * round alone.
 */
export function formOf({head, identity, before, sections, words}: Sheet): Form {
  const {job, engineNumber, title, revision} = head;
  const known = {words, work: workOf(sections)};
  const boxes = sections.flatMap((section, at) => sectionBoxes(section, at, known));
  return {
    ...identity,
    ...(job === undefined ? {} : {job}),
    ...(engineNumber === undefined ? {} : {engineNumber}),
    title,
    revision,
    boxes: [...beforeBoxes(before, words), ...withWaysBack(boxes, sections), ...closingBoxes(words)],
  };
}

interface Known {
  readonly words: Words;
  /** Keys of the boxes of each step, by its number. */
  readonly work: ReadonlyMap<string, readonly string[]>;
}

/** Boxes of no step: always to be answered. */
const APART = {step: '', onlyIf: []} as const;

function beforeBoxes({tools, consumables, parts, newParts}: Before, words: Words): Box[] {
  const lists = [
    ['tools', tools.map(({names}) => names.join(words.or))],
    ['consumables', consumables.map(({names}) => names.join(words.or))],
    ['parts', parts.map(({name}) => name)],
    ['new-parts', newParts.map(({name}) => name)],
  ] as const;
  return lists.flatMap(([list, names]) =>
    names.map(
      (name, at): Box => ({
        ...APART,
        kind: 'tick',
        key: beforeKey(list, at),
        label: `${words.toHand}: ${name}`,
      }),
    ),
  );
}

function sectionBoxes({title, content}: SheetSection, at: number, known: Known): Box[] {
  const {words} = known;
  const rows = content.flatMap((block) => (block.type === 'row' ? [block.row] : []));
  if (rows.length === 0) return [];
  const label = title === '' ? words.sectionDone : `${words.sectionDone}: ${title}`;
  return [
    ...rows.flatMap((row) => rowBoxes(row, [], known)),
    {...APART, kind: 'tick', key: sectionKey(at), label, ends: 'section'},
  ];
}

function rowBoxes(row: Row, onlyIf: readonly Branch[], known: Known): Box[] {
  const below = row.branch === undefined ? onlyIf : [...onlyIf, row.branch];
  // A step that only opens its branch is struck with it; one that has work of its own is done in any case.
  const base = {step: row.number, onlyIf: isHeading(row) ? below : onlyIf};
  return [
    {...base, kind: 'tick', key: row.key, label: textOf(row.prose)},
    ...row.entries.flatMap((entry) => entryBoxes(entry, base)),
    ...row.holds.flatMap((hold) => holdBoxes(hold, base, known.work)),
    ...row.rows.flatMap((sub) => rowBoxes(sub, below, known)),
  ];
}

type Base = Pick<Box, 'step' | 'onlyIf'>;

function entryBoxes({title, subject, blanks}: Entry, base: Base): Box[] {
  if (blanks === undefined) return [];
  const named = (...labels: readonly string[]) =>
    [`${title} ${subject}`.trim(), ...labels].filter((label) => label !== '').join(', ');
  switch (blanks.type) {
    case 'ticks':
      return pairs(blanks).map(({key, label}) => ({...base, kind: 'tick', key, label: named(label)}));
    case 'lines':
      return lineBoxes(blanks, base, named);
    case 'readings':
      return readingBoxes(blanks, base, named);
    case 'tightening':
      return blanks.passes.flatMap(({label: pass}, at) =>
        blanks.positions.map((position, place) => ({
          ...base,
          kind: 'tick',
          key: blanks.keys[at]?.[place] ?? '',
          label: named(pass, position),
        })),
      );
  }
}

function pairs({labels, keys}: {readonly labels: readonly string[]; readonly keys: readonly string[]}) {
  return labels.map((label, at) => ({label, key: keys[at] ?? ''}));
}

type Lines = Extract<Blanks, {readonly type: 'lines'}>;

function lineBoxes(blanks: Lines, base: Base, named: (label: string) => string): Box[] {
  const {item, expected, times, keys} = blanks;
  return pairs(blanks).map(({key, label}, at) => {
    const line = {...base, key, label: named(label), item};
    if (times === undefined) return {...line, kind: 'line', ...(expected === undefined ? {} : {expected})};
    const [since] = keys;
    return {...line, kind: 'time', ...(at === 0 || since === undefined ? {} : {since, ...times})};
  });
}

function readingBoxes(blanks: ReadingBlanks, base: Base, named: (label: string) => string): Box[] {
  const {item, unit, least, most, figures, doubt, fromNought} = blanks;
  return blanks.keys.map((key, place) => ({
    ...base,
    kind: 'reading',
    key,
    label: named(blanks.labels[place] ?? ''),
    item,
    place: blanks.places[place] ?? '',
    unit,
    ...(least === undefined ? {} : {least}),
    ...(most === undefined ? {} : {most}),
    ...(figures === undefined ? {} : {figures}),
    ...(doubt === undefined ? {} : {doubt}),
    ...(fromNought === undefined ? {} : {fromNought}),
  }));
}

/** The boxes of steps that send the work back know which boxes come round again. */
function withWaysBack(boxes: readonly Box[], sections: readonly SheetSection[]): Box[] {
  const ways = new Map<string, GoesBack>();
  const rows = sections.flatMap(({content}) =>
    content.flatMap((block) => (block.type === 'row' ? withRowsBelow(block.row) : [])),
  );
  rows.forEach(({key, backTo: to}, at) => {
    const from = rows.findIndex(({number}) => number === to);
    if (to === undefined || from < 0 || from > at) return;
    const steps = new Set(rows.slice(from, loopEnd(rows, from, at, boxes) + 1).map(({number}) => number));
    ways.set(key, {to, boxes: boxes.flatMap((box) => (steps.has(box.step) ? [box.key] : []))});
  });
  return boxes.map((box) => {
    const goesBack = ways.get(box.key);
    return box.kind === 'tick' && goesBack !== undefined ? {...box, goesBack} : box;
  });
}

/**
 * Where a loop ends: at its way back, or at that of the next branch which goes back to the same step (one for too
 * tight, one for too loose): they share their rounds, so long as nothing between them is done in every case.
 */
function loopEnd(rows: readonly Row[], from: number, at: number, boxes: readonly Box[]): number {
  const depth = (number: string | undefined) =>
    Math.min(...boxes.filter(({step}) => step === number).map(({onlyIf}) => onlyIf.length));
  const outside = depth(rows[from]?.number);
  let end = at;
  for (let next = at + 1; depth(rows[next]?.number) > outside && next < rows.length; next++) {
    if (rows[next]?.backTo === rows[from]?.number) end = next;
  }
  return end;
}

function withRowsBelow(row: Row): Row[] {
  return [row, ...row.rows.flatMap(withRowsBelow)];
}

/** What the second person looks at, then the signature. */
function holdBoxes({id, key, name, by, asks, askKeys, steps}: Hold, base: Base, work: Known['work']): Box[] {
  return [
    ...asks.map(
      (ask, at): Box => ({
        ...base,
        kind: 'tick',
        key: askKeys[at] ?? '',
        label: `${name}: ${ask}`,
      }),
    ),
    {
      ...base,
      kind: 'hold',
      key,
      label: name,
      item: id,
      ...(by === undefined ? {} : {by}),
      not: steps.flatMap((step) => work.get(step) ?? []),
    },
  ];
}

function closingBoxes(words: Words): Box[] {
  return [
    {...APART, kind: 'tick', key: CLOSING.complete, label: words.closingBox, ends: 'sheet'},
    {...APART, kind: 'tick', key: CLOSING.built, label: words.builtBy, ends: 'sheet'},
    {
      ...APART,
      kind: 'hold',
      key: CLOSING.checked,
      label: words.checkedBy,
      item: 'closing',
      not: [CLOSING.built],
      ends: 'sheet',
    },
  ];
}

/** The keys of all that is done, read and written in each step, by its number; signatures are not among them. */
function workOf(sections: readonly SheetSection[]): ReadonlyMap<string, readonly string[]> {
  const work = new Map<string, readonly string[]>();
  const add = (row: Row): void => {
    const boxes = row.entries.flatMap((entry) => entryBoxes(entry, APART));
    work.set(row.number, [row.key, ...boxes.map(({key}) => key)]);
    row.rows.forEach(add);
  };
  for (const {content} of sections) {
    for (const block of content) if (block.type === 'row') add(block.row);
  }
  return work;
}
