/** From the paths that a user gives to the books that they stand for, each once. */
import {basename, dirname, resolve} from 'node:path';
import {DISK} from './disk.js';
import {type Failure, systemFailure} from './failure.js';
import {
  ENGINE_FILE,
  engineFileOfJob,
  engineFilesAbove,
  engineFilesBelow,
  SHOP_FILE,
  shopFileFor,
} from './find.js';
import {shownName, truePath} from './names.js';
import type {Reader, Way} from './reader.js';

/** Where a book is, and what of it was asked for; nothing of it is read yet. */
export interface FoundBook {
  /** True path of its engine.yaml. */
  readonly engineFile: string;
  /** True paths of the procedures and jobs asked for, where it isn't the whole book. */
  readonly only?: readonly string[];
  /** True path of a procedure that no book lists: it is read as the only one of this book. */
  readonly alone?: string;
  /** Come upon in a search: without procedures of its own it is a base for others, and no book. */
  readonly searched?: boolean;
}

export interface Found {
  readonly found: readonly FoundBook[];
  readonly failures: readonly Failure[];
}

/** The books at the paths. What leads nowhere is a failure beside them. */
export async function findBooks(paths: readonly string[], cwd: string, reader?: Reader): Promise<Found> {
  const found = new Map<string, FoundBook>();
  const failures: Failure[] = [];
  for (const path of paths) {
    const result = await booksAt(path, cwd, reader);
    if (result.ok) for (const book of result.books) add(found, book);
    else failures.push(result);
  }
  return {found: [...found.values()], failures};
}

/** Every engine.yaml at the first path asked for is a base for others. */
export function onlyBases(path: string, cwd: string): Failure {
  const hint = 'list the procedures of a book under `build:`';
  return {
    ok: false,
    says: 'no engine.yaml here has a `build:`',
    hint,
    where: {file: shownName(resolve(cwd, path), cwd)},
  };
}

interface Books {
  readonly ok: true;
  readonly books: readonly FoundBook[];
}

async function booksAt(path: string, cwd: string, reader: Reader | undefined): Promise<Books | Failure> {
  const absolute = resolve(cwd, path);
  const file = shownName(absolute, cwd);
  try {
    const kind = await DISK.kind(absolute);
    const real = await truePath(absolute);
    if (kind === 'missing' || real === undefined) {
      return {
        ok: false,
        says: 'there is no such file or folder',
        hint: 'see that the path is right',
        where: {file},
      };
    }
    if (kind === 'folder') return await booksBelow(real, file);
    if (basename(real) === ENGINE_FILE) return {ok: true, books: [{engineFile: real}]};
    if (basename(real) === SHOP_FILE) return await booksBelow(dirname(real), file);
    const engineFile = engineFileOfJob(real);
    if (engineFile) return {ok: true, books: [{engineFile, only: [real]}]};
    return await booksWith(real, file, {cwd, reader});
  } catch (error) {
    return systemFailure(error, file);
  }
}

async function booksBelow(folder: string, file: string): Promise<Books | Failure> {
  const engineFiles = await engineFilesBelow(folder);
  const books = engineFiles.map((engineFile) => ({engineFile, searched: dirname(engineFile) !== folder}));
  return books.length > 0 ? {ok: true, books} : noBook(file);
}

/** The nearest book that lists the procedure, else all of the shop that do, else the nearest, for it alone. */
async function booksWith(procedure: string, file: string, way: Way): Promise<Books | Failure> {
  // Loaded only now: a search below folders reads no book, and where all answers are kept nothing else does.
  const {listingBooks} = await import('./listing-books.js');
  const above = engineFilesAbove(dirname(procedure));
  const forIt = (engineFile: string): FoundBook => ({engineFile, only: [procedure]});
  const [listing] = await listingBooks(above, procedure, way);
  if (listing !== undefined) return {ok: true, books: [forIt(listing)]};
  const shopFile = shopFileFor(dirname(procedure));
  const others = shopFile ? await engineFilesBelow(dirname(shopFile)) : [];
  const books = (await listingBooks(others, procedure, way)).map(forIt);
  if (books.length > 0) return {ok: true, books};
  const [nearest] = above;
  return nearest ? {ok: true, books: [{engineFile: nearest, alone: procedure}]} : noBook(file);
}

function noBook(file: string): Failure {
  const hint = `\`wmark begin DIR\` writes a small book to start from`;
  return {ok: false, says: `there is no ${ENGINE_FILE} here, so no book`, hint, where: {file}};
}

/** The whole of a book is more than parts of it, and parts add up. */
function add(found: Map<string, FoundBook>, book: FoundBook): void {
  const key = `${book.engineFile}\n${book.alone ?? ''}`;
  const before = found.get(key);
  if (before === undefined) found.set(key, book);
  else if (before.only && book.only) found.set(key, {...before, only: [...before.only, ...book.only]});
  else
    found.set(key, {
      engineFile: book.engineFile,
      searched: Boolean(before.searched && book.searched),
      ...(book.alone && {alone: book.alone}),
    });
}
