/** The number before a step, and the columns that what follows must stand at to belong to it (CommonMark 5.2). */
import type {Span} from '../../text/source.js';

export interface Marker {
  readonly numeral: string;
  /** `.` or `)`. */
  readonly mark: string;
  /** Offset of the start of its line. */
  readonly lineStart: number;
  /** Another number stands before it on the line: it opens the content of that step. */
  readonly opens: boolean;
  /** Offset of its content, and columns of the gap before that. */
  readonly contentStart: number;
  readonly gap: number;
  /** Nothing stands behind it on its line. */
  readonly empty: boolean;
  /** Column, counted from 0, from which on a line is content of the step. */
  readonly contentColumn: number;
  readonly tabbed: boolean;
}

/** The marker at the start of a list item; undefined where none stands. */
export function markerOf(text: string, start: number): Marker | undefined {
  const pattern = /(\d{1,9})([.)])([ \t]*)/y;
  pattern.lastIndex = start;
  const [all, numeral, mark, blanks] = pattern.exec(text) ?? [];
  if (all === undefined || numeral === undefined || mark === undefined || blanks === undefined)
    return undefined;
  const lineStart = lineStartAt(text, start);
  const before = text.slice(lineStart, start);
  const end = columnAfter(before + numeral + mark);
  const contentStart = start + all.length;
  const gap = columnAfter(before + all) - end;
  const empty = /^(?:[\r\n]|$)/.test(text.slice(contentStart, contentStart + 1));
  return {
    numeral,
    mark,
    lineStart,
    opens: /\S/.test(before),
    contentStart,
    gap,
    empty,
    // Five blanks or more are one, and the indentation of code.
    contentColumn: end + (empty || gap > 4 ? 1 : gap),
    tabbed: (before + blanks).includes('\t'),
  };
}

export interface Line {
  readonly start: number;
  /** Columns of white space before its text. */
  readonly indent: number;
  /** There is a tab among them. */
  readonly tabbed: boolean;
}

/** The lines of a list item below the one that its marker stands on. */
export function linesBelow(text: string, {end}: Span, {contentStart}: Marker): Line[] {
  const lines: Line[] = [];
  const pattern = /(?:\r\n|\r|\n)([ \t]*)/g;
  pattern.lastIndex = contentStart;
  for (let found = pattern.exec(text); found !== null && found.index < end; found = pattern.exec(text)) {
    const white = found[1] ?? '';
    const start = found.index + found[0].length - white.length;
    lines.push({start, indent: columnAfter(white), tabbed: white.includes('\t')});
  }
  return lines;
}

/** The line above the one that starts at an offset, without its end; empty above the first. */
export function lineAbove(text: string, lineStart: number): Span {
  let end = lineStart;
  if (text[end - 1] === '\n') end--;
  if (text[end - 1] === '\r') end--;
  return {start: lineStartAt(text, end), end};
}

function lineStartAt(text: string, offset: number): number {
  let start = offset;
  while (start > 0 && text[start - 1] !== '\n' && text[start - 1] !== '\r') start--;
  return start;
}

/** The column behind a text that begins a line; a tab goes to the next multiple of four. */
function columnAfter(text: string): number {
  let column = 0;
  for (const character of text) column = character === '\t' ? column + 4 - (column % 4) : column + 1;
  return column;
}
