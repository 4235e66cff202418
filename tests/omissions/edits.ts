/** Edits that several kinds of fault make. */
import type {Tag} from '../../src/procedure/model.js';
import {clauseOf} from '../../src/procedure/values.js';
import type {ClauseWord} from '../../src/procedure/verbs.js';
import type {Edit} from '../../src/text/edit.js';
import type {Span} from '../../src/text/source.js';
import type {Fault} from './fault.js';

/** Makes a fault in one file. */
export type Make = (kind: string, verb: string, edits: readonly Edit[], names: readonly string[]) => Fault;

export function maker(file: string): Make {
  return (kind, verb, edits, names) => ({kind, verb, file, edits, names});
}

export function cut(span: Span): Edit {
  return {span, text: ''};
}

export function put(span: Span, text: string): Edit {
  return {span, text};
}

/** A tag with its backticks. */
export function codeSpan({start, end}: Span): Span {
  return {start: start - 1, end: end + 1};
}

/** The ids that a clause names, with the span of all of them. */
export function idsIn(
  tag: Tag,
  word: ClauseWord,
): {readonly ids: readonly string[]; readonly span: Span} | undefined {
  const clause = clauseOf(tag, word);
  if (clause?.value.type !== 'ids') return undefined;
  return {ids: clause.value.ids.map(({id}) => id), span: clause.valueSpan};
}

/** What a dropped tag of these verbs leaves undone is nothing of the engine's own. */
export const NOT_OF_THE_ENGINE: ReadonlySet<string> = new Set(['step', 'hazard', 'waive', 'if', 'repeat']);

export function idsOf(tags: readonly Tag[]): string[] {
  return tags
    .filter(({verb}) => !NOT_OF_THE_ENGINE.has(verb) || verb === 'if')
    .flatMap(({targets}) => targets.map(({id}) => id));
}
