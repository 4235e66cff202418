/**
 * What is being typed in a tag at an offset of a text: read from the text alone, for a tag that is half there is often
 * no tag to the reader of Markdown.
 */
import {splitClauses} from '../procedure/tag-clauses.js';
import {onOneLine, type Token, tokenize} from '../procedure/tag-tokens.js';
import {type ClauseWord, isClauseWord, isVerb, tagSpec, type Verb} from '../procedure/verbs.js';
import {runBefore} from '../text/runs.js';
import type {Span} from '../text/source.js';

/** The span is that of the word (of the whole value, for a clause of amounts) that a choice takes the place of. */
export type Typed =
  | {readonly slot: 'verb'; readonly span: Span}
  | {readonly slot: 'target'; readonly verb: Verb; readonly span: Span; readonly taken: readonly string[]}
  | {
      readonly slot: 'place';
      readonly verb: Verb;
      readonly span: Span;
      readonly id: string;
      readonly taken: readonly string[];
    }
  | {
      readonly slot: 'clause';
      readonly verb: Verb;
      readonly span: Span;
      readonly taken: readonly ClauseWord[];
      readonly targets: readonly string[];
    }
  | {
      readonly slot: 'value';
      readonly verb: Verb;
      readonly span: Span;
      readonly word: ClauseWord;
      readonly targets: readonly string[];
    };

/** Nothing where the offset stands in no code span, or in one that is no tag. */
export function typedAt(text: string, offset: number): Typed | undefined {
  const start = openingBefore(text, offset);
  if (start === undefined) return undefined;
  const before = onOneLine(text.slice(start, offset), start);
  const word = before.text.slice(runBefore(before.text, before.text.length, /[^\s,[\]`]/));
  const span = {start: offset - word.length, end: offset + restOfWord(text, offset)};
  const opening = /^\s*([A-Za-z-]*)(\s*:)?/.exec(before.text);
  const verb = opening?.[1]?.toLowerCase() ?? '';
  if (opening?.[2] === undefined)
    return opening?.[0].length === before.text.length ? {slot: 'verb', span} : undefined;
  if (!isVerb(verb)) return undefined;
  const line = {text: before.text.slice(0, before.text.length - word.length), offset: start};
  return slotOf(verb, line, start + opening[0].length, span);
}

function slotOf(verb: Verb, line: {text: string; offset: number}, from: number, span: Span): Typed {
  const {targets, clauses} = splitClauses(line, tokenize(line, from)).value;
  const ids = idsAmong(targets);
  const clause = clauses.at(-1);
  if (clause === undefined) {
    const inside = openBracket(targets);
    if (inside !== undefined) return {slot: 'place', verb, span, id: ids.at(-1) ?? '', taken: inside};
    const last = targets.at(-1);
    if (last === undefined || last.type === 'comma') return {slot: 'target', verb, span, taken: ids};
    return {slot: 'clause', verb, span, taken: [], targets: ids};
  }
  const {word, tokens, valueSpan} = clause;
  const spec = tagSpec(verb).clauses[word];
  const last = tokens.at(-1);
  const open = last === undefined || last.type === 'comma';
  if (open || word === 'because') return {slot: 'value', verb, span, word, targets: ids};
  // An amount goes on after a space: `85 lbf`. What closes it is the word of another clause.
  const typing = line.text.slice(-1).trim() !== '' || spec?.type === 'amount';
  if (typing && spec?.type === 'amount' && isAmount(tokens)) {
    return {slot: 'value', verb, span: {start: valueSpan.start, end: span.end}, word, targets: ids};
  }
  return {slot: 'clause', verb, span, taken: clauses.map((one) => one.word), targets: ids};
}

/** A number whose unit is still to come, or being typed. */
function isAmount(tokens: readonly Token[]): boolean {
  return tokens.length === 1 && /^[\d.,±≥≤/–-]+$/.test(tokens[0]?.text ?? '');
}

function idsAmong(tokens: readonly Token[]): string[] {
  let depth = 0;
  return tokens.flatMap(({type, text}) => {
    if (type === 'open') depth++;
    if (type === 'close') depth--;
    return type === 'word' && depth === 0 && !isClauseWord(text) ? [text] : [];
  });
}

/** The places named so far in a bracket that is still open. */
function openBracket(tokens: readonly Token[]): readonly string[] | undefined {
  const open = tokens.findLastIndex(({type}) => type === 'open');
  const close = tokens.findLastIndex(({type}) => type === 'close');
  if (open <= close) return undefined;
  return tokens.slice(open + 1).flatMap(({type, text}) => (type === 'word' ? [text] : []));
}

/** How far back a code span is looked for: a tag is a line or two. */
const REACH = 1000;

/** A new block: blank line, item, quote or heading. A code span never goes over one. */
const BLOCK = /\n(?:[ \t]*(?:\r?\n|\d+[.)][ \t]|[-*+][ \t]|#{1,6}[ \t]))/g;

/** Where the code span that is open at the offset begins, behind its backticks. */
function openingBefore(text: string, offset: number): number | undefined {
  const reach = Math.max(0, offset - REACH);
  const near = text.slice(reach, offset);
  const block = [...near.matchAll(BLOCK)].at(-1);
  const from = reach + (block === undefined ? 0 : block.index + 1);
  let open: {readonly length: number; readonly end: number} | undefined;
  for (const run of text.slice(from, offset).matchAll(/`+/g)) {
    const [{length}] = run;
    if (open === undefined) open = {length, end: from + run.index + length};
    else if (open.length === length) open = undefined;
  }
  return open?.end;
}

function restOfWord(text: string, offset: number): number {
  return /^[A-Za-z0-9-]*/.exec(text.slice(offset, offset + 80))?.[0].length ?? 0;
}
