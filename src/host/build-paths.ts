/**
 * From the names under `build:` and `extends:` to true files on disk. A book may reach anywhere below the
 * folder of its shop.yaml and nowhere else, whatever links or dots a name is made of.
 */
import {basename, dirname, isAbsolute, resolve} from 'node:path';
import type {Located} from '../spec/model.js';
import {nearest} from '../text/nearest.js';
import type {Problem} from '../text/problem.js';
import type {Disk} from './disk.js';
import {liesBelow} from './names.js';

/** Where names are looked up: true paths of the folder of the file that holds the name, and of the shop. */
export interface Bounds {
  readonly folder: string;
  readonly shopFolder: string;
}

/** What names ask of the disk. */
type Look = Pick<Disk, 'truePath' | 'kind' | 'names'>;

/** The true path of the file that a name stands for, or what is wrong with the name. */
export async function fileNamed(
  name: Located<string>,
  bounds: Bounds,
  disk: Look,
): Promise<string | Problem> {
  const written = name.value;
  if (isAbsolute(written)) {
    return unreadable(
      name,
      `${written} is a path from the root of one disk`,
      'write it relative to this file',
    );
  }
  const path = resolve(bounds.folder, written);
  const real = await disk.truePath(path);
  if (real === undefined) return missing(name, path, bounds, disk);
  if (!liesBelow(real, bounds.shopFolder)) return outside(name);
  const kind = await disk.kind(real);
  // It may have gone since its true path was asked for.
  if (kind === 'missing') return missing(name, path, bounds, disk);
  if (kind !== 'file') return unreadable(name, `${written} is not a file`, 'name a file');
  return real;
}

/** The true paths of the procedures, in build order, each once; what is wrong with the other names, and which of them led to none. */
export async function proceduresNamed(
  build: readonly Located<string>[],
  {boundsOf, specification, disk}: NamesLookedUp,
): Promise<{
  readonly paths: readonly NamedFile[];
  readonly problems: readonly Problem[];
  readonly unread: readonly Located<string>[];
}> {
  const paths = new Map<string, Located<string>>();
  const unread: Located<string>[] = [];
  const problems: Problem[] = [];
  for (const name of build) {
    const found = await fileNamed(name, boundsOf(name), disk);
    const ofSpecification = typeof found === 'string' && specification.has(found);
    if (typeof found !== 'string' || ofSpecification) {
      problems.push(notWhole(typeof found === 'string' ? itself(name) : found));
      unread.push(name);
    } else if (paths.has(found)) problems.push(again(name, paths.get(found)));
    else paths.set(found, name);
  }
  return {paths: [...paths].map(([path, name]) => ({path, name})), problems, unread};
}

/** How the names of a `build:` are looked up. */
interface NamesLookedUp {
  readonly boundsOf: (name: Located<string>) => Bounds;
  /** True paths of the files of the specification itself. */
  readonly specification: ReadonlySet<string>;
  readonly disk: Look;
}

/** A file on disk, and the name in engine.yaml that leads to it. */
export interface NamedFile {
  readonly path: string;
  readonly name: Located<string>;
}

/** A problem at the name of a file that can't be used. */
export function unreadable(name: Located<string>, says: string, hint: string): Problem {
  return {name: 'file-unreadable', where: name.where, says, hint};
}

/** Of a procedure, with what it means for the rest of the check. */
export function notWhole(problem: Problem): Problem {
  const says = 'until it is read, the book is not judged whole: nothing is missed that this file may do';
  return {...problem, related: [{where: problem.where, says}]};
}

/**
 * Says nothing of what lies outside the shop's folder, not even whether it is there: a report may be public, and a
 * stranger's book must not be a way to ask what files a machine has.
 */
async function missing(
  name: Located<string>,
  path: string,
  {shopFolder}: Bounds,
  disk: Look,
): Promise<Problem> {
  const folder = await disk.truePath(dirname(path));
  const inside = folder === shopFolder || liesBelow(folder ?? path, shopFolder);
  if (!inside) return outside(name);
  const names = folder === undefined ? [] : await disk.names(folder);
  const meant = 'code' in names ? undefined : nearest(basename(path), names);
  const hint = meant ? `did you mean ${meant}?` : 'write it, or take the name out';
  return unreadable(name, `there is no file ${name.value}`, hint);
}

function outside(name: Located<string>): Problem {
  const hint = 'a book may name files below the folder of its shop.yaml only';
  return unreadable(name, `${name.value} lies outside the shop's folder`, hint);
}

function itself(name: Located<string>): Problem {
  return unreadable(name, `${name.value} is the specification itself`, 'name a procedure');
}

function again(name: Located<string>, first: Located<string> | undefined): Problem {
  const problem = unreadable(name, `${name.value} is named a second time`, 'name each procedure once');
  return first ? {...problem, related: [{where: first.where, says: 'the first time'}]} : problem;
}
