/** What the tokenizer of Markdown says of a text: events, and the tokens that they open and close. */
import type {Root} from 'mdast';
import type {parse, postprocess} from 'micromark';

/** The tokenizers of one text, with what it has defined so far. */
export type Tokenizers = ReturnType<typeof parse>;

/** The start or the end of a token, and the tokenizer that knows its text. */
export type Event = ReturnType<typeof postprocess>[number];

export type Token = Event[1];

export type Context = Event[2];

type Position = NonNullable<Root['position']>;

export interface Point {
  readonly line: number;
  readonly column: number;
  readonly offset: number;
}

/** Whether the token ends a line. */
export function endsLine({type}: Token): boolean {
  return type === 'lineEnding' || type === 'lineEndingBlank';
}

/** Where the token stands, as trees say it. */
export function positionOf({start, end}: Token): Position {
  return {start: pointOf(start), end: pointOf(end)};
}

/** A point as trees say it; the tokenizer's own say more. */
export function pointOf({line, column, offset}: Token['start']): Point {
  return {line, column, offset};
}
