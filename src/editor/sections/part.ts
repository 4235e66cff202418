/** One part of a procedure's text, from a heading to the next at which it may be cut, read by itself. */
import type {Procedure} from '../../procedure/model.js';
import {readProcedure} from '../../procedure/read.js';
import {source} from '../../text/source.js';
import {type Read, type Shift, shifted} from './shift.js';

export interface Part extends Read {
  /** Its length in the text, without the heading line after it. */
  readonly length: number;
  /** With that line: as far as the reading of it looked. */
  readonly looked: number;
  /** Line breaks in it. */
  readonly lines: number;
  readonly front: Procedure['front'];
  /** Where it was put last. */
  place?: {readonly at: Shift; readonly read: Read};
}

/**
 * Reads what stands from `start` to `end`, together with the heading line there, which tells whether all that was opened
 * is closed by then. Undefined where it is not, or where the text must be read as a whole.
 */
export function readPart(file: string, text: string, start: number, end: number): Part | undefined {
  const length = end - start;
  const looked = end === text.length ? length : lineEnd(text, end) - start;
  const read = readProcedure(source(file, own(text.slice(start, start + looked))));
  const isLast = end === text.length;
  const after = isLast ? undefined : read.sections.at(-1);
  if (!isLast && (after?.span.start !== length || after.depth === 0)) return undefined;
  const problems = read.problems.filter(
    ({name, where}) => where.span.start < length && (start === 0 || name !== 'front-matter'),
  );
  // It is said once a text, and of steps that the text may have elsewhere.
  if (problems.some(({name}) => name === 'file-unreadable')) return undefined;
  const last = read.source.lines.findLastIndex((at) => at <= length);
  const {front, steps, sections} = read;
  const kept = isLast ? sections : sections.slice(0, -1);
  return {length, looked, lines: last, front, steps, sections: kept, problems};
}

/** A text of its own: a slice would keep the whole text alive that it was cut from. */
function own(slice: string): string {
  return ` ${slice}`.slice(1);
}

function lineEnd(text: string, from: number): number {
  const ending = /[\r\n]/g;
  ending.lastIndex = from;
  return ending.exec(text)?.index ?? text.length;
}

/** The part where it stands now; as it was put there before, where that is the same place. */
export function placedAt(part: Part, at: Shift): Read {
  const {place} = part;
  const same =
    place?.at.offset === at.offset &&
    place.at.line === at.line &&
    place.at.index === at.index &&
    place.at.count === at.count;
  if (same && place) return place.read;
  const read = shifted(part, at);
  part.place = {at, read};
  return read;
}
