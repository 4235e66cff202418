/** What the YAML library found wrong with a text, in words that say what to do about it. */
import type {ErrorCode, YAMLError} from 'yaml';
import {clipped} from '../text/clipped.js';
import type {Problem} from '../text/problem.js';
import type {Source, Span} from '../text/source.js';
import type {LeftOpen} from './yaml-open.js';

/**
 * What is wrong, in the order of the library. Of a quote or a bracket that was never closed the library speaks where the
 * text stops making sense; here it is told where it was opened, once, and without what follows from it.
 */
export function faultsOf(from: Source, errors: readonly YAMLError[], open: LeftOpen): Problem[] {
  const first = errors.slice(0, LOOKED_AT);
  const quote = open.quotes.find(({start, end}) =>
    first.some(({pos: [at]}) => start <= at && isBeside(from.text, end, at)),
  );
  const before = errors.filter(({pos: [at]}) => quote === undefined || at < quote.start);
  const met = before.filter(isOpenBracket).map(({pos: [at]}) => at);
  const brackets = open.brackets
    .filter(({start}) => quote === undefined || start < quote.start)
    .slice(0, LOOKED_AT)
    .flatMap(({start, end}) => {
      const until = met.find((at) => at >= start);
      return until === undefined ? [] : [{start, end, until}];
    });
  const isEcho = (error: YAMLError) =>
    isOpenBracket(error) || brackets.some(({start, until}) => start <= error.pos[0] && error.pos[0] <= until);
  const others = brackets.length === 0 ? before : before.filter((error) => !isEcho(error));
  return [
    ...brackets.map((span) => told(from, span, OPEN_BRACKET)),
    ...others.map((error) => faultOf(from, error)),
    ...(quote === undefined ? [] : [told(from, {start: quote.start, end: quote.start + 1}, OPEN_QUOTE)]),
  ];
}

/** What comes later is an echo. */
const LOOKED_AT = 20;

/** Within it, on its last line or where the next begins: there goes on what the next quote was meant to hold. */
function isBeside(text: string, end: number, at: number): boolean {
  if (at <= end) return true;
  const next = text.indexOf('\n', end);
  return next < 0 || at <= next + 1;
}

function told(from: Source, {start, end}: Span, {says, hint}: Advice): Problem {
  return {name: 'spec-form', where: {file: from.file, span: {start, end}}, says, hint};
}

/** At the library's own place, cut to the text. What has no advice here is told in the library's words. */
function faultOf(from: Source, error: YAMLError): Problem {
  const [start, end] = spanOf(error, from.text.length);
  const forgotten = colonAdvice(from.text, start, error);
  if (forgotten !== undefined) {
    const line = lineFrom(from.text, start).trimEnd().length;
    return told(from, {start, end: Math.min(end, start + line)}, forgotten);
  }
  const advice = isOpenBracket(error) ? OPEN_BRACKET : ADVICE[error.code];
  return {
    name: 'spec-form',
    where: {file: from.file, span: {start, end}},
    says: advice?.says ?? `not YAML: ${lowered(error.message)}`,
    hint: advice?.hint ?? 'check indentation, colons, brackets and quotes from the line above on',
  };
}

/** Some faults lie at the very end of a text, or span half of it: one character is enough to point at. */
function spanOf(error: YAMLError, length: number): [number, number] {
  const start = Math.max(0, Math.min(error.pos[0], length));
  const end = Math.max(start, Math.min(error.pos[1], length));
  return [start, end];
}

/** The library's messages go on with an explanation after a colon or a line; the first clause says it. */
function lowered(message: string): string {
  const [line = ''] = message.split('\n');
  return line.charAt(0).toLowerCase() + line.slice(1);
}

const QUOTES = 'put the value in quotes';

/** Whether a key lacks its colon, or the colon its space: the line then shows what to write. */
function colonAdvice(text: string, start: number, {code, message}: YAMLError): Advice | undefined {
  if (code !== 'MULTILINE_IMPLICIT_KEY' && !/^Implicit map keys/.test(message)) return undefined;
  return colonMissing(lineFrom(text, start));
}

/** What stands from there to the end of the line. */
export function lineFrom(text: string, start: number): string {
  const next = text.indexOf('\n', start);
  return text.slice(start, next < 0 ? text.length : next);
}

/** Of a line, from where its key begins; nothing where it does not begin with a word such as a key may be. */
export function colonMissing(line: string): Advice | undefined {
  const [key] = /^[A-Za-z][\w-]{0,60}/.exec(line) ?? [];
  const after = line.slice(key?.length).trimEnd();
  if (key === undefined || !/^(?:[ :]|$)/.test(after)) return undefined;
  const says = after.startsWith(':') ? `there is no space behind ${key}:` : `there is no colon behind ${key}`;
  // A comment is no part of the value.
  const [written = ''] = ` ${after.slice(1)}`.split(' #');
  const value = clipped(written.trim(), 40);
  return {says, hint: `write ${value === '' ? `${key}:` : `${key}: ${value}`}`};
}

interface Advice {
  readonly says: string;
  readonly hint: string;
}

const OPEN_BRACKET: Advice = {
  says: 'the bracket that opens here is never closed',
  hint: 'close it with ] or }, as it was opened',
};

const OPEN_QUOTE: Advice = {
  says: 'the quote that opens here is not closed on its line',
  hint: 'close it behind the text',
};

/** The library calls it a fault of the indentation: the line that it meets is not indented as what is in brackets. */
function isOpenBracket({code, message}: YAMLError): boolean {
  return code === 'BAD_INDENT' && /^Flow (?:map|sequence)/.test(message);
}

const ADVICE: Partial<Record<ErrorCode, Advice>> = {
  TAB_AS_INDENT: {says: 'a tab stands where the indentation is', hint: 'indent with spaces'},
  BAD_INDENT: {says: 'the indentation fits no line above', hint: 'line it up with its neighbours'},
  BAD_ALIAS: {says: 'this is an alias or an anchor, and not a good one', hint: QUOTES},
  BAD_DIRECTIVE: {says: 'a line that begins with % is a directive', hint: 'take the line out'},
  BAD_DQ_ESCAPE: {says: 'a backslash in double quotes escapes nothing here', hint: 'use single quotes'},
  BAD_SCALAR_START: {says: 'a value may not begin with this character', hint: QUOTES},
  BLOCK_AS_IMPLICIT_KEY: {says: 'a second colon or dash on one line', hint: QUOTES},
  BLOCK_IN_FLOW: {
    says: 'an indented list or map stands inside brackets',
    hint: 'use brackets all the way in',
  },
  MULTILINE_IMPLICIT_KEY: {
    says: 'this line has no key with a colon and a space',
    hint: 'put a space after the colon, or see that the line above is complete',
  },
  TAG_RESOLVE_FAILED: {says: 'a word that begins with ! is a tag of YAML', hint: QUOTES},
};
