/** What the YAML library found wrong with a text, in words that say what to do about it. */
import type {ErrorCode, YAMLError} from 'yaml';
import type {Problem} from '../text/problem.js';
import type {Source} from '../text/source.js';

/** At the library's own place, cut to the text. What has no advice here is told in the library's words. */
export function faultOf(from: Source, error: YAMLError): Problem {
  const [start, end] = spanOf(error, from.text.length);
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

const OPEN_BRACKET = {
  says: 'a bracket is open here that was never closed',
  hint: 'close it with ] or } above',
};

/** The library calls it a fault of the indentation: the line that it meets is not indented as what is in brackets. */
function isOpenBracket({code, message}: YAMLError): boolean {
  return code === 'BAD_INDENT' && /^Flow (?:map|sequence)/.test(message);
}

const ADVICE: Partial<Record<ErrorCode, {says: string; hint: string}>> = {
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
