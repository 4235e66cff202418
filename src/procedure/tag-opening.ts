/** Tells tags from ordinary code spans by the way they open: a word and a colon. */
import {nearest} from '../text/nearest.js';
import type {Span} from '../text/source.js';
import {formFault, replacing, shown, type TagFault} from './tag-fault.js';
import {cut, type TagText} from './tag-tokens.js';
import {CLAUSE_WORDS, isVerb, VERBS, type Verb} from './verbs.js';

export type Opening =
  /** No tag, and not meant as one. */
  | {readonly type: 'code'}
  /** `bodyStart` is the offset after the colon. */
  | {
      readonly type: 'tag';
      readonly verb: Verb;
      readonly verbSpan: Span;
      readonly bodyStart: number;
      readonly fault?: TagFault;
    }
  /** Has the form of a tag, but the word is no verb. With `near` it is surely a slip. */
  | {readonly type: 'unknown'; readonly fault: TagFault; readonly near?: Verb};

/**
 * A code span is a tag when it opens with a verb and a colon: `torque: bolts`. So that a slip does not silently lose
 * a tag, these are read as tags too, with a fault: the verb in capitals, space before the colon, and a verb without a
 * colon before what reads like the rest of a tag. A word near a verb before a colon, or any word of letters and
 * hyphens before a colon, a space and more, is an unknown verb. All else is code: `https://…`, `F:\file`, `10:30`,
 * `x:y`, `M8`.
 */
export function openingOf(tag: TagText): Opening {
  const match = /^(\s*)([A-Za-z][A-Za-z-]*)(\s*)(:?)/.exec(tag.text);
  const [all = '', lead = '', word = '', gap = '', colon = ''] = match ?? [];
  if (word === '') return {type: 'code'};
  const start = tag.offset + lead.length;
  const verbSpan = {start, end: start + word.length};
  const rest = tag.text.slice(all.length);
  if (colon === '') return withoutColon(tag, verbSpan, tag.offset + all.length);
  if (/^(?:\/\/|\\)/.test(rest)) return {type: 'code'};
  const bodyStart = tag.offset + all.length;
  const verb = word.toLowerCase();
  if (!isVerb(verb)) return unknown(word, verbSpan, rest);
  if (word === verb && gap === '') return {type: 'tag', verb, verbSpan, bodyStart};
  return {type: 'tag', verb, verbSpan, bodyStart, fault: misspelt({start, end: bodyStart}, verb)};
}

function misspelt(span: Span, verb: Verb): TagFault {
  return formFault(span, `the verb is written \`${verb}:\`, in small letters and with the colon beside it`, {
    fix: replacing(span, `${verb}:`, `Write \`${verb}:\``),
  });
}

/** A verb, a name with a hyphen or a clause: too much like a tag to be anything else. */
function withoutColon(tag: TagText, verbSpan: Span, from: number): Opening {
  const verb = cut(tag, verbSpan).toLowerCase();
  const rest = tag.text.slice(from - tag.offset);
  const mark = /^[;.=]/.exec(rest)?.[0] ?? '';
  const body = rest.slice(mark.length).trimStart();
  if (!isVerb(verb) || !/^[a-z0-9]/.test(body)) return {type: 'code'};
  const words = body.split(/[\s,[\]]+/);
  const hyphened = /^[a-z0-9]+-/.test(words[0] ?? '');
  if (!hyphened && !words.slice(1).some((word) => CLAUSES.has(word))) return {type: 'code'};
  const opening = {start: verbSpan.start, end: mark === '' ? verbSpan.end : from + mark.length};
  const fault = formFault(verbSpan, `the colon after \`${verb}\` is missing`, {
    fix: replacing(opening, `${verb}:`, `Write \`${verb}:\``),
  });
  return {type: 'tag', verb, verbSpan, bodyStart: opening.end, fault};
}

const CLAUSES: ReadonlySet<string> = new Set(CLAUSE_WORDS);

function unknown(word: string, span: Span, rest: string): Opening {
  const spaced = /^\s+\S/.test(rest);
  const found = spaced || word.length > 2 ? nearest(word.toLowerCase(), VERBS) : undefined;
  const near = found !== undefined && isVerb(found) ? found : undefined;
  if (near === undefined && !spaced) return {type: 'code'};
  const says = `${shown(word)} is no verb`;
  if (near === undefined) {
    return {type: 'unknown', fault: {name: 'unknown-verb', span, says, hint: `the verbs are ${listed()}`}};
  }
  const fix = replacing(span, near, `Write \`${near}\``);
  return {
    type: 'unknown',
    near,
    fault: {name: 'unknown-verb', span, says, hint: `did you mean ${near}?`, fix},
  };
}

function listed(): string {
  return VERBS.join(', ');
}
