/**
 * Markdown text to its tree, part by part, because the parser's cost grows faster than the text. The result equals that
 * of parsing the text as a whole with remark-parse, whose tokenizer it uses: what makes its tree would take twice as
 * long as reading the text.
 */
import type {Root} from 'mdast';
import {parse, preprocess} from 'micromark';
import {blockEvents} from './markdown/block-events.js';
import {type Event, type Point, pointOf, type Tokenizers} from './markdown/events.js';
import {frontMatterIn} from './markdown/front-matter.js';
import {TreeBuilder} from './markdown/tree.js';

export interface Parsed {
  readonly root: Root;
  /** How many characters were handed to the parser, and the most at once: what its time goes by, for tests of growth. */
  readonly work: number;
  readonly largest: number;
}

/**
 * Parses CommonMark with YAML front matter. Positions count from the text's start, in UTF-16 units.
 *
 * Why it may be split: a heading line that begins in column 1 closes every open container and paragraph, and after it
 * the parser remembers nothing but the names of link definitions, which all parts share. What can swallow such a line is
 * an open code fence or HTML block: so each part is parsed together with the marks of a heading, and where these do not
 * come out as a heading the part is taken further.
 */
export function parseMarkdown(raw: string, partSize = PART_SIZE): Parsed {
  // The parser drops a byte-order mark and then counts one short; the text's own was taken off before.
  const text = raw.startsWith('\uFEFF') ? `\u200B${raw.slice(1)}` : raw;
  const front = frontMatterIn(text);
  const start = {line: 1, column: 1, offset: 0};
  const children = front.node ? [front.node] : [];
  const root: Root = {type: 'root', children, position: {start, end: front.end}};
  const reading = {text, tokenizers: parse(), work: 0, largest: 0};
  const builder = new TreeBuilder(text, root, reading.tokenizers);
  // Only where a label has a colon after it anything is defined, and has to be known before the links are.
  const waiting: Part[] = [];
  for (const part of partsOf(reading, front.end, partSize)) {
    if (part.end && root.position) root.position.end = part.end;
    if (text.includes(']:')) waiting.push(part);
    else builder.add(part.blocks);
  }
  for (const {blocks} of waiting) builder.add(blocks);
  const {work, largest} = reading;
  return {root, work, largest};
}

/** The smaller the quicker: what the tokenizer makes of a small part is gone before memory has to be tidied up. */
const PART_SIZE = 1024;

interface Reading {
  readonly text: string;
  readonly tokenizers: Tokenizers;
  work: number;
  largest: number;
}

interface Part {
  readonly blocks: readonly Event[];
  /** Where the text ends, of the last part. */
  readonly end?: Point;
}

function* partsOf(reading: Reading, begin: Point, partSize: number): Generator<Part> {
  const {text} = reading;
  const headings = headingLines(text);
  let start = begin;
  let from = start.offset + partSize;
  let stride = 1;
  while (start.offset < text.length) {
    const heading = headings.next(from);
    const defined = reading.tokenizers.defined.length;
    const blocks = blocksOf(reading, start, heading);
    const next = heading === undefined ? undefined : takenHeading(blocks, heading);
    if (heading === undefined) {
      const last = blocks.at(-2)?.[1];
      yield {blocks, ...(last && {end: pointOf(last.end)})};
      return;
    }
    if (next === undefined) {
      // The next line like a heading may well be one; after that, doubling keeps what is parsed again within bounds.
      from = heading + stride;
      stride = stride === 1 ? partSize : stride * 2;
      reading.tokenizers.defined.length = defined;
      continue;
    }
    yield {blocks};
    start = next;
    from = start.offset + partSize;
    stride = 1;
  }
}

/** The blocks from `start` to the heading, and the marks of a heading in its place; to the end where there is none. */
function blocksOf(reading: Reading, start: Point, heading: number | undefined): Event[] {
  const {text, tokenizers} = reading;
  const piece = heading === undefined ? text.slice(start.offset) : `${text.slice(start.offset, heading)}#`;
  reading.work += piece.length;
  reading.largest = Math.max(reading.largest, piece.length);
  const chunks = preprocess();
  // Only the first piece that it is given could begin with a byte-order mark.
  chunks('');
  // What was said of these lines may have been of another try.
  tokenizers.lazy = {};
  return blockEvents(tokenizers.document(start).write(chunks(piece, undefined, true)));
}

/** Takes the marks of a heading off the end, and gives their place; undefined where they came out as something else. */
function takenHeading(blocks: Event[], at: number): Point | undefined {
  const token = blocks.at(-1)?.[1];
  if (token?.type !== 'atxHeading' || token.start.offset !== at) return undefined;
  blocks.length = blocks.findLastIndex(([side, one]) => side === 'enter' && one === token);
  return pointOf(token.start);
}

/** Offsets of lines that may be headings. `next` gives the first at or after an offset. */
function headingLines(text: string): {next(from: number): number | undefined} {
  const line = /(?<=[\n\r])#{1,6}(?![^ \t\r\n])/g;
  return {
    next(from) {
      line.lastIndex = from;
      return line.exec(text)?.index;
    },
  };
}
