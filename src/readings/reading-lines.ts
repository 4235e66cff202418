/** The readings of a sheet: for each fit or check and place the rounds that were read, and how the last one stands. */
import type {Box, Form, ReadingBox} from '../build/form.js';
import {grouped} from '../text/grouped.js';
import {numberIn} from './reading-number.js';
import type {ReadingLine, Round} from './report.js';
import {type Answers, acceptedBy, roundOf} from './unrolled.js';
import {verdictOf} from './verdict.js';

/** A line for each place that an unrolled form asks for, in the order of the page; an open sheet still has time for it. */
export function readingLines(
  form: Form,
  answers: Answers,
  due: (box: Box) => boolean,
  {nameOf, isOpen}: {readonly nameOf: (item: string) => string; readonly isOpen: boolean},
): ReadingLine[] {
  return placesOf(form).map((boxes) => lineOf(form, boxes, {answers, nameOf, due, isOpen}));
}

/** The boxes of each place in the order of their rounds. */
function placesOf({boxes}: Form): readonly (readonly ReadingBox[])[] {
  const readings = boxes.filter((box) => box.kind === 'reading');
  const places = grouped(readings, ({step, item, place}) => JSON.stringify([step, item, place]));
  return [...places.values()].map((list) => list.sort((one, other) => roundOf(one) - roundOf(other)));
}

interface Context {
  readonly answers: Answers;
  readonly nameOf: (item: string) => string;
  readonly due: (box: Box) => boolean;
  readonly isOpen: boolean;
}

function lineOf({procedure}: Form, boxes: readonly ReadingBox[], context: Context): ReadingLine {
  const [first] = boxes;
  if (first === undefined) throw new RangeError('a place without a box');
  const {step, item, place, unit, least, most, figures, doubt} = first;
  const rounds = boxes.flatMap((box) => saidIn(box, context.answers) ?? []);
  return {
    sheet: procedure,
    step,
    item,
    name: context.nameOf(item),
    place,
    unit,
    ...(least !== undefined && {least}),
    ...(most !== undefined && {most}),
    ...(figures !== undefined && {figures}),
    ...(doubt !== undefined && {doubt}),
    rounds,
    state: stateOf(rounds.at(-1), context.due(first), context.isOpen),
  };
}

function stateOf(last: Round | undefined, due: boolean, isOpen: boolean): ReadingLine['state'] {
  if (last === undefined) return due ? (isOpen ? 'open' : 'missing') : 'not-called-for';
  if (last.number === undefined) return 'unreadable';
  return last.verdict ?? 'unjudged';
}

function saidIn(box: ReadingBox, answers: Answers): Round | undefined {
  const answer = answers.get(box.key);
  if (answer?.now === undefined) return undefined;
  const {now, history} = answer;
  const number = numberIn(now.value, box);
  const verdict = number === undefined ? undefined : verdictOf(number, box);
  const accepted = acceptedBy(box, answers);
  return {
    round: roundOf(box),
    value: now.value,
    at: now.at,
    by: now.by,
    ...(number !== undefined && {number}),
    ...(verdict !== undefined && {verdict}),
    ...(verdict === 'out' &&
      accepted && {accepted: {because: accepted.value, at: accepted.at, by: accepted.by}}),
    before: history
      .filter(({index, value}) => index < now.index && value.trim() !== '')
      .map(({value, at, by}) => ({value, at, by})),
  };
}
