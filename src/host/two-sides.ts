/**
 * The two sides of a comparison, loaded: two folders, two files, or one path at a revision and as it is now (or at
 * another revision); each book with its fellow, and with it what could not be seen of either.
 */
import {relative, resolve, sep} from 'node:path';
import type {Failure} from './failure.js';
import {type LoadedBook, loadBooks} from './load.js';
import {liesBelow, truePath} from './names.js';
import {type Repository, repositoryOf, revisionIn} from './revision.js';
import {type Unpacked, withUnpacked} from './unpack.js';
import {type Unseen, unseenOf} from './unseen.js';

/** A book of both sides, or of the one that has it. */
export interface TwoBooks {
  readonly before?: LoadedBook;
  readonly now?: LoadedBook;
}

export interface TwoSides {
  readonly ok: true;
  readonly books: readonly TwoBooks[];
  readonly unseen: readonly Unseen[];
  /** What people call the sides: folders or revisions. */
  readonly names: {readonly before: string; readonly now: string};
  /** Temporary folders that stand in names of files outside the working folder, and what they stand for. */
  readonly moved?: readonly {readonly from: string; readonly to: string}[];
}

/** Two paths on disk. */
export async function sidesOnDisk(
  before: string,
  now: string,
  cwd: string = process.cwd(),
): Promise<TwoSides | Failure> {
  const old = await loadBooks([before], cwd);
  const fresh = await loadBooks([now], cwd);
  const [failure] = [...old.failures, ...fresh.failures];
  if (failure) return failure;
  return paired(old.books, fresh.books, {before, now}, []);
}

/** A path at a revision, and now or at a later one. */
export async function sidesSince(
  path: string,
  {since, until}: {readonly since: string; readonly until?: string},
  cwd: string = process.cwd(),
): Promise<TwoSides | Failure> {
  const repository = await repositoryOf(path, cwd);
  if (!repository.ok) return repository;
  const from = await revisionIn(repository, since);
  if (!from.ok) return from;
  const to = until === undefined ? undefined : await revisionIn(repository, until);
  if (to && !to.ok) return to;
  const at = await placed(path, cwd, repository);
  const old = await withUnpacked(repository, from, at.inside, (unpacked) =>
    loadedIn(unpacked, {...at, side: 'before', name: since}),
  );
  if (!old.ok) return old;
  const fresh = to
    ? await withUnpacked(repository, to, at.inside, (unpacked) =>
        loadedIn(unpacked, {...at, side: 'now', name: to.name}),
      )
    : await onDisk(at.real, resolve(repository.top, at.base));
  if (!fresh.ok) return fresh;
  return joined(old, fresh, repository, {before: since, now: until ?? 'the working tree'});
}

/** Names are relative to the working folder on both sides; where that lies outside, to the top of the repository. */
async function placed(path: string, cwd: string, {top}: Repository) {
  const real = (await truePath(resolve(cwd, path))) ?? resolve(cwd, path);
  const realCwd = (await truePath(cwd)) ?? cwd;
  const base = liesBelow(realCwd, top) ? relative(top, realCwd) : '';
  return {real, base, inside: relative(top, real).split(sep).join('/')};
}

/** Both sides of one repository, where not every book of the old side needs a fellow on the new one. */
function joined(old: OneSide, fresh: OneSide, {top}: Repository, names: TwoSides['names']): TwoSides {
  const ids = new Set(fresh.books.map(({book}) => book.spec.engine.id));
  const candidates = old.searched ? old.books.filter(({book}) => ids.has(book.spec.engine.id)) : old.books;
  const moved = [old, fresh].flatMap(({from}) => (from === undefined ? [] : [{from, to: top}]));
  const sides = paired(candidates, fresh.books, names, [...old.unseen, ...fresh.unseen]);
  const hidden = (old.submodules ?? []).map((path) => resolve(top, path));
  // A book in a submodule is not new: its old side is in another repository.
  const books = sides.books.filter(
    ({before, now}) => before || !now || !hidden.some((path) => liesBelow(now.folder, path)),
  );
  return {...sides, books, moved};
}

interface OneSide {
  readonly ok: true;
  readonly books: readonly LoadedBook[];
  readonly unseen: readonly Unseen[];
  /** The path was not there, and these are all books of the revision. */
  readonly searched?: boolean;
  /** From the top of the repository. */
  readonly submodules?: readonly string[];
  /** Where it lay while it was read. */
  readonly from?: string;
}

async function onDisk(path: string, cwd: string): Promise<OneSide | Failure> {
  const {books, failures} = await loadBooks([path], cwd);
  const [failure] = failures;
  return failure ?? {ok: true, books, unseen: []};
}

interface At {
  readonly inside: string;
  readonly base: string;
  readonly side: Unseen['side'];
  readonly name: string;
}

/** What was not there yet may have had another name: then all books of the revision are loaded, to find it by its engine. */
async function loadedIn(
  {top, there, hasBook, submodules, unseen}: Unpacked,
  {inside, base, side, name}: At,
): Promise<OneSide | Failure> {
  const found = {
    ok: true,
    unseen: unseen.map((says): Unseen => ({side, says})),
    from: top,
    submodules,
  } as const;
  // A revision before the first book has none, which is no failure.
  if (there && !hasBook) return {...found, books: []};
  const {books, failures} = await loadBooks([there ? resolve(top, inside) : top], resolve(top, base));
  const [failure] = failures;
  if (there && failure) return {...failure, says: `at ${name}: ${failure.says}`};
  return {...found, books, searched: !there};
}

/** By the name of the file, then by the id of the engine; one on each side belong together anyway. */
function paired(
  before: readonly LoadedBook[],
  now: readonly LoadedBook[],
  names: TwoSides['names'],
  unseen: readonly Unseen[],
): TwoSides {
  const left = [...before];
  const take = (same: (one: LoadedBook) => boolean) => {
    const index = left.findIndex(same);
    return index === -1 ? undefined : left.splice(index, 1)[0];
  };
  const found = now.map((one) => [one, take(({file}) => file === one.file)] as const);
  const books = found.map(([fresh, same]): TwoBooks => {
    const {id} = fresh.book.spec.engine;
    const alone = now.length === 1 && before.length === 1;
    const old = same ?? take(({book}) => (id !== '' && book.spec.engine.id === id) || alone);
    return {now: fresh, ...(old && {before: old})};
  });
  const all = [...books, ...left.map((old): TwoBooks => ({before: old}))];
  return {ok: true, books: all, names, unseen: [...unseen, ...all.flatMap(unseenIn)]};
}

function unseenIn({before, now}: TwoBooks): Unseen[] {
  return [...(before ? unseenOf(before, 'before') : []), ...(now ? unseenOf(now, 'now') : [])];
}
