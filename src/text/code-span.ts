/** The code span around a piece of it: a fix writes behind it, or takes it out whole. */
import {runBefore} from './runs.js';
import type {Span} from './source.js';

/** With its backticks. Between them and the piece stand none but white space. */
export function codeSpanAround({start, end}: Span, text: string): Span {
  const [padding = ''] = /^\s*`*/.exec(text.slice(end)) ?? [];
  return {start: runBefore(text, runBefore(text, start, /\s/), /`/), end: end + padding.length};
}
