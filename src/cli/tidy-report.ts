/** What `wmark tidy` changes, as lines for people: file, line and column of the text as it was, and what becomes of it. */
import type {Edit} from '../text/edit.js';
import {printable} from '../text/printable.js';
import {withoutEnd} from '../text/runs.js';
import {positionAt, type Source, slice, source} from '../text/source.js';

/** A procedure as it was, and its new text. */
export interface Tidied {
  readonly before: Source;
  readonly text: string;
  /** At offsets of the old text. */
  readonly changes: readonly {readonly offset: number; readonly says: string}[];
}

/** Tells one edit of a text; nothing of indentation, which goes with the number above it. */
export function editSays(text: string, {span, text: now}: Edit): string | undefined {
  const was = text.slice(span.start, span.end);
  if (was.trim() === '' && now.trim() === '') return undefined;
  const [numeral] = /^\d+/.exec(was) ?? [];
  if (numeral !== undefined) return `step number ${numeral} becomes ${/^\d+/.exec(now)?.[0] ?? now}`;
  return `\`${was}\` becomes \`${now}\``;
}

/** One line a change; with `show`, below them the lines that change, before and after. */
export function changesText({before, text, changes}: Tidied, show: boolean): string {
  const said = [...changes]
    .sort((one, other) => one.offset - other.offset)
    .map(({offset, says}) => {
      const {line, column} = positionAt(before, offset);
      return `${before.file}:${line}:${column}: ${says}`;
    });
  const lines = show ? changedLines(before, source(before.file, text)) : [];
  return [...said, ...lines].map((line) => `${printable(line)}\n`).join('');
}

/** Lines that differ, in pairs; nothing where their number changed. */
function changedLines(before: Source, after: Source): string[] {
  if (before.lines.length !== after.lines.length) return [];
  return before.lines.flatMap((_, index) => {
    const [old, now] = [lineOf(before, index), lineOf(after, index)];
    return old === now ? [] : [`  ${index + 1} - ${old}`, `  ${index + 1} + ${now}`];
  });
}

function lineOf(from: Source, index: number): string {
  const [start = 0, end = from.text.length] = [from.lines[index], from.lines[index + 1]];
  return withoutEnd(slice(from, {start, end}), /[\r\n]/);
}
