/** `wmark sheet`: checks books and writes their sheets, a folder for each engine. */
import {readdir} from 'node:fs/promises';
import {join, resolve} from 'node:path';
import {checkWithJobs} from '../findings/check-jobs.js';
import {today} from '../host/clock.js';
import type {Failure} from '../host/failure.js';
import type {House} from '../host/house.js';
import type {LoadedBook} from '../host/load.js';
import {leadsOut, shownName} from '../host/names.js';
import {type SheetForm, sheetsOf} from '../host/sheets.js';
import {writeFiles} from '../host/write.js';
import type {Job} from '../spec/job.js';
import type {Language, Paper} from '../spec/model.js';
import {counted} from '../text/counted.js';
import {printable} from '../text/printable.js';
import {bookReport, faultsIn} from './answer-fresh.js';
import {askedBooks} from './asked-books.js';
import {checkJson, checkText} from './check-report.js';
import {complain, unable} from './complain.js';
import {EXIT, type Exit} from './exit.js';
import {askedHouse, type HouseOptions} from './house.js';
import {tellFaults} from './house-faults.js';
import type {Streams} from './streams.js';
import {tabletScript} from './tablet-script.js';

export interface SheetCommandOptions extends HouseOptions {
  readonly out: string;
  readonly as: 'html' | 'pdf' | 'both' | 'markdown';
  readonly paper?: Paper;
  /** Number of the job whose engine the sheets are for, or `all`; left out, they are for any engine of the kind. */
  readonly job?: string;
  readonly language?: Language;
  readonly evenWithErrors?: boolean;
}

export async function sheet(
  paths: readonly string[],
  options: SheetCommandOptions,
  streams: Streams,
): Promise<Exit> {
  const house = await askedHouse(options);
  if (!house.ok) return unable(streams, house);
  const {books, failed} = await askedBooks(paths, options.job, streams);
  let exit: Exit = failed ? EXIT.unable : EXIT.clean;
  const taken = new Map<string, LoadedBook>();
  for (const loaded of books) {
    const failure =
      alreadyTaken(loaded, taken) ?? (await writeBook(loaded, {...options, rules: house}, streams));
    if (failure === 'errors') exit = exit === EXIT.clean ? EXIT.errors : exit;
    else if (failure) {
      complain(streams, failure);
      exit = EXIT.unable;
    }
  }
  return exit;
}

/** Two books of one engine, or two jobs of one number, would write over each other. */
function alreadyTaken(loaded: LoadedBook, taken: Map<string, LoadedBook>): Failure | undefined {
  const name = folderName(loaded);
  const before = taken.get(name.toLowerCase());
  taken.set(name.toLowerCase(), loaded);
  if (before === undefined) return undefined;
  if (before.folder !== loaded.folder) {
    const says = `${before.file} has the same engine id, ${loaded.book.spec.engine.id}`;
    return {ok: false, says, hint: 'give each engine an id of its own', where: {file: loaded.file}};
  }
  if (before.book.job === loaded.book.job) return undefined;
  const says = `the sheets of ${before.book.job?.source.file ?? before.file} go to the same folder, ${name}`;
  const hint = 'give each job a number of its own';
  return {ok: false, says, hint, where: {file: loaded.book.job?.source.file ?? loaded.file}};
}

async function writeBook(
  loaded: LoadedBook,
  {out, as, paper, language, evenWithErrors, rules}: SheetCommandOptions & {readonly rules: House},
  {report, aside}: Streams,
): Promise<Failure | 'errors' | undefined> {
  const options = {today: today(), alone: loaded.alone === true, house: rules.findings};
  const judged = checkWithJobs(loaded.book, [], options);
  const faults = faultsIn(loaded, judged);
  tellFaults(faults, rules, {aside});
  if (faults.length > 0 && !evenWithErrors) {
    return {ok: false, says: 'no sheet was written', hint: 'mend the rule', where: {file: fileOf(loaded)}};
  }
  const checked = checkJson([bookReport(loaded, judged)]);
  const errors = checked.summary.errors;
  if (errors > 0) aside(checkText(checked));
  if (errors > 0 && !evenWithErrors) {
    aside(`wmark: ${printable(fileOf(loaded))}: ${counted(errors, 'error')}, so no sheet was written; `);
    aside('mend them, or say --even-with-errors\n');
    return 'errors';
  }
  const folder = join(resolve(out), folderName(loaded));
  if (await leadsOut(folder, resolve(out))) return linkedOut(folder);
  const sheets = await sheetsOf(loaded, {
    forms: FORMS[as],
    script: tabletScript,
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
  const {spec, job} = loaded.book;
  const title = job === undefined ? spec.engine.name : `${spec.engine.name}, job ${job.number}`;
  report(`${printable(title)}: ${counted(files.length, 'file')} in ${shown}${first}\n`);
  for (const old of await leftOver(loaded, folder, files)) {
    aside(
      `wmark: ${shown}/${printable(old)} is of an earlier run and belongs to the book no longer; delete it\n`,
    );
  }
  return errors > 0 ? 'errors' : undefined;
}

/** Whoever may write into a repository could lay such a link where a pipeline writes. */
function linkedOut(folder: string): Failure {
  const says = 'a symbolic link there leads out of the folder to write to';
  return {ok: false, says, hint: 'take the link away', where: {file: shownName(folder, process.cwd())}};
}

const FORMS: Readonly<Record<SheetCommandOptions['as'], readonly SheetForm[]>> = {
  html: ['html'],
  pdf: ['pdf'],
  both: ['html', 'pdf'],
  markdown: ['md'],
};

/** What is judged: the job, where the sheets are for one. */
function fileOf({file, book}: LoadedBook): string {
  return book.job?.source.file ?? file;
}

/** A folder for each engine and in it one for each job, so that no book ever takes the place of another. */
function folderName({book, folder}: LoadedBook): string {
  const {id} = book.spec.engine;
  const engine = /^[a-z0-9-]+$/.test(id) ? id : (folder.split(/[\\/]/).at(-1) ?? 'book');
  return book.job === undefined ? engine : join(engine, jobFolder(book.job));
}

/** The job's number where every system takes it for the name of a folder, else the name of the job's file. */
function jobFolder({number, source}: Job): string {
  const plain = /^[A-Za-z0-9](?:[\w.-]{0,60}[A-Za-z0-9_-])?$/.test(number);
  return plain ? number : (source.file.split(/[\\/]/).at(-1) ?? 'job').replace(/\.ya?ml$/, '');
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
