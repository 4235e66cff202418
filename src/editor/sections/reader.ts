/**
 * Reads a procedure that somebody writes at: of a long text only the sections that an edit touched are parsed and read
 * again. The result is that of reading the text as a whole.
 */
import type {Procedure} from '../../procedure/model.js';
import {readProcedure} from '../../procedure/read.js';
import type {Source} from '../../text/source.js';
import {commonEnds} from '../common-ends.js';
import {joined} from './joined.js';
import {type Part, readPart} from './part.js';

/** Lives as long as a file is open. */
export class SectionReader {
  #text = '';
  #parts: readonly Part[] = [];

  read(source: Source): Procedure {
    const parts = this.#partsOf(source);
    const whole = parts && joined(source, parts);
    this.#text = source.text;
    this.#parts = whole && parts ? parts : [];
    return whole ?? readProcedure(source);
  }

  /** Undefined where the text can't be read in parts. */
  #partsOf({file, text}: Source): Part[] | undefined {
    const first = firstCut(text);
    if (first === undefined) return undefined;
    const {before, after} = this.#untouched(text, first);
    const parts = [...before];
    let start = sum(before);
    let end = text.length - sum(after);
    let stride = LEAST;
    while (start < end) {
      const cut = headingFrom(text, Math.max(start + stride, first), end) ?? end;
      const part = readPart(file, text, start, cut);
      if (part !== undefined) {
        parts.push(part);
        start = cut;
        stride = LEAST;
      } else {
        // Something stays open over the heading: further on, by twice as far each time.
        if (cut === text.length) return undefined;
        stride = (cut - start) * 2;
        while (end < text.length && end < start + stride) end += after.shift()?.length ?? 0;
      }
    }
    return [...parts, ...after];
  }

  /** The parts before and behind what was typed. */
  #untouched(text: string, first: number): {before: readonly Part[]; after: Part[]} {
    const {head, tail} = commonEnds(this.#text, text);
    const before: Part[] = [];
    const after: Part[] = [];
    let start = 0;
    for (const [index, part] of this.#parts.entries()) {
      const isLast = index === this.#parts.length - 1;
      // What stands right at an edge of it may have made it other than it was.
      if (start + part.looked < head && !isLast) before.push(part);
      else if (start > this.#text.length - tail) after.push(part);
      start += part.length;
    }
    const [opening] = before;
    return opening !== undefined && opening.length < first ? {before: [], after: []} : {before, after};
  }
}

/** Small parts cost the heading that is read twice; large ones what this file is here to save. */
const LEAST = 1024;

function sum(parts: readonly Part[]): number {
  return parts.reduce((length, part) => length + part.length, 0);
}

/**
 * Where a text may be cut first: behind its front matter. Undefined where front matter is not closed, and where the text
 * defines links, which hold everywhere in it.
 */
function firstCut(text: string): number | undefined {
  if (text.includes(']:')) return undefined;
  if (!/^---[ \t]*(?:[\r\n]|$)/.test(text)) return 1;
  const closing = /[\r\n]---[ \t]*(?![^\r\n])/g;
  closing.lastIndex = 3;
  const match = closing.exec(text);
  return match === null ? undefined : match.index + match[0].length;
}

/** The first line from an offset on, and before the end, that may be a heading. */
function headingFrom(text: string, from: number, end: number): number | undefined {
  const line = /(?<=[\n\r])#{1,6}(?![^ \t\r\n])/g;
  line.lastIndex = from;
  const at = line.exec(text)?.index;
  return at !== undefined && at < end ? at : undefined;
}
