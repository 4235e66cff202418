/** `wmark sheet`: checks books and writes their sheets, a folder for each engine. */
import {join, resolve} from 'node:path';
import {checkWithJobs} from '../findings/check-jobs.js';
import {today} from '../host/clock.js';
import type {Failure} from '../host/failure.js';
import type {House} from '../host/house.js';
import type {LoadedBook} from '../host/load.js';
import {leadsOut, shownName} from '../host/names.js';
import {type SheetForm, sheetsOf} from '../host/sheets.js';
import {writeFiles} from '../host/write.js';
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
import {folderName, leftOver} from './sheet-folder.js';
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
  options: SheetCommandOptions & {readonly rules: House},
  streams: Streams,
): Promise<Failure | 'errors' | undefined> {
  const judged = judge(loaded, options, streams);
  if (judged !== 'clean' && judged !== 'all-the-same') return judged;
  const failure = await putSheets(loaded, options, streams);
  return failure ?? (judged === 'clean' ? undefined : 'errors');
}

/** Whether the sheets of a book may be written; what is wrong with it is said aside. */
function judge(
  loaded: LoadedBook,
  {evenWithErrors = false, rules}: SheetCommandOptions & {readonly rules: House},
  {aside}: Streams,
): Failure | 'errors' | 'clean' | 'all-the-same' {
  const options = {today: today(), alone: loaded.alone === true, house: rules.findings};
  const judged = checkWithJobs(loaded.book, [], options);
  const faults = faultsIn(loaded, judged);
  tellFaults(faults, rules, {aside});
  if (faults.length > 0 && !evenWithErrors) {
    return {ok: false, says: 'no sheet was written', hint: 'mend the rule', where: {file: fileOf(loaded)}};
  }
  const checked = checkJson([bookReport(loaded, judged)]);
  const {errors} = checked.summary;
  if (errors === 0) return 'clean';
  aside(checkText(checked));
  if (evenWithErrors) return 'all-the-same';
  aside(`wmark: ${printable(fileOf(loaded))}: ${counted(errors, 'error')}, so no sheet was written; `);
  aside('mend them, or say --even-with-errors\n');
  return 'errors';
}

async function putSheets(
  loaded: LoadedBook,
  {out, as, paper, language}: SheetCommandOptions,
  {report, aside}: Streams,
): Promise<Failure | undefined> {
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
  return undefined;
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
