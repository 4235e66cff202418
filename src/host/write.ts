/**
 * Writes files so that whoever looks sees the old ones or the new ones, each whole: every text goes to a
 * temporary name in the folder where it belongs and is forced to the disk, and only when all are there do
 * they take their names, one right after the other. A run that is killed just then leaves some old and some new.
 */
import {link, mkdir, open, rename, rm, rmdir, stat} from 'node:fs/promises';
import {dirname, join} from 'node:path';
import {type Failure, systemCode, systemFailure} from './failure.js';
import {shownName} from './names.js';
import {passingName, sweepPassing} from './passing.js';

export interface Output {
  readonly path: string;
  readonly text: string | Uint8Array;
  /** Permissions of the file that it takes the place of. */
  readonly mode?: number;
  /** It takes nobody's place: where somebody wrote a file of its name meanwhile, that one stays. */
  readonly isNew?: true;
}

/** Writes all of them or none; folders are made as needed. */
export async function writeFiles(
  outputs: readonly Output[],
  cwd: string = process.cwd(),
): Promise<{readonly ok: true} | Failure> {
  const made: string[] = [];
  const waiting: Waiting[] = [];
  let current = '';
  const swept = new Set<string>();
  try {
    for (const output of outputs) {
      current = output.path;
      const folder = dirname(output.path);
      await makeFolder(folder, made);
      if (!swept.has(folder)) await sweepPassing(folder);
      swept.add(folder);
      // Windows would say only at the renaming that there is no permission, which leads nobody to the folder.
      if (await isFolder(output.path))
        throw Object.assign(new Error('a folder has its name'), {code: 'EISDIR'});
      const temporary = join(folder, passingName());
      waiting.push({temporary, output});
      await writeThrough(temporary, output);
    }
    for (const {temporary, output} of waiting) {
      current = output.path;
      if (!(await put(temporary, output))) {
        await cleanUp(waiting, made);
        const hint = 'see what it is, and name another file';
        return {ok: false, says: 'it is there already', hint, where: {file: shownName(current, cwd)}};
      }
    }
    await Promise.all([...swept].map(settle));
    return {ok: true};
  } catch (error) {
    await cleanUp(waiting, made);
    return systemFailure(error, shownName(current, cwd));
  }
}

interface Waiting {
  readonly temporary: string;
  readonly output: Output;
}

/** Gives the text its name; not where that is taken and should not be. */
async function put(temporary: string, {path, isNew}: Output): Promise<boolean> {
  if (isNew && !(await linked(temporary, path))) return false;
  if (isNew) await rm(temporary, {force: true});
  else await rename(temporary, path);
  return true;
}

/** A link is made only where the name is free, in one go. Some file systems have none: there the last one to write wins. */
async function linked(temporary: string, path: string): Promise<boolean> {
  try {
    await link(temporary, path);
    return true;
  } catch (error) {
    const isTaken = systemCode(error) === 'EEXIST';
    if (!isTaken) await rename(temporary, path);
    return !isTaken;
  }
}

/**
 * Remembers the folders that it made, innermost last, so that a failure can take them away again. Node's own
 * `recursive` calls a read-only disk a file that is not there.
 */
async function makeFolder(folder: string, made: string[]): Promise<void> {
  if (await isFolder(folder)) return;
  await makeFolder(dirname(folder), made);
  try {
    await mkdir(folder);
    made.push(folder);
  } catch (error) {
    // Somebody else may have made it meanwhile.
    if (!(await isFolder(folder))) throw error;
  }
}

async function isFolder(path: string): Promise<boolean> {
  try {
    return (await stat(path)).isDirectory();
  } catch {
    return false;
  }
}

async function writeThrough(path: string, {text, mode}: Output): Promise<void> {
  const handle = await open(path, 'wx');
  try {
    await handle.writeFile(text, 'utf8');
    if (mode !== undefined) await handle.chmod(mode);
    await handle.sync();
  } finally {
    await handle.close();
  }
}

/** Makes the new names last through a power cut. Some systems can't sync a folder; nothing is lost by that. */
async function settle(folder: string): Promise<void> {
  try {
    const handle = await open(folder, 'r');
    try {
      await handle.sync();
    } finally {
      await handle.close();
    }
  } catch {
    // Windows opens no folders, and some file systems sync none.
  }
}

async function cleanUp(waiting: readonly Waiting[], made: readonly string[]): Promise<void> {
  for (const {temporary} of waiting) await rm(temporary, {force: true}).catch(() => undefined);
  for (const folder of [...made].reverse()) await rmdir(folder).catch(() => undefined);
}
