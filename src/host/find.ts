/** Finds books on disk: a book is a folder with engine.yaml, and its shop is the nearest shop.yaml at or above it. */
import type {Dirent} from 'node:fs';
import {readdir} from 'node:fs/promises';
import {basename, dirname, extname, join} from 'node:path';
import {DISK, type Disk} from './disk.js';
import {systemCode} from './failure.js';

export const ENGINE_FILE = 'engine.yaml';
export const SHOP_FILE = 'shop.yaml';
export const JOBS_FOLDER = 'jobs';

type Looks = Pick<Disk, 'exists'>;

/**
 * Every engine.yaml in a folder and the folders below it, in order of name. Folders whose names begin with a
 * dot, installed packages and symbolic links to folders are passed by.
 */
export async function engineFilesBelow(folder: string): Promise<string[]> {
  return enginesIn(folder, await readdir(folder, {withFileTypes: true}));
}

async function enginesIn(folder: string, entries: readonly Dirent[]): Promise<string[]> {
  const found: string[] = [];
  if (entries.some(({name}) => name === ENGINE_FILE)) found.push(join(folder, ENGINE_FILE));
  const names = entries.filter((entry) => entry.isDirectory()).map(({name}) => name);
  for (const name of names.filter(isSearched).sort()) {
    const below = join(folder, name);
    found.push(...(await enginesIn(below, await entriesOf(below))));
  }
  return found;
}

/** Nothing of a folder that was taken away since its name was read. */
async function entriesOf(folder: string): Promise<Dirent[]> {
  try {
    return await readdir(folder, {withFileTypes: true});
  } catch (error) {
    const code = systemCode(error);
    if (code === 'ENOENT' || code === 'ENOTDIR') return [];
    throw error;
  }
}

/** Whether a search for books goes into a folder: what is installed or hidden is nobody’s book. */
export function isSearched(name: string): boolean {
  return !name.startsWith('.') && name !== 'node_modules';
}

/** The engine.yaml of each folder from this one up, nearest first, as far as the shop's or the repository's. */
export function engineFilesAbove(folder: string): string[] {
  return upwards(folder, DISK)
    .map((at) => join(at, ENGINE_FILE))
    .filter((file) => DISK.exists(file));
}

/** The nearest shop.yaml in this folder or above it, or nothing. */
export function shopFileFor(folder: string, disk: Looks = DISK): string | undefined {
  return upwards(folder, disk)
    .map((at) => join(at, SHOP_FILE))
    .find((file) => disk.exists(file));
}

/** The folder and those above it, up to the first that is the root of a repository: nobody's shop lies beyond. */
function upwards(folder: string, disk: Looks): string[] {
  const chain = [folder];
  for (let at = folder; !disk.exists(join(at, '.git')) && dirname(at) !== at; at = dirname(at)) {
    chain.push(dirname(at));
  }
  return chain;
}

/** The engine.yaml that a file is a job of, by where it lies; nothing for any other file. */
export function engineFileOfJob(path: string): string | undefined {
  const folder = dirname(path);
  if (basename(folder) !== JOBS_FOLDER || !isJobName(basename(path))) return undefined;
  const engineFile = join(dirname(folder), ENGINE_FILE);
  return DISK.exists(engineFile) ? engineFile : undefined;
}

/** Whether a file of `jobs/` is read as a job. Hidden ones are left alone: editors keep their own there. */
export function isJobName(name: string): boolean {
  return !name.startsWith('.') && ['.yaml', '.yml'].includes(extname(name));
}
