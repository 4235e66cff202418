/** A folder of a test's own, filled from a plain object and taken away after the test. */
import {mkdir, mkdtemp, realpath, rm, writeFile} from 'node:fs/promises';
import {tmpdir} from 'node:os';
import {dirname, join} from 'node:path';
import {onTestFinished} from 'vitest';

/** Makes the folder and the files in it, named by their paths; gives its true path. */
export async function temporaryFolder(
  files: {readonly [path: string]: string | Uint8Array} = {},
): Promise<string> {
  const folder = await realpath(await mkdtemp(join(tmpdir(), 'wmark-')));
  onTestFinished(() => rm(folder, {recursive: true, force: true}));
  for (const [path, content] of Object.entries(files)) {
    await mkdir(dirname(join(folder, path)), {recursive: true});
    await writeFile(join(folder, path), content);
  }
  return folder;
}
