/** What is wrong with a part of a tag, before anybody says in which file it stands. */
import type {Edit} from '../text/edit.js';
import type {Problem, ProblemName} from '../text/problem.js';
import type {Span} from '../text/source.js';

export interface TagFault {
  readonly name: ProblemName;
  readonly span: Span;
  /** As in Problem. */
  readonly says: string;
  readonly hint?: string;
  readonly fix?: {readonly title: string; readonly edits: readonly Edit[]};
}

/** A part that was read, as far as it could be, and what was wrong with it. */
export interface Read<T> {
  readonly value: T;
  readonly faults: readonly TagFault[];
}

/** The fault of a tag that does not have the form of one. */
export function formFault(span: Span, says: string, more: Pick<TagFault, 'hint' | 'fix'> = {}): TagFault {
  return {name: 'tag-form', span, says, ...more};
}

/** A piece of the author's text as a message quotes it: on one line, and not for ever. */
export function shown(text: string): string {
  const line = text.replace(/\s+/g, ' ');
  return `"${line.length > 40 ? `${line.slice(0, 39)}…` : line}"`;
}

/** One edit as a fix. */
export function replacing(span: Span, text: string, title: string): NonNullable<TagFault['fix']> {
  return {title, edits: [{span, text}]};
}

export function problemOf(fault: TagFault, file: string): Problem {
  const {name, span, says, hint, fix} = fault;
  return {
    name,
    where: {file, span},
    says,
    ...(hint !== undefined && {hint}),
    ...(fix !== undefined && {fix: {...fix, file}}),
  };
}
