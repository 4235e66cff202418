/** The picture that a missing one was most likely meant to be: of a near name, or in another folder or form. */
import {readdir} from 'node:fs/promises';
import {join} from 'node:path';
import {nearest} from '../text/nearest.js';
import {liesBelow, truePath} from './names.js';

/** So many names of a folder, and so many folders, are looked at; a near name is a help and no promise. */
const MOST_NAMES = 500;
const MOST_FOLDERS = 20;

const PICTURE = /\.(?:png|jpe?g|gif|webp)$/i;

/**
 * By its path from `folder`, in which it was looked for as `name`: among the pictures there and in the folders of it.
 * Nothing outside the shop's folder is looked at, a link that leads there neither.
 */
export async function nearPicture(
  name: string,
  folder: string,
  shopFolder: string,
): Promise<string | undefined> {
  const pictures = await picturesNear(folder, shopFolder);
  const byLower = new Map(pictures.map((one) => [one.toLowerCase(), one]));
  const asked = name.toLowerCase().replace(/^\.\//, '');
  const near = nearest(asked, byLower.keys());
  return near === undefined ? pictures.find((one) => stemOf(one) === stemOf(asked)) : byLower.get(near);
}

/** The name without its folders and its ending. */
function stemOf(path: string): string {
  return (path.split('/').at(-1) ?? '').replace(/\.[^.]*$/, '').toLowerCase();
}

async function picturesNear(folder: string, shopFolder: string): Promise<string[]> {
  const names = await namesIn(folder, shopFolder);
  const folders = names.filter((name) => !name.includes('.')).slice(0, MOST_FOLDERS);
  const below = await Promise.all(
    folders.map(async (one) =>
      (await namesIn(join(folder, one), shopFolder)).map((name) => `${one}/${name}`),
    ),
  );
  return [...names, ...below.flat()].filter((name) => PICTURE.test(name));
}

/** Sorted; none of what is no folder, cannot be read or lies outside the shop's. */
async function namesIn(folder: string, shopFolder: string): Promise<string[]> {
  const path = await truePath(folder);
  if (path === undefined || (path !== shopFolder && !liesBelow(path, shopFolder))) return [];
  const names = await readdir(path).catch((): string[] => []);
  return names.sort().slice(0, MOST_NAMES);
}
