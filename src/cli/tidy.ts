/** `wmark tidy`: brings the procedures of books into their canonical form, or says what would change. */
import type {Book} from '../build/book.js';
import {type Mended, mend, offsetAtFirst} from '../findings/mend.js';
import {today} from '../host/clock.js';
import {failureText} from '../host/failure.js';
import {type LoadedBook, loadBooks} from '../host/load.js';
import {rewriteFiles} from '../host/rewrite.js';
import {tidyEdits} from '../procedure/tidy/edits.js';
import {counted} from '../text/counted.js';
import {applyEdits} from '../text/edit.js';
import {printable} from '../text/printable.js';
import type {Source} from '../text/source.js';
import {EXIT, type Exit} from './exit.js';
import type {Streams} from './streams.js';
import {changesText, editSays, type Tidied} from './tidy-report.js';

export interface TidyCommandOptions {
  readonly fix?: boolean;
  readonly check?: boolean;
  readonly show?: boolean;
}

/** Exit status 1 where `--check` finds that something would change. */
export async function tidy(
  paths: readonly string[],
  {fix = false, check = false, show = false}: TidyCommandOptions,
  {report, aside}: Streams,
): Promise<Exit> {
  const cwd = process.cwd();
  const {books, failures} = await loadBooks(paths, cwd);
  const complaints = [...failures.map(failureText), ...books.flatMap(unreadable)];
  const {files, left} = tidied(books, fix);
  const changed = files.filter(({before, text}) => before.text !== text);
  report(changed.map((file) => changesText(file, show)).join(''));
  let done: readonly string[] = changed.map(({before}) => before.file);
  if (!check) {
    const written = await rewriteFiles(changed, cwd);
    done = written.files;
    complaints.push(...written.failures.map(failureText));
  }
  report(summary(files.length, done.length, check));
  if (left > 0) aside(`wmark: fixes left to you, since they change more than spelling: ${left}\n`);
  for (const complaint of complaints) aside(`wmark: ${printable(complaint)}\n`);
  if (complaints.length > 0 || books.length === 0) return EXIT.unable;
  return check && changed.length > 0 ? EXIT.errors : EXIT.clean;
}

/** A procedure that two books share is tidied once, by the first of them. */
function tidied(books: readonly LoadedBook[], fix: boolean): {files: Tidied[]; left: number} {
  const files = new Map<string, Tidied>();
  let left = 0;
  for (const loaded of books) {
    const asked = loaded.book.procedures
      .map(({source}) => source)
      .filter(({file}) => !files.has(file) && (loaded.only?.has(file) ?? true));
    const mended = fix ? mendBook(loaded, asked) : untouched(loaded.book);
    left += mended.left.length;
    for (const source of asked) files.set(source.file, tidiedOf(source, mended));
  }
  return {files: [...files.values()], left};
}

function mendBook({book, alone}: LoadedBook, asked: readonly Source[]): Mended {
  const files = new Set(asked.map(({file}) => file));
  return mend(book, files, {today: today(), alone: alone === true});
}

function untouched(book: Book): Mended {
  return {book, made: [], rounds: new Map(), left: []};
}

function tidiedOf(before: Source, {book, made, rounds}: Mended): Tidied {
  const procedure = book.procedures.find(({source}) => source.file === before.file);
  if (procedure === undefined) return {before, text: before.text, changes: []};
  const {text} = procedure.source;
  const edits = tidyEdits(procedure, book.spec);
  const fixes = made
    .filter(({file}) => file === before.file)
    .map(({offset, title, finding}) => ({offset, says: `${title}  [${finding}]`}));
  const own = rounds.get(before.file) ?? [];
  const looks = edits.flatMap((edit) => {
    const says = editSays(text, edit);
    return says === undefined ? [] : [{offset: offsetAtFirst(own, edit.span.start), says}];
  });
  return {before, text: applyEdits(text, edits), changes: [...fixes, ...looks]};
}

/** What the check reports of files that are missing or no text. */
function unreadable({book}: LoadedBook): string[] {
  return book.problems
    .filter(({name}) => name === 'file-unreadable')
    .map(({says, hint, where}) =>
      failureText({ok: false, says, where: {file: where.file}, ...(hint && {hint})}),
    );
}

function summary(files: number, changed: number, check: boolean): string {
  const rest = files - changed;
  const tidy = `${counted(rest, 'procedure')} ${rest === 1 ? 'was' : 'were'} tidy`;
  if (changed === 0) return `${tidy}\n`;
  return `${counted(changed, 'procedure')} ${check ? 'would be' : changed === 1 ? 'was' : 'were'} changed, ${tidy}\n`;
}
