/** The edit that spells a tag of a procedure as all tags are spelt, its line breaks kept where the author put them. */
import type {Specification} from '../../spec/model.js';
import type {Edit} from '../../text/edit.js';
import type {Source} from '../../text/source.js';
import type {Block, Procedure, Tag} from '../model.js';
import {canonicalTag} from './spelling.js';

/** Every tag of a procedure that was read where it belongs: of steps, cautions and headings. */
export function tagsOfProcedure({sections, steps}: Procedure): readonly Tag[] {
  const found = new Map<number, Tag>();
  const add = (tags: readonly Tag[]) => {
    for (const tag of tags) found.set(tag.span.start, tag);
  };
  const addLoose = (block: Block) => {
    if (block.type === 'caution') add(block.caution.tags);
  };
  for (const {only, content} of sections) {
    add(only);
    content.forEach(addLoose);
  }
  for (const step of steps) {
    add(step.tags);
    for (const caution of step.cautions) add(caution.tags);
    step.more.forEach(addLoose);
  }
  return [...found.values()];
}

/** Undefined where the tag is spelt so already, or cannot be. `shifts` are the columns that lines move, by their start. */
export function tagEdit(
  {file, text}: Source,
  tag: Tag,
  spec: Pick<Specification, 'items'> | undefined,
  shifts: ReadonlyMap<number, number>,
): Edit | undefined {
  const line = canonicalTag(tag, file, spec);
  if (line === undefined) return undefined;
  const written = broken(line, breaksOf(tag, shifts));
  const pad = line.endsWith('`') ? {before: 0, after: 0} : padding(text, tag);
  if (pad.before + pad.after === 0 && written === tag.raw) return undefined;
  return {span: {start: tag.span.start - pad.before, end: tag.span.end + pad.after}, text: written};
}

/** Blanks between the backticks and the tag; a line break there stays. */
function padding(text: string, {span}: Tag): {readonly before: number; readonly after: number} {
  let before = 0;
  while (isBlank(text[span.start - before - 1])) before++;
  let after = 0;
  while (isBlank(text[span.end + after])) after++;
  return {
    before: text[span.start - before - 1] === '`' ? before : 0,
    after: text[span.end + after] === '`' ? after : 0,
  };
}

function isBlank(character: string | undefined): boolean {
  return character === ' ' || character === '\t';
}

/** A line break of a tag: how many names, numbers and words stand before it, and what it is made of. */
interface Break {
  readonly after: number;
  readonly text: string;
}

function breaksOf({raw, span}: Tag, shifts: ReadonlyMap<number, number>): Break[] {
  const breaks: Break[] = [];
  let words = 0;
  let done = 0;
  for (const {0: all, 1: ending = '', 2: prefix = '', index} of raw.matchAll(BREAK)) {
    words += countOf(raw.slice(done, index), done === 0);
    done = index + all.length;
    const lineStart = span.start + index + ending.length;
    breaks.push({after: words, text: ending + shifted(prefix, shifts.get(lineStart) ?? 0)});
  }
  return breaks;
}

/** A line end and the indentation and quote marks after it. */
const BREAK = /(\r\n|\r|\n)([ \t>]*)/g;

function shifted(prefix: string, columns: number): string {
  return columns < 0 ? prefix.slice(-columns) : ' '.repeat(columns) + prefix;
}

/** Words as commas, brackets and the verb's colon part them too, so that spaces around those count for nothing. */
function countOf(text: string, opens: boolean): number {
  const apart = opens ? text.replace(/^([A-Za-z-]+\s*):/, '$1 ') : text;
  return apart.split(/[\s,[\]]+/).filter((word) => word !== '').length;
}

/** The line with its breaks after as many words as before; a break that would now stand at an end is dropped. */
function broken(line: string, breaks: readonly Break[]): string {
  const [first = '', ...words] = line.split(' ');
  let result = first;
  let before = countOf(first, true);
  let next = 0;
  for (const word of words) {
    const found = breaks[next];
    // What opens like a quote mark would be lost behind a break.
    const here = found !== undefined && found.after <= before && !word.startsWith('>');
    result += `${here ? found.text : ' '}${word}`;
    before += countOf(word, false);
    if (here) next++;
  }
  return result;
}
