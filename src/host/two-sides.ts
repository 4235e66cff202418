/**
 * The two sides of a comparison, loaded: two folders, two files, or one path at a revision and as it is now (or at
 * another revision); each book with its fellow, and with it what could not be seen of either.
 */
import {relative, resolve, sep} from 'node:path';
import {readYaml} from '../spec/yaml.js';
import {positionAt, type Source} from '../text/source.js';
import type {Failure} from './failure.js';
import {type LoadedBook, loadBooks} from './load.js';
import {liesBelow, truePath} from './names.js';
import {textsOf} from './places.js';
import {repositoryOf, revisionIn} from './revision.js';
import {type Unpacked, withUnpacked} from './unpack.js';

export interface TwoBooks {
  readonly before?: LoadedBook;
  readonly now?: LoadedBook;
}

/** Something of one side that the comparison could not take into account, as a clause. */
export interface Unseen {
  readonly side: 'before' | 'now';
  readonly says: string;
  readonly where?: {readonly file: string; readonly line: number};
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
  const {top} = repository;
  const real = (await truePath(resolve(cwd, path))) ?? resolve(cwd, path);
  const inside = relative(top, real).split(sep).join('/');
  // Names are relative to the working folder on both sides; where that lies outside, to the top of the repository.
  const realCwd = (await truePath(cwd)) ?? cwd;
  const base = realCwd === top || liesBelow(realCwd, top) ? realCwd : top;
  const old = await withUnpacked(repository, from, inside, (unpacked) =>
    loadedIn(unpacked, {inside, base: relative(top, base), side: 'before', name: since}),
  );
  if (!old.ok) return old;
  const fresh = to
    ? await withUnpacked(repository, to, inside, (unpacked) =>
        loadedIn(unpacked, {inside, base: relative(top, base), side: 'now', name: to.name}),
      )
    : await onDisk(real, base);
  if (!fresh.ok) return fresh;
  const ids = new Set(fresh.books.map(({book}) => book.spec.engine.id));
  const candidates = old.searched ? old.books.filter(({book}) => ids.has(book.spec.engine.id)) : old.books;
  const names = {before: since, now: until ?? 'the working tree'};
  const unseen = [...old.unseen, ...fresh.unseen];
  const moved = [old, fresh].flatMap(({from: temporary}) =>
    temporary === undefined ? [] : [{from: temporary, to: top}],
  );
  const sides = paired(candidates, fresh.books, names, unseen);
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

function unseenOf({book, jobs}: LoadedBook, side: Unseen['side']): Unseen[] {
  const texts = [...textsOf(book, jobs).values()];
  const marked = texts.flatMap((text): Unseen[] => {
    const line = mergeMarker(text);
    return line === undefined
      ? []
      : [
          {
            side,
            says: 'it holds the markers of a merge that was never settled; settle it first',
            where: {file: text.file, line},
          },
        ];
  });
  const inMerge = new Set(marked.flatMap(({where}) => where?.file ?? []));
  const broken = brokenFiles({book}).filter(({file}) => !inMerge.has(file));
  const unread = book.problems.filter(({name}) => name === 'file-unreadable');
  return [
    ...marked,
    ...broken.map(
      ({file, line}): Unseen => ({
        side,
        says: 'it is not YAML, so what it asks for could not be seen',
        where: {file, line},
      }),
    ),
    ...unread.map(({says, where}): Unseen => {
      const text = texts.find(({file}) => file === where.file);
      return {
        side,
        says,
        where: {file: where.file, line: text ? positionAt(text, where.span.start).line : 1},
      };
    }),
  ];
}

/** Files of a specification that are not YAML, and the line where they stop to be. */
export function brokenFiles({
  book,
}: Pick<LoadedBook, 'book'>): {readonly file: string; readonly line: number}[] {
  return [...book.spec.files.values()].flatMap((from) => {
    const {broken, problems} = readYaml(from);
    const start = problems[0]?.where.span.start ?? 0;
    return broken ? [{file: from.file, line: positionAt(from, start).line}] : [];
  });
}

/** Line of the first of the three marks that git leaves, where all three are there. */
function mergeMarker({text, lines}: Source): number | undefined {
  const marks = [/^<{7}(?: |$)/, /^={7}$/, /^>{7}(?: |$)/];
  let next = 0;
  let first: number | undefined;
  for (const [index, start] of lines.entries()) {
    const line = text.slice(start, start + LONGEST_MARK).split(/[\r\n]/)[0] ?? '';
    if (!marks[next]?.test(line)) continue;
    first ??= index + 1;
    next++;
    if (next === marks.length) return first;
  }
  return undefined;
}

/** A marker is seven signs and the name of a branch. */
const LONGEST_MARK = 200;
