/** The line of a specification that a change points at: what it says is seen without opening the file. */
import type {LoadedBook} from '../host/load.js';
import {textsOf} from '../host/places.js';
import {positionAt, type Where} from '../text/source.js';

/** Without the white space around it; undefined for a place in a procedure, whose step is shown. */
export function lineAt({file, span}: Where, loaded: LoadedBook | undefined): string | undefined {
  if (loaded === undefined || !/\.ya?ml$/.test(file)) return undefined;
  const from = textsOf(loaded.book, loaded.jobs).get(file);
  if (from === undefined) return undefined;
  const {line} = positionAt(from, span.start);
  const text = from.text.slice(from.lines[line - 1], from.lines[line]).trim();
  return text === '' ? undefined : text;
}
