/** The names under which files are shown to people, and the true places behind them. */
import {realpath} from 'node:fs/promises';
import {dirname, isAbsolute, relative, resolve, sep} from 'node:path';

/** Relative to the working folder for what lies in it, so that an editor finds it; absolute otherwise. */
export function shownName(path: string, cwd: string): string {
  const absolute = resolve(cwd, path);
  const short = relative(cwd, absolute);
  const outside = short === '..' || short.startsWith(`..${sep}`) || isAbsolute(short);
  return (outside ? absolute : short || '.').split(sep).join('/');
}

/** The path with every symbolic link followed and, where the system folds case, in its true spelling. */
export async function truePath(path: string): Promise<string | undefined> {
  try {
    return await realpath(path);
  } catch {
    return undefined;
  }
}

/** Whether a true path lies somewhere below a true folder. */
export function liesBelow(path: string, folder: string): boolean {
  const way = relative(folder, path);
  return way !== '' && way !== '..' && !way.startsWith(`..${sep}`) && !isAbsolute(way);
}

/** Whether a symbolic link on the way from a folder down to a path below it, which need not be there, leads out of it. */
export async function leadsOut(path: string, folder: string): Promise<boolean> {
  const home = await truePath(folder);
  if (home === undefined) return false;
  for (let at = path; at !== folder && at !== dirname(at); at = dirname(at)) {
    const real = await truePath(at);
    if (real !== undefined) return !liesBelow(real, home);
  }
  return false;
}
