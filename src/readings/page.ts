/** A build report as headed parts of tables, lists and drawings: what HTML and PDF both lay out, and decide nothing. */
import type {Chart} from './chart.js';

export interface Part {
  readonly level: 2 | 3 | 4;
  readonly title: string;
  /** Where a link of the overview leads. */
  readonly id?: string;
  readonly content: readonly Block[];
}

export type Block =
  | {readonly type: 'paragraph'; readonly text: string; readonly small?: boolean}
  | {readonly type: 'remarks'; readonly lines: readonly RemarkText[]}
  | {readonly type: 'chart'; readonly chart: Chart}
  | Table
  | {readonly type: 'part'; readonly part: Part};

/** One line of a list of remarks. */
export interface RemarkText {
  /** What it weighs, before the text. */
  readonly word: string;
  /** Must not be missed. */
  readonly bad: boolean;
  readonly text: string;
}

export interface Table {
  readonly type: 'table';
  readonly heads: readonly string[];
  /** The first cell of each row names it. */
  readonly rows: readonly (readonly Cell[])[];
}

export type Cell = string | LookedCell;

/** A cell that is not plain text. */
export interface LookedCell {
  readonly text: string;
  /** `bad` must not be missed; `figure` stays on one line; `code` is a fingerprint. */
  readonly look: 'bad' | 'figure' | 'code' | 'link';
  /** The part that a link leads to. */
  readonly to?: string;
}

/** Nothing where there is nothing below the heading. */
export function part(level: Part['level'], title: string, content: readonly Block[], id?: string): Block[] {
  if (content.length === 0) return [];
  return [{type: 'part', part: {level, title, content, ...(id !== undefined && {id})}}];
}

/** Nothing for no rows. */
export function table(heads: readonly string[], rows: readonly (readonly Cell[])[]): Block[] {
  return rows.length === 0 ? [] : [{type: 'table', heads, rows}];
}

export function paragraph(text: string): Block {
  return {type: 'paragraph', text};
}

export function bad(text: string): LookedCell {
  return {text, look: 'bad'};
}

export function figure(text: string): LookedCell {
  return {text, look: 'figure'};
}
