/**
 * Markdown text to its tree, part by part, because the parser's cost grows faster than the text. The result equals that
 * of parsing the text as a whole.
 */
import type {Root} from 'mdast';
import {PartParser} from './part-parser.js';
import {shiftPositions} from './shift.js';

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
 * the parser remembers nothing but the names of link definitions, which are handed round. What can swallow such a line is
 * front matter, which is recognised here, and an open code fence or HTML block: so each part is parsed together with
 * the heading line that follows it, and where that line does not come out as a heading the part is taken further.
 */
export function parseMarkdown(raw: string, partSize = PART_SIZE): Parsed {
  // The parser drops a byte-order mark and then counts one short; the text's own was taken off before.
  const text = raw.startsWith('\uFEFF') ? `\u200B${raw.slice(1)}` : raw;
  const parser = new PartParser(frontMatterEnd(text) > 0);
  const parts = readParts(text, parser, partSize);
  shareDefinitions(text, parts, parser);
  return {root: joined(text, parts), work: parser.work, largest: parser.largest};
}

/** Small parts cost the heading that is parsed twice; large ones what this file is here to save. */
const PART_SIZE = 4096;

interface Part {
  readonly start: number;
  /** End of the part, and of the heading line after it with which it was parsed. */
  readonly end: number;
  readonly through: number;
  readonly defines: readonly string[];
  root: Root;
}

function readParts(text: string, parser: PartParser, partSize: number): Part[] {
  const headings = headingLines(text);
  const parts: Part[] = [];
  let start = 0;
  let from = partSize;
  let stride = 1;
  while (start < text.length || parts.length === 0) {
    const end = headings.next(from) ?? text.length;
    const through = end < text.length ? lineEnd(text, end) : end;
    const {root, defines} = parser.parse(text.slice(start, through));
    if (end < text.length && !endsInHeading(root, end - start)) {
      // The next line like a heading may well be one; after that, doubling keeps what is parsed again within bounds.
      from = end + stride;
      stride = stride === 1 ? partSize : stride * 2;
      continue;
    }
    parts.push({start, end, through, root, defines});
    start = end;
    from = start + partSize;
    stride = 1;
  }
  return parts;
}

/** Offsets of lines that may be headings, never one inside front matter. `next` gives the first at or after an offset. */
function headingLines(text: string): {next(from: number): number | undefined} {
  const first = frontMatterEnd(text);
  const line = /(?<=[\n\r])#{1,6}(?![^ \t\r\n])/g;
  return {
    next(from) {
      line.lastIndex = Math.max(from, first);
      return line.exec(text)?.index;
    },
  };
}

/** 0 where there is none, or none that ends. */
function frontMatterEnd(text: string): number {
  if (!/^---[ \t]*[\r\n]/.test(text)) return 0;
  const closing = /[\r\n]---[ \t]*(?![^\r\n])/g;
  closing.lastIndex = 3;
  const match = closing.exec(text);
  return match === null ? 0 : match.index + match[0].length;
}

function lineEnd(text: string, from: number): number {
  const ending = /[\r\n]/g;
  ending.lastIndex = from;
  return ending.exec(text)?.index ?? text.length;
}

function endsInHeading(root: Root, at: number): boolean {
  const last = root.children.at(-1);
  return last?.type === 'heading' && last.position?.start.offset === at;
}

/** A reference is one only where its label is defined, in whichever part: such parts are parsed again. */
function shareDefinitions(text: string, parts: readonly Part[], parser: PartParser): void {
  const names = [...new Set(parts.flatMap(({defines}) => defines))];
  for (const part of parts) {
    const known = new Set(part.defines);
    if (names.every((name) => known.has(name))) continue;
    const slice = text.slice(part.start, part.through);
    if (slice.includes('[')) part.root = parser.parse(slice, names).root;
  }
}

function joined(text: string, parts: readonly Part[]): Root {
  const [first] = parts;
  if (first === undefined) return {type: 'root', children: []};
  const root = first.root;
  let line = 0;
  parts.forEach((part, index) => {
    const last = index === parts.length - 1;
    if (!last) part.root.children.pop();
    if (index > 0) {
      shiftPositions(part.root, {line, offset: part.start});
      for (const child of part.root.children) root.children.push(child);
    }
    if (last && root.position && part.root.position) root.position.end = part.root.position.end;
    line += lineBreaks(text, part.start, part.end);
  });
  return root;
}

function lineBreaks(text: string, start: number, end: number): number {
  let count = 0;
  for (let index = start; index < end; index++) {
    const code = text.charCodeAt(index);
    if (code === 10 || (code === 13 && text.charCodeAt(index + 1) !== 10)) count++;
  }
  return count;
}
