/**
 * The texts and pictures of a revision in a temporary folder, laid out as in the repository, so that a book of long ago is read by
 * the very code that reads one on disk. Neither the working tree nor the index of the repository is touched.
 */
import {mkdir, realpath, rm, symlink, writeFile} from 'node:fs/promises';
import {tmpdir} from 'node:os';
import {dirname, join} from 'node:path';
import {type Failure, systemFailure} from './failure.js';
import {ENGINE_FILE, SHOP_FILE} from './find.js';
import {git, gitFailure} from './git.js';
import {passingName, sweepPassing} from './passing.js';
import {LARGEST_PICTURE} from './pictures.js';
import {LIMITS} from './read.js';
import type {Repository, Revision} from './revision.js';

export interface Unpacked {
  readonly ok: true;
  /** True path of what stands for the top folder of the repository. */
  readonly top: string;
  /** Whether the path was there at all. */
  readonly there: boolean;
  /** Whether it holds a book: a file does, and a folder with an engine.yaml in it or below. */
  readonly hasBook: boolean;
  /** Paths of submodules, whose files are in another repository. */
  readonly submodules: readonly string[];
  /** What could not be brought, each a clause: "engines/base is a submodule, and its files are not in this repository". */
  readonly unseen: readonly string[];
}

/** Gives the texts at or around a path (from the top, `''` for all) to `use`, and takes them away when it is done. */
export async function withUnpacked<T>(
  repository: Repository,
  revision: Revision,
  path: string,
  use: (unpacked: Unpacked) => Promise<T>,
): Promise<T | Failure> {
  const listed = ['ls-tree', '-r', '-z', '--full-tree', '--long', revision.commit];
  const listing = await git(repository.top, listed);
  if (!listing.ok) return gitFailure(listing, repository.top);
  const entries = entriesOf(listing.out.toString('utf8'));
  const there =
    path === '' || entries.some((entry) => entry.path === path || entry.path.startsWith(`${path}/`));
  const around = there ? shopAround(entries, path) : '';
  const wanted = entries.filter((entry) => entry.path.startsWith(around) && isWanted(entry));
  const top = await newFolder();
  if (typeof top !== 'string') return top;
  try {
    const brought = await bring(repository, wanted, top);
    if (!brought.ok) return brought;
    const submodules = entries.filter(({type, path: at}) => type === 'commit' && at.startsWith(around));
    const unseen = [
      ...submodules.map(({path: at}) => `${at} is a submodule, and its files are not in this repository`),
      ...brought.missing.map((at) => `${at} is not in this clone, which is partial; fetch it first`),
    ];
    const hasBook = entries.some((entry) => entry.path === path || isEngineBelow(entry.path, path));
    return await use({ok: true, top, there, hasBook, submodules: submodules.map(({path: at}) => at), unseen});
  } finally {
    await rm(top, {recursive: true, force: true});
  }
}

/** A folder of its own, on the disk for what passes; those of runs that were killed are swept. */
async function newFolder(): Promise<string | Failure> {
  try {
    await sweepPassing(tmpdir());
    const folder = join(await realpath(tmpdir()), passingName());
    await mkdir(folder, {mode: 0o700});
    return folder;
  } catch (error) {
    return systemFailure(error, tmpdir());
  }
}

/** Writes the files into the folder, some megabytes of them at a time, and says which the clone does not have. */
async function bring(
  repository: Repository,
  entries: readonly Entry[],
  top: string,
): Promise<{readonly ok: true; readonly missing: readonly string[]} | Failure> {
  const missing: string[] = [];
  try {
    // Nobody's shop.yaml is looked for above the root of a repository.
    await mkdir(join(top, '.git'));
    // Links come last, so that no file can be written through one.
    const [files, links] = [entries.filter((one) => !isLink(one)), entries.filter(isLink)];
    for (const batch of inBatches([...files, ...links])) {
      const contents = await contentsOf(repository, batch);
      if (!contents.ok) return contents;
      missing.push(...contents.missing);
      for (const {entry, bytes} of contents.files)
        await (isLink(entry) ? link : put)(join(top, entry.path), bytes);
    }
    return {ok: true, missing};
  } catch (error) {
    return systemFailure(error, top);
  }
}

/** In order, each of no more bytes than fit into memory with ease, or of one file. */
function inBatches(entries: readonly Entry[]): Entry[][] {
  const batches: Entry[][] = [];
  let left = 0;
  for (const entry of entries) {
    left -= entry.size;
    if (left < 0 || batches.length === 0) {
      batches.push([]);
      left = BATCH - entry.size;
    }
    batches.at(-1)?.push(entry);
  }
  return batches;
}

const BATCH = 32 * 1024 * 1024;

interface Entry {
  readonly mode: string;
  readonly type: string;
  readonly hash: string;
  readonly size: number;
  readonly path: string;
}

/** No sound repository holds other names; a hostile one might lead out of the folder by them. */
function isPlain(path: string): boolean {
  return path.split('/').every((part) => !['', '.', '..'].includes(part) && part.toLowerCase() !== '.git');
}

function isEngineBelow(file: string, folder: string): boolean {
  const name = file.slice(folderOf(file) === '' ? 0 : folderOf(file).length + 1);
  return name === ENGINE_FILE && (folder === '' || file.startsWith(`${folder}/`));
}

/** `mode type hash size`, a tab, the path, a nought. A name may hold a tab of its own: only the first one parts. */
function entriesOf(listing: string): Entry[] {
  return listing.split('\0').flatMap((line) => {
    const tab = line.indexOf('\t');
    const [mode = '', type = '', hash = '', size = ''] = line.slice(0, tab).split(/ +/);
    const path = line.slice(tab + 1);
    return tab < 0 || !isPlain(path) ? [] : [{mode, type, hash, size: Number(size), path}];
  });
}

/** Texts, and pictures, since one that is missing is a finding. What is larger than either may be is refused on disk too. */
function isWanted({type, path, size}: Entry): boolean {
  if (type !== 'blob') return false;
  if (/\.(ya?ml|md)$/i.test(path)) return size <= LIMITS.procedure;
  return /\.(png|jpe?g|gif|webp)$/i.test(path) && size <= LARGEST_PICTURE;
}

/** The folder of the nearest shop.yaml at or above the path, with its slash: a book reaches no farther. */
function shopAround(entries: readonly Entry[], path: string): string {
  const paths = new Set(entries.map((entry) => entry.path));
  for (let at = paths.has(path) ? folderOf(path) : path; ; at = folderOf(at)) {
    const lead = at === '' ? '' : `${at}/`;
    if (at === '' || paths.has(`${lead}${SHOP_FILE}`)) return lead;
  }
}

function folderOf(path: string): string {
  return path.slice(0, Math.max(0, path.lastIndexOf('/')));
}

interface Contents {
  readonly ok: true;
  readonly files: readonly {readonly entry: Entry; readonly bytes: Buffer}[];
  readonly missing: readonly string[];
}

/** One run of git for all of them: `hash type size`, a line feed, the bytes, a line feed. */
async function contentsOf({top}: Repository, entries: readonly Entry[]): Promise<Contents | Failure> {
  const answer = await git(top, ['cat-file', '--batch'], entries.map(({hash}) => `${hash}\n`).join(''));
  if (!answer.ok) return gitFailure(answer, top);
  const files: {entry: Entry; bytes: Buffer}[] = [];
  const missing: string[] = [];
  let at = 0;
  for (const entry of entries) {
    const end = answer.out.indexOf(10, at);
    const [, type, size] = answer.out.subarray(at, end).toString('latin1').split(' ');
    at = end + 1;
    if (type !== 'blob') {
      missing.push(entry.path);
      continue;
    }
    files.push({entry, bytes: answer.out.subarray(at, at + Number(size))});
    at += Number(size) + 1;
  }
  return {ok: true, files, missing};
}

async function put(path: string, bytes: Buffer): Promise<void> {
  await mkdir(dirname(path), {recursive: true});
  await writeFile(path, bytes);
}

function isLink({mode}: Entry): boolean {
  return mode === '120000';
}

/** Where a link can't be made, its name leads nowhere, and the book says so. */
async function link(path: string, bytes: Buffer): Promise<void> {
  await mkdir(dirname(path), {recursive: true}).catch(() => undefined);
  await symlink(bytes.toString('utf8'), path).catch(() => undefined);
}
