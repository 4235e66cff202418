/** The readings of a sheet: for each fit or check and place the rounds that were read, and how the last one stands. */
import type {Box, Branch, Form, ReadingBox} from '../build/form.js';
import type {Answer} from './answers.js';
import {readingNumber} from './number.js';
import type {ReadingLine, Round} from './report.js';
import {verdictOf} from './verdict.js';

export type Answers = ReadonlyMap<string, Answer>;

/** A line for each place that the sheet asks for, in the order of the page; `nameOf` gives the name of an item. */
export function readingLines(form: Form, answers: Answers, nameOf: (item: string) => string): ReadingLine[] {
  const due = dueOf(form, answers);
  return placesOf(form).map((boxes) => lineOf(form, boxes, {answers, nameOf, due}));
}

/**
 * Whether a box must be answered: all branches that it stands in are called for, as far as the readings tell. A step
 * that one reading of an item was out at is come to again, and reads all places of the item anew.
 */
export function dueOf(form: Form, answers: Answers): (box: Box) => boolean {
  const boxes = form.boxes.filter((box) => box.kind === 'reading');
  const readings = new Map(boxes.map((box) => [box.key, box]));
  const out = new Set(
    boxes.filter((box) => roundOf(box, answers)?.verdict === 'out').map((box) => measurement(box, box.round)),
  );
  return (box) =>
    box.onlyIf.every((branch) => calledFor(branch, readings, answers)) &&
    (box.kind !== 'reading' || box.round === 1 || out.has(measurement(box, box.round - 1)));
}

function measurement({step, item}: ReadingBox, round: number): string {
  return JSON.stringify([step, item, round]);
}

/**
 * `out` is called for by one reading out of its limits in any round; `in` by the last reading of every place being
 * within. A branch that no reading decides is people's business, and nothing in it is missed.
 */
function calledFor(
  {is, boxes}: Branch,
  readings: ReadonlyMap<string, ReadingBox>,
  answers: Answers,
): boolean {
  const asked = boxes.flatMap((key) => readings.get(key) ?? []);
  if (is === 'out') return asked.some((box) => roundOf(box, answers)?.verdict === 'out');
  const places = [...grouped(asked).values()];
  const within = (rounds: readonly ReadingBox[]) => {
    const verdict = rounds.flatMap((box) => roundOf(box, answers) ?? []).at(-1)?.verdict;
    return verdict === 'in' || verdict === 'near';
  };
  return places.length > 0 && places.every(within);
}

/** The boxes of each place in the order of their rounds. */
function placesOf(form: Form): readonly (readonly ReadingBox[])[] {
  return [...grouped(form.boxes.filter((box) => box.kind === 'reading')).values()];
}

function grouped(boxes: readonly ReadingBox[]): ReadonlyMap<string, readonly ReadingBox[]> {
  const places = new Map<string, ReadingBox[]>();
  for (const box of boxes) {
    const key = JSON.stringify([box.step, box.item, box.place]);
    const list = places.get(key);
    if (list) list.push(box);
    else places.set(key, [box]);
  }
  for (const list of places.values()) list.sort((one, other) => one.round - other.round);
  return places;
}

interface Context {
  readonly answers: Answers;
  readonly nameOf: (item: string) => string;
  readonly due: (box: Box) => boolean;
}

function lineOf({procedure}: Form, boxes: readonly ReadingBox[], context: Context): ReadingLine {
  const [first] = boxes;
  if (first === undefined) throw new RangeError('a place without a box');
  const {step, item, place, unit, least, most, doubt} = first;
  const rounds = boxes.flatMap((box) => roundOf(box, context.answers) ?? []);
  return {
    sheet: procedure,
    step,
    item,
    name: context.nameOf(item),
    place,
    unit,
    ...(least !== undefined && {least}),
    ...(most !== undefined && {most}),
    ...(doubt !== undefined && {doubt}),
    rounds,
    state: stateOf(rounds.at(-1), context.due(first)),
  };
}

function stateOf(last: Round | undefined, due: boolean): ReadingLine['state'] {
  if (last === undefined) return due ? 'missing' : 'not-called-for';
  if (last.number === undefined) return 'unreadable';
  return last.verdict ?? 'unjudged';
}

function roundOf(box: ReadingBox, answers: Answers): Round | undefined {
  const answer = answers.get(box.key);
  if (answer?.now === undefined) return undefined;
  const {now, history} = answer;
  const number = readingNumber(now.value);
  const verdict = number === undefined ? undefined : verdictOf(number, box);
  return {
    round: box.round,
    value: now.value,
    at: now.at,
    by: now.by,
    ...(number !== undefined && {number}),
    ...(verdict !== undefined && {verdict}),
    before: history
      .filter(({index, value}) => index < now.index && value.trim() !== '')
      .map(({value, at, by}) => ({value, at, by})),
  };
}
