/** Which boxes of a sheet wait for an answer as things stand: branches and second rounds only once they are called for. */
import type {Box, Branch, Form} from '../build/form.js';
import {type Answers, dueOf} from '../readings/rounds.js';

export interface Due {
  /** Whether the box must be answered. */
  readonly box: (box: Box) => boolean;
  /** Whether these branches, one inside the other, are all called for. */
  readonly branches: (branches: readonly Branch[]) => boolean;
}

export function dueNow(form: Form, answers: Answers): Due {
  const box = dueOf(form, answers);
  return {
    box,
    branches: (onlyIf) => box({kind: 'tick', key: '', step: '', label: '', onlyIf}),
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
