/** Loads the books that a user's paths stand for: folders that hold books, one book, or single procedures. */
import {dirname, resolve} from 'node:path';
import type {Book} from '../build/book.js';
import type {Procedure} from '../procedure/model.js';
import type {Job} from '../spec/job.js';
import type {Located} from '../spec/model.js';
import type {Problem} from '../text/problem.js';
import {type NamedFile, notWhole, unreadable} from './build-paths.js';
import type {Failure} from './failure.js';
import {type FoundBook, findBooks, onlyBases} from './find-books.js';
import {jobsBeside} from './jobs.js';
import {proceduresOf} from './listed-procedures.js';
import {shownName} from './names.js';
import {notInAnyBuild, notInBuild} from './not-in-build.js';
import {pictureProblems} from './picture-problems.js';
import {LIMITS} from './read.js';
import {FRESH, type Reader} from './reader.js';
import {specificationAt} from './specification.js';

/** A book as it was read, with where it came from. */
export interface LoadedBook {
  readonly ok: true;
  /** Its engine.yaml as people know it. */
  readonly file: string;
  /** True path of the folder of engine.yaml. */
  readonly folder: string;
  /** True path of the folder of its shop.yaml: nothing of the book lies outside. */
  readonly shopFolder: string;
  /** The working folder to which the names of its files are relative. */
  readonly cwd: string;
  readonly book: Book;
  /** The engines on the stand, in order of their files. The book itself is for all of them, and names none. */
  readonly jobs: readonly Job[];
  /** It holds a single procedure, which no book lists, and should be checked as such. */
  readonly alone?: true;
  /** The names of the files asked for, where it wasn't the whole book. */
  readonly only?: ReadonlySet<string>;
}

export interface Loaded {
  readonly books: readonly LoadedBook[];
  readonly failures: readonly Failure[];
}

/**
 * Reads every book at or below the paths: folders, single procedures, jobs. Each book comes once, in the order of the
 * paths. Never throws on what stands on the disk: what can't be read is a failure, or a problem in its book.
 *
 * @param paths relative to `cwd`, or absolute
 * @param cwd the folder to which the names of files are relative in what is found
 * @param reader for those inside only
 */
export async function loadBooks(
  paths: readonly string[],
  cwd: string = process.cwd(),
  reader: Reader = FRESH,
): Promise<Loaded> {
  const {found, failures} = await findBooks(paths, cwd, reader);
  const books: LoadedBook[] = [];
  const failed = [...failures];
  for (const one of found) {
    const loaded = await loadFound(one, cwd, reader);
    if (loaded?.ok) books.push(loaded);
    else if (loaded) failed.push(loaded);
  }
  const [path] = paths;
  const nothing = books.length === 0 && failed.length === 0 && path !== undefined;
  return {books, failures: nothing ? [onlyBases(path, cwd)] : failed};
}

/** The jobs that are looked at: all of the book's, unless nothing but some of them was asked for. */
export function jobsAsked({jobs, only}: Pick<LoadedBook, 'jobs' | 'only'>): readonly Job[] {
  const named = only ? jobs.filter(({source}) => only.has(source.file)) : [];
  return only && named.length === only.size ? named : jobs;
}

/**
 * Reads the one book in a folder; a failure where there is none, or more than one.
 *
 * @example
 * const loaded = await loadBook('my-engine');
 * if (loaded.ok) console.log(check(loaded.book).findings);
 */
export async function loadBook(folder: string, cwd: string = process.cwd()): Promise<LoadedBook | Failure> {
  const {books, failures} = await loadBooks([folder], cwd);
  const [failure] = failures;
  if (failure) return failure;
  const [first, second] = books;
  if (first && !second) return first;
  return {
    ok: false,
    says: `there are ${books.length} books in it`,
    hint: 'name the folder of one',
    where: {file: shownName(resolve(cwd, folder), cwd)},
  };
}

/** One book that `findBooks` found; nothing where a search came upon a base for other books. */
export async function loadFound(
  found: FoundBook,
  cwd: string,
  reader: Reader,
): Promise<LoadedBook | Failure | undefined> {
  const read = await specificationAt(found.engineFile, cwd, reader);
  if (!read.ok) return read;
  if (found.searched && read.spec.build.length === 0) return undefined;
  const {engineFile} = found;
  const {disk} = reader;
  const from = {
    ok: true,
    file: shownName(engineFile, cwd),
    folder: dirname(engineFile),
    shopFolder: read.shopFolder,
    cwd,
  } as const;
  if (found.alone) {
    const procedure = await reader.text(found.alone, shownName(found.alone, cwd), LIMITS.procedure);
    if (!procedure.ok) return procedure;
    const procedures = [reader.procedure(procedure.source)];
    const only = new Set([procedure.source.file]);
    const pictures = await pictureProblems(procedures, {...from, disk});
    const problems = [...procedures.map(notInAnyBuild), ...pictures];
    return {...from, book: {spec: read.spec, procedures, problems}, jobs: [], alone: true, only};
  }
  const named = await proceduresOf(read, disk);
  const {procedures, problems, unread} = await readProcedures(named.paths, cwd, reader);
  const lost = [...named.unread, ...unread];
  const beside = await jobsBeside(from.folder, read.spec, {...from, reader});
  const pictures = await pictureProblems(procedures, {...from, disk});
  // A name that leads nowhere may be meant for the very file.
  const listed = new Set(named.paths.map(({path}) => path));
  const unlisted = lost.length > 0 ? [] : await notInBuild(read.spec, {...from, reader, named: listed});
  const all = [...named.problems, ...problems, ...unlisted, ...pictures, ...beside.problems];
  const book = {spec: read.spec, procedures, problems: all, ...(lost.length > 0 && {unread: lost})};
  const only = found.only && new Set(found.only.map((path) => shownName(path, cwd)));
  return {...from, book, jobs: beside.jobs, ...(only && {only})};
}

async function readProcedures(
  files: readonly NamedFile[],
  cwd: string,
  reader: Reader,
): Promise<Pick<Book, 'procedures' | 'problems'> & {readonly unread: readonly Located<string>[]}> {
  const procedures: Procedure[] = [];
  const problems: Problem[] = [];
  const unread: Located<string>[] = [];
  for (const {path, name} of files) {
    const read = await reader.text(path, shownName(path, cwd), LIMITS.procedure);
    if (read.ok) procedures.push(reader.procedure(read.source));
    else {
      const says = `${name.value} can't be read: ${saysWithLine(read)}`;
      problems.push(notWhole(unreadable(name, says, read.hint ?? '')));
      unread.push(name);
    }
  }
  return {procedures, problems, unread};
}

/** The place is that of the name, so the line in the file itself goes into the words. */
function saysWithLine({says, where}: Failure): string {
  return where?.line === undefined ? says : `${says} (line ${where.line})`;
}
