/** From spans to the protocol's ranges and back: lines and characters from nought, characters in UTF-16 units. */
import type {Location, Position, Range, TextEdit, WorkspaceEdit} from 'vscode-languageserver';
import type {Edit} from '../text/edit.js';
import {offsetAt, positionAt, type Source, type Span, type Where} from '../text/source.js';

/** From an offset of the text, in UTF-16 units. */
export function positionOf(from: Source, offset: number): Position {
  const {line, column} = positionAt(from, offset);
  return {line: line - 1, character: column - 1};
}

export function rangeOf(from: Source, {start, end}: Span): Range {
  return {start: positionOf(from, start), end: positionOf(from, end)};
}

export function offsetOf(from: Source, {line, character}: Position): number {
  return offsetAt(from, {line: line + 1, column: character + 1});
}

export function spanIn(from: Source, {start, end}: Range): Span {
  return {start: offsetOf(from, start), end: offsetOf(from, end)};
}

/** A file as a whole, where its text is not at hand. */
export const NOWHERE: Range = {start: {line: 0, character: 0}, end: {line: 0, character: 0}};

/** What answers need beside a book: how the client calls a file. */
export interface Addresses {
  readonly uri: (file: string) => string;
}

/** A place as the client finds it. */
export function locationOf(
  {file, span}: Where,
  texts: ReadonlyMap<string, Source>,
  {uri}: Addresses,
): Location {
  const from = texts.get(file);
  return {uri: uri(file), range: from === undefined ? NOWHERE : rangeOf(from, span)};
}

export function textEditOf(from: Source, {span, text}: Edit): TextEdit {
  return {range: rangeOf(from, span), newText: text};
}

/** Edits of several files, those of each in order and apart. */
export function workspaceEditOf(
  edits: ReadonlyMap<string, readonly Edit[]>,
  texts: ReadonlyMap<string, Source>,
  {uri}: Addresses,
): WorkspaceEdit {
  const changes: Record<string, TextEdit[]> = {};
  for (const [file, some] of edits) {
    const from = texts.get(file);
    if (from !== undefined) changes[uri(file)] = some.map((edit) => textEditOf(from, edit));
  }
  return {changes};
}
