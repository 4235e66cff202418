/** `wmark sheet`: checks books and writes their sheets, a folder for each engine. */
import {readdir} from 'node:fs/promises';
import {join, resolve} from 'node:path';
import {checkWithJobs} from '../findings/check-jobs.js';
import {today} from '../host/clock.js';
import {type Failure, failureText} from '../host/failure.js';
import {type LoadedBook, loadBooks} from '../host/load.js';
import {shownName} from '../host/names.js';
import {type SheetForm, sheetsOf} from '../host/sheets.js';
import {writeFiles} from '../host/write.js';
import type {Paper} from '../sheet/model.js';
import type {Language} from '../spec/model.js';
import {printable} from '../text/printable.js';
import {checkJson, checkText, counted} from './check-report.js';
import {EXIT, type Exit} from './exit.js';
import type {Streams} from './streams.js';

export interface SheetCommandOptions {
  readonly out: string;
  readonly as: 'html' | 'pdf' | 'both' | 'markdown';
  readonly paper?: Paper;
  readonly language?: Language;
  readonly evenWithErrors?: boolean;
}

export async function sheet(
  paths: readonly string[],
  options: SheetCommandOptions,
  streams: Streams,
): Promise<Exit> {
  const {books, failures} = await loadBooks(paths);
  const complain = (failure: Failure) => streams.aside(`wmark: ${printable(failureText(failure))}\n`);
  failures.forEach(complain);
  let exit: Exit = failures.length > 0 ? EXIT.unable : EXIT.clean;
  const taken = new Map<string, LoadedBook>();
  for (const loaded of books) {
    const failure = alreadyTaken(loaded, taken) ?? (await writeBook(loaded, options, streams));
    if (failure === 'errors') exit = exit === EXIT.clean ? EXIT.errors : exit;
    else if (failure) {
      complain(failure);
      exit = EXIT.unable;
    }
  }
  return exit;
}

/** Two books of one engine would write over each other. */
function alreadyTaken(loaded: LoadedBook, taken: Map<string, LoadedBook>): Failure | undefined {
  const name = folderName(loaded);
  const before = taken.get(name);
  taken.set(name, loaded);
  if (before === undefined || before.folder === loaded.folder) return undefined;
  const says = `${before.file} has the same engine id, ${name}`;
  return {ok: false, says, hint: 'give each engine an id of its own', where: {file: loaded.file}};
}

async function writeBook(
  loaded: LoadedBook,
  {out, as, paper, language, evenWithErrors}: SheetCommandOptions,
  {report, aside}: Streams,
): Promise<Failure | 'errors' | undefined> {
  const checked = checkJson([
    {loaded, report: checkWithJobs(loaded.book, [], {today: today(), alone: loaded.alone === true})},
  ]);
  const errors = checked.summary.errors;
  if (errors > 0) aside(checkText(checked));
  if (errors > 0 && !evenWithErrors) {
    aside(`wmark: ${printable(loaded.file)}: ${counted(errors, 'error')}, so no sheet was written; `);
    aside('mend them, or say --even-with-errors\n');
    return 'errors';
  }
  const folder = join(resolve(out), folderName(loaded));
  const sheets = await sheetsOf(loaded, {
    forms: FORMS[as],
    ...(paper && {paper}),
    ...(language && {language}),
  });
  if (!sheets.ok) return sheets;
  const {files, asides} = sheets;
  for (const one of asides) aside(`wmark: ${printable(one)}\n`);
  const written = await writeFiles(files.map(({name, text}) => ({path: join(folder, name), text})));
  if (!written.ok) return written;
  const shown = printable(shownName(folder, process.cwd()));
  const first = files[0] ? `; open ${shown}/${printable(files[0].name)}` : '';
  report(
    `${printable(loaded.book.spec.engine.name)}: ${counted(files.length, 'file')} in ${shown}${first}\n`,
  );
  for (const old of await leftOver(loaded, folder, files)) {
    aside(
      `wmark: ${shown}/${printable(old)} is of an earlier run and belongs to the book no longer; delete it\n`,
    );
  }
  return errors > 0 ? 'errors' : undefined;
}

const FORMS: Readonly<Record<SheetCommandOptions['as'], readonly SheetForm[]>> = {
  html: ['html'],
  pdf: ['pdf'],
  both: ['html', 'pdf'],
  markdown: ['md'],
};

/** A folder for each engine, so that a second book never takes the place of the first. */
function folderName({book, folder}: LoadedBook): string {
  const {id} = book.spec.engine;
  return /^[a-z0-9-]+$/.test(id) ? id : (folder.split(/[\\/]/).at(-1) ?? 'book');
}

const SHEET_FILE = /\.(?:html|pdf|md)$/;

/** Sheets that lie there from before: somebody might print one. */
async function leftOver(
  {only}: LoadedBook,
  folder: string,
  files: readonly {readonly name: string}[],
): Promise<string[]> {
  if (only) return [];
  const now = new Set(files.map(({name}) => name.replace(SHEET_FILE, '')));
  // The same sheet in another form was asked for by another run.
  const old = (name: string) => SHEET_FILE.test(name) && !now.has(name.replace(SHEET_FILE, ''));
  return (await readdir(folder)).filter(old).sort();
}
