/**
 * Writes files so that whoever looks sees the old ones or the new ones, each whole: every text goes to a
 * temporary name in the folder where it belongs and is forced to the disk, and only when all are there do
 * they take their names.
 */
import {randomUUID} from 'node:crypto';
import {mkdir, open, rename, rm, rmdir, stat} from 'node:fs/promises';
import {dirname, join} from 'node:path';
import {type Failure, systemFailure} from './failure.js';
import {shownName} from './names.js';

export interface Output {
  readonly path: string;
  readonly text: string | Uint8Array;
  /** Permissions of the file that it takes the place of. */
  readonly mode?: number;
}

/** Writes all of them or none; folders are made as needed. */
export async function writeFiles(
  outputs: readonly Output[],
  cwd: string = process.cwd(),
): Promise<{readonly ok: true} | Failure> {
  const made: string[] = [];
  const waiting: Waiting[] = [];
  let current = '';
  try {
    for (const output of outputs) {
      current = output.path;
      await makeFolder(dirname(output.path), made);
      const blocked = await isFolder(output.path);
      if (blocked) throw Object.assign(new Error('a folder has its name'), {code: 'EISDIR'});
      const temporary = join(dirname(output.path), `.wmark-${randomUUID()}.tmp`);
      waiting.push({temporary, path: output.path});
      await writeThrough(temporary, output);
    }
    for (const {temporary, path} of waiting) {
      current = path;
      await rename(temporary, path);
    }
    await Promise.all([...new Set(outputs.map(({path}) => dirname(path)))].map(settle));
    return {ok: true};
  } catch (error) {
    await cleanUp(waiting, made);
    return systemFailure(error, shownName(current, cwd));
  }
}

interface Waiting {
  readonly temporary: string;
  readonly path: string;
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
