/** What stands at the head and foot of every page, cut to the room that there is. */
import {widthOf} from './width.js';

/** What every page says of the whole: a name, which is cut where it must be, and what follows it, which never is. */
export interface Running {
  readonly left: {readonly name: string; readonly rest: string};
  readonly right: {readonly name: string; readonly rest: string};
  readonly engineNumber?: string | undefined;
  readonly job?: string | undefined;
}

/**
 * How many characters the running head, and the numbers at the left of the foot, have room for in the widest of the
 * fonts: a margin box does not grow with its text, it lets it run off the page.
 */
const HEAD = 82;
const FOOT = 40;
/** Of these, a blank for the engine's number takes so many, and the number of a job at the most so many. */
export const BLANK = '____________';
const JOB = 12;
/** The name at the right is left at least this much. */
const LEAST = 20;

/** Both sides of the running head, each name cut where the other leaves it no room. */
export function fitted({left, right}: Running): {readonly left: string; readonly right: string} {
  const room = HEAD - widthOf(left.rest) - widthOf(right.rest);
  // The left name has the room that it needs first: it is the sheet's own, the right one is on every sheet.
  const forRight = Math.max(LEAST, room - widthOf(left.name));
  const rightName = shortened(right.name, forRight);
  const leftName = shortened(left.name, Math.max(LEAST, room - widthOf(rightName)));
  return {left: leftName + left.rest, right: rightName + right.rest};
}

/** The left of the foot: the engine's number, undefined where it is to be written in, and what follows it. */
export function footOf(
  {engineNumber, job}: Running,
  words: {readonly engineNumber: string; readonly job: string},
): {readonly engineNumber: string | undefined; readonly job: string} {
  const shown = job === undefined ? '' : ` · ${words.job} ${shortened(job, JOB)}`;
  const room = FOOT - widthOf(`${words.engineNumber} ${shown}`);
  return {engineNumber: engineNumber === undefined ? undefined : shortened(engineNumber, room), job: shown};
}

/** A text cut to a width in characters: after a whole word, where one ends in the latter half of what is kept. */
export function shortened(text: string, room: number): string {
  if (widthOf(text) <= room) return text;
  let kept = '';
  for (const character of text) {
    if (widthOf(kept) + widthOf(character) >= room) break;
    kept += character;
  }
  const cutsWord = !/^\s/.test(text.slice(kept.length));
  const end = cutsWord ? kept.lastIndexOf(' ') : kept.length;
  return `${(end > kept.length / 2 ? kept.slice(0, end) : kept).trimEnd()}…`;
}
