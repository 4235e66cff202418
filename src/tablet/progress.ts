/** How far a sheet is: how many of the boxes that wait for an answer as things stand have one. */
import type {Box} from '../build/form.js';
import {type Answers, isAnswered} from '../readings/unrolled.js';

/** How many boxes are answered, of how many that must be. */
export interface Progress {
  readonly done: number;
  readonly of: number;
}

/** `due` says which boxes must be answered. */
export function progressOf(boxes: readonly Box[], answers: Answers, due: (box: Box) => boolean): Progress {
  const asked = boxes.filter(due);
  return {done: asked.filter(({key}) => isAnswered(key, answers)).length, of: asked.length};
}
