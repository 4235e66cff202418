/** Which boxes of a sheet wait for an answer as things stand: branches and second rounds only once they are called for. */
import type {Box, Branch, Form, ReadingBox} from '../build/form.js';
import {type Answers, dueOf} from '../readings/rounds.js';
import {judged} from './judge.js';

export interface Due {
  /** Whether the box must be answered. */
  readonly box: (box: Box) => boolean;
  /** Whether these branches, one inside the other, are all called for. */
  readonly branches: (branches: readonly Branch[]) => boolean;
}

export function dueNow(form: Form, answers: Answers): Due {
  const called = dueOf(form, answers);
  const outs = new Set(
    form.boxes.flatMap((box) => (isReading(box) && isOut(box, answers) ? [measurement(box)] : [])),
  );
  const again = (box: Box) => !isReading(box) || box.round === 1 || outs.has(measurement(box));
  return {
    box: (box) => called(box) && again(box),
    branches: (onlyIf) => called({kind: 'tick', key: '', step: '', label: '', onlyIf}),
  };
}

export interface Progress {
  readonly done: number;
  readonly of: number;
}

/** How many of the boxes that are due have an answer. */
export function progressOf(boxes: readonly Box[], answers: Answers, due: Due): Progress {
  const asked = boxes.filter(due.box);
  return {done: asked.filter((box) => isAnswered(box, answers)).length, of: asked.length};
}

export function isAnswered({key}: Box, answers: Answers): boolean {
  return answers.get(key)?.now !== undefined;
}

function isReading(box: Box): box is ReadingBox {
  return box.kind === 'reading';
}

function isOut(box: ReadingBox, answers: Answers): boolean {
  const now = answers.get(box.key)?.now;
  return now !== undefined && judged(now.value, box)?.verdict === 'out';
}

/** All places of an item that one step reads are read again when one of them was out. */
function measurement({step, item}: ReadingBox): string {
  return JSON.stringify([step, item]);
}
