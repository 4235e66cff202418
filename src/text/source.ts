/**
 * One text as a person wrote it, and where things stand in it. Everything else in the project points into a
 * text by a `Span`; lines and columns are worked out here, for people only.
 */

/** Half-open range of UTF-16 offsets into the text of a source, its byte-order mark not counted. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

/** A file's name, as the host knows it, and a span in it. */
export interface Where {
  readonly file: string;
  readonly span: Span;
}

/** A text with its name. `text` is without a byte-order mark; `mark` says that the file had one. */
export interface Source {
  readonly file: string;
  readonly text: string;
  readonly mark: boolean;
  /** Offset of the first character of every line. */
  readonly lines: readonly number[];
}

/** A place for people: both count from 1, columns in UTF-16 units. */
export interface Position {
  readonly line: number;
  readonly column: number;
}

const BYTE_ORDER_MARK = '\uFEFF';

/** Wraps a text under the name that findings call its file by. LF, CR LF and a lone CR all end a line, as in CommonMark. */
export function source(file: string, raw: string): Source {
  const mark = raw.startsWith(BYTE_ORDER_MARK);
  const text = mark ? raw.slice(1) : raw;
  return {file, text, mark, lines: lineStarts(text)};
}

function lineStarts(text: string): number[] {
  const starts = [0];
  for (let index = 0; index < text.length; index++) {
    const code = text.charCodeAt(index);
    const ends = code === 10 || (code === 13 && text.charCodeAt(index + 1) !== 10);
    if (ends) starts.push(index + 1);
  }
  return starts;
}

/** The line and column of an offset; an offset outside the text is taken to its nearer end. */
export function positionAt(from: Source, offset: number): Position {
  const within = Math.max(0, Math.min(offset, from.text.length));
  let low = 0;
  let high = from.lines.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((from.lines[middle] ?? 0) <= within) low = middle;
    else high = middle - 1;
  }
  return {line: low + 1, column: within - (from.lines[low] ?? 0) + 1};
}

/** The offset of a line and column (both from 1), taken to the nearer end of the line or text. */
export function offsetAt(from: Source, at: Position): number {
  const line = Math.max(1, Math.min(at.line, from.lines.length));
  const start = from.lines[line - 1] ?? 0;
  const next = from.lines[line] ?? from.text.length;
  return Math.max(start, Math.min(start + at.column - 1, next));
}

/** The text of a span. */
export function slice(from: Source, span: Span): string {
  return from.text.slice(span.start, span.end);
}
