/** Finds books on disk: a book is a folder with engine.yaml, and its shop is the nearest shop.yaml at or above it. */
import {existsSync} from 'node:fs';
import {readdir, stat} from 'node:fs/promises';
import {dirname, join} from 'node:path';

export const ENGINE_FILE = 'engine.yaml';
export const SHOP_FILE = 'shop.yaml';

/** What a path that the user gave turns out to be. */
export async function kindOfPath(path: string): Promise<'folder' | 'file' | 'missing'> {
  try {
    return (await stat(path)).isDirectory() ? 'folder' : 'file';
  } catch {
    return 'missing';
  }
}

/**
 * Every engine.yaml in a folder and the folders below it, in order of name. Folders whose names begin with a
 * dot, installed packages and symbolic links to folders are passed by.
 */
export async function engineFilesBelow(folder: string): Promise<string[]> {
  const entries = await readdir(folder, {withFileTypes: true});
  const found: string[] = [];
  if (entries.some(({name}) => name === ENGINE_FILE)) found.push(join(folder, ENGINE_FILE));
  const names = entries.filter((entry) => entry.isDirectory()).map(({name}) => name);
  for (const name of names.filter(isSearched).sort()) {
    found.push(...(await engineFilesBelow(join(folder, name))));
  }
  return found;
}

function isSearched(name: string): boolean {
  return !name.startsWith('.') && name !== 'node_modules';
}

/** The engine.yaml of each folder from this one up, nearest first, as far as the shop's or the repository's. */
export function engineFilesAbove(folder: string): string[] {
  return upwards(folder)
    .map((at) => join(at, ENGINE_FILE))
    .filter((file) => existsSync(file));
}

/** The nearest shop.yaml in this folder or above it, or nothing. */
export function shopFileFor(folder: string): string | undefined {
  return upwards(folder)
    .map((at) => join(at, SHOP_FILE))
    .find((file) => existsSync(file));
}

/** The folder and those above it, up to the first that is the root of a repository: nobody's shop lies beyond. */
function upwards(folder: string): string[] {
  const chain = [folder];
  for (let at = folder; !existsSync(join(at, '.git')) && dirname(at) !== at; at = dirname(at)) {
    chain.push(dirname(at));
  }
  return chain;
}
