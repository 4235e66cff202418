/** Splits what follows the targets of a tag into its clauses, whatever the verb. */
import type {Span} from '../text/source.js';
import {formFault, type Read, type TagFault} from './tag-fault.js';
import {type TagText, type Token, trimmed} from './tag-tokens.js';
import {type ClauseWord, isClauseWord} from './verbs.js';

/** A clause as written, its value not yet read. */
export interface Written {
  readonly word: ClauseWord;
  readonly wordSpan: Span;
  readonly span: Span;
  /** Without quotes around the whole of it. */
  readonly valueSpan: Span;
  readonly quoted: boolean;
  readonly tokens: readonly Token[];
}

export interface Parts {
  /** The tokens before the first clause. */
  readonly targets: readonly Token[];
  readonly clauses: readonly Written[];
}

/**
 * Finds the clause words outside brackets and quotes. `in` after a number and not before one is the inch; `to` between
 * the two numbers of a `within` is a range; the word after `is` is its value, whatever it is; `because` takes the rest.
 */
export function splitClauses(tag: TagText, tokens: readonly Token[]): Read<Parts> {
  const starts = clauseStarts(tokens);
  const clauses: Written[] = [];
  const faults: TagFault[] = [];
  starts.forEach((start, index) => {
    const written = clauseAt(tag, tokens.slice(start, starts[index + 1]));
    if (written !== undefined) clauses.push(written);
  });
  const broken = tokens.find(({unclosed}) => unclosed);
  if (broken) {
    faults.push(formFault(broken.span, 'this quote is never closed', {hint: 'close the text with a quote'}));
  }
  return {value: {targets: tokens.slice(0, starts[0] ?? tokens.length), clauses}, faults};
}

function clauseStarts(tokens: readonly Token[]): number[] {
  const starts: number[] = [];
  let lastOpen = -1;
  let skipTo = -1;
  const closes = tokens.some(({type}) => type === 'open') ? closing(tokens) : [];
  tokens.forEach((token, index) => {
    if (index < skipTo) return;
    if (token.type === 'open') skipTo = closes[index] ?? -1;
    if (token.type !== 'word' || !isClauseWord(token.text) || isInch(tokens, index)) return;
    const open = tokens[lastOpen]?.text;
    if (lastOpen === index - 1 && open === 'is') return;
    if (open === 'within' && isRange(tokens, index)) return;
    starts.push(index);
    lastOpen = index;
    if (token.text === 'because') skipTo = tokens.length;
  });
  return starts;
}

/** For the index of every token, the index of the next closing bracket; one that never closes hides nothing. */
function closing(tokens: readonly Token[]): readonly (number | undefined)[] {
  const result: (number | undefined)[] = [];
  let next: number | undefined;
  for (let index = tokens.length - 1; index >= 0; index--) {
    if (tokens[index]?.type === 'close') next = index;
    result[index] = next;
  }
  return result;
}

function isInch(tokens: readonly Token[], index: number): boolean {
  if (tokens[index]?.text !== 'in') return false;
  return isNumber(tokens[index - 1]) && !isNumber(tokens[index + 1]);
}

function isRange(tokens: readonly Token[], index: number): boolean {
  return tokens[index]?.text === 'to' && isNumber(tokens[index - 1]) && isNumber(tokens[index + 1]);
}

/** `85`, `.041`, `±0.0005`, `0.0015–0.0025`, `1-1/2`, `1½`; an id such as `bolts-2` is none. */
function isNumber(token: Token | undefined): boolean {
  return (
    token?.type === 'word' &&
    /^[±+\-−–—≤≥<>=]*\.?(?:\d|[½⅓⅔¼¾⅛⅜⅝⅞])[\d.,/…±+\-−–—‐‑‒½⅓⅔¼¾⅛⅜⅝⅞]*$/.test(token.text)
  );
}

function clauseAt(tag: TagText, tokens: readonly Token[]): Written | undefined {
  const [opening, ...value] = tokens;
  const last = tokens.at(-1);
  if (opening === undefined || last === undefined || !isClauseWord(opening.text)) return undefined;
  const span = {start: opening.span.start, end: last.span.end};
  const [only, second] = value;
  const quoted = only?.type === 'quoted' && second === undefined;
  const inner = quoted ? insideQuotes(only) : {start: opening.span.end, end: last.span.end};
  return {
    word: opening.text,
    wordSpan: opening.span,
    span,
    valueSpan: trimmed(tag, inner),
    quoted,
    tokens: value,
  };
}

function insideQuotes({span, unclosed}: Token): Span {
  return {start: span.start + 1, end: unclosed ? span.end : span.end - 1};
}
