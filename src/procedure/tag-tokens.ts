/** The words, commas, brackets and quoted texts of a tag, each with its span in the text that the tag stands in. */
import type {Span} from '../text/source.js';

/** A tag's text on one line, and the offset at which it stands. All spans are offsets, not indices into `text`. */
export interface TagText {
  readonly text: string;
  readonly offset: number;
}

export interface Token {
  readonly type: 'word' | 'comma' | 'open' | 'close' | 'quoted';
  /** As it stands; of a quoted text, what is between the quotes. */
  readonly text: string;
  readonly span: Span;
  /** A quoted text whose closing quote is missing. */
  readonly unclosed?: true;
}

/**
 * Takes the line breaks out of a code span's raw text without moving anything: a break, and the indentation and
 * `>` marks of the containers around it, become as many spaces.
 */
export function onOneLine(raw: string, offset: number): TagText {
  if (!/[\r\n]/.test(raw)) return {text: raw, offset};
  const text = raw.replace(/(?:\r\n|\r|\n)[ \t>]*/g, (broken) => ' '.repeat(broken.length));
  return {text, offset};
}

/** The text of a span. */
export function cut(tag: TagText, span: Span): string {
  return tag.text.slice(span.start - tag.offset, span.end - tag.offset);
}

/** The text of a span with its white space folded. */
export function folded(tag: TagText, span: Span): string {
  const text = cut(tag, span).trim();
  return /[^\S ]|\s{2}/.test(text) ? text.replace(/\s+/g, ' ') : text;
}

/** The span without the white space at its ends; empty at its end where there is nothing else. */
export function trimmed(tag: TagText, span: Span): Span {
  const text = cut(tag, span);
  const start = span.start + text.length - text.trimStart().length;
  return {start, end: Math.max(start, span.start + text.trimEnd().length)};
}

/** From the first token's start to the last one's end. */
export function spanOver(tokens: readonly Token[]): Span | undefined {
  const [first] = tokens;
  const last = tokens.at(-1);
  return first && last && {start: first.span.start, end: last.span.end};
}

/** All tokens from the offset `from` on. Never fails: any character that means nothing else is part of a word. */
export function tokenize(tag: TagText, from: number): Token[] {
  const tokens: Token[] = [];
  let index = from - tag.offset;
  while (index < tag.text.length) {
    const token = tokenAt(tag, index);
    if (token === undefined) {
      index++;
      continue;
    }
    tokens.push(token);
    index = token.span.end - tag.offset;
  }
  return tokens;
}

const MARKS: ReadonlyMap<string, Token['type']> = new Map([
  [',', 'comma'],
  ['[', 'open'],
  [']', 'close'],
]);
/** A quote and what closes it; some keyboards turn straight quotes into curly ones. */
const QUOTES: ReadonlyMap<string, string> = new Map([
  ['"', '"'],
  ['“', '”'],
]);

function tokenAt(tag: TagText, index: number): Token | undefined {
  const {text, offset} = tag;
  const first = text[index] ?? '';
  if (first === ' ' || /\s/.test(first)) return undefined;
  const mark = MARKS.get(first);
  if (mark !== undefined) return token(tag, mark, index, index + 1);
  // An inch mark follows its number directly, so a quote opens a text only at the start of a word.
  const closing = QUOTES.get(first);
  if (closing === undefined) return token(tag, 'word', index, wordEnd(text, index));
  const close = text.indexOf(closing, index + 1);
  const end = close < 0 ? text.length : close;
  return {
    type: 'quoted',
    text: text.slice(index + 1, end).trim(),
    span: {start: offset + index, end: offset + (close < 0 ? text.trimEnd().length : close + 1)},
    ...(close < 0 && {unclosed: true}),
  };
}

function wordEnd(text: string, start: number): number {
  let end = start;
  while (end < text.length && !endsWord(text.charAt(end))) end++;
  return end;
}

/** Letters and figures are told first, for nearly all are. */
function endsWord(character: string): boolean {
  if (character >= '-' && character <= 'Z') return false;
  if (character >= 'a' && character <= 'z') return false;
  return MARKS.has(character) || /\s/.test(character);
}

function token({text, offset}: TagText, type: Token['type'], start: number, end: number): Token {
  return {type, text: text.slice(start, end), span: {start: offset + start, end: offset + end}};
}
