/** Whether a report can be one: whether its places lie in the texts that they name, and its fix can be made. */
import type {Book} from '../build/book.js';
import type {Found, Remark} from '../build/found.js';
import {editFault} from '../text/edit.js';
import type {Source} from '../text/source.js';

/** Every text that a finding may point into, by the name of its file. */
export function sourcesOf(book: Book): Map<string, Source> {
  const all = new Map(book.spec.files);
  for (const {source} of book.procedures) all.set(source.file, source);
  if (book.job !== undefined) all.set(book.job.source.file, book.job.source);
  return all;
}

/** What is wrong with the places and edits of a report, as the end of a sentence; nothing where all is well. */
export function foundFault(found: Found, sources: ReadonlyMap<string, Source>): string | undefined {
  const places: Remark[] = [...(found.story ?? []), ...(found.related ?? [])];
  for (const where of [found.where, ...places.map((remark) => remark.where)]) {
    const length = sources.get(where.file)?.text.length;
    // A file that could not be read has no text to point into.
    if (length === undefined) continue;
    const {start, end} = where.span;
    if (start < 0 || end < start || end > length) {
      return `stands at ${start}–${end} of ${where.file}, which is ${length} long`;
    }
  }
  if (found.fix === undefined) return undefined;
  const fault = editFault(found.fix.edits, sources.get(found.fix.file)?.text.length ?? 0);
  return fault && `has a fix that can't be made: ${fault}`;
}
