/** Lines and columns for people, for every place that a finding of a book can point at. */
import type {Book} from '../build/book.js';
import type {Job} from '../spec/job.js';
import {positionAt, type Source, type Where} from '../text/source.js';

/** A stretch of a file; lines and columns count from 1, columns in UTF-16 units, and the end is exclusive. */
export interface Place {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly endLine: number;
  readonly endColumn: number;
}

/** The texts of a book, and of jobs beside it, by the names of their files. */
export function textsOf(book: Book, jobs: readonly Job[] = []): ReadonlyMap<string, Source> {
  const others = [...book.procedures, ...(book.job ? [book.job] : []), ...jobs];
  return new Map([...book.spec.files, ...others.map(({source}) => [source.file, source] as const)]);
}

/** Where something stands in one of the texts; a file that has none is pointed at as a whole. */
export function placeOf({file, span}: Where, texts: ReadonlyMap<string, Source>): Place {
  const text = texts.get(file);
  if (text === undefined) return {file, line: 1, column: 1, endLine: 1, endColumn: 1};
  const start = positionAt(text, span.start);
  const end = positionAt(text, span.end);
  return {file, ...start, endLine: end.line, endColumn: end.column};
}
