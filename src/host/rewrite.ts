/** Puts edited texts in the place of the files that they were read from, unless somebody changed those meanwhile. */
import {stat} from 'node:fs/promises';
import {resolve} from 'node:path';
import type {Source} from '../text/source.js';
import {type Failure, systemFailure} from './failure.js';
import {truePath} from './names.js';
import {LIMITS, readText} from './read.js';
import {type Output, writeFiles} from './write.js';

/** A file that was read, and what it is to hold. */
export interface Rewrite {
  /** As it was read. */
  readonly before: Source;
  /** Without a byte-order mark; where the file had one, it keeps it. */
  readonly text: string;
}

export interface Rewritten {
  /** Names of the files that hold their new text now. */
  readonly files: readonly string[];
  readonly failures: readonly Failure[];
}

/** A file that cannot be written is a failure and the others are written all the same. */
export async function rewriteFiles(rewrites: readonly Rewrite[], cwd: string): Promise<Rewritten> {
  const files: string[] = [];
  const failures: Failure[] = [];
  for (const {before, text} of rewrites) {
    const failure = await rewrite(before, text, cwd);
    if (failure === undefined) files.push(before.file);
    else failures.push(failure);
  }
  return {files, failures};
}

async function rewrite(before: Source, text: string, cwd: string): Promise<Failure | undefined> {
  const {file, mark} = before;
  const path = (await truePath(resolve(cwd, file))) ?? resolve(cwd, file);
  const now = await readText(path, file, LIMITS.procedure);
  if (!now.ok) return now;
  // The window that is left is that of one rename; what a person saved before it is seen here.
  if (now.source.text !== before.text || now.source.mark !== mark) {
    const says = 'it changed while it was worked on, and was left as it is';
    return {ok: false, says, hint: 'run the command again', where: {file}};
  }
  try {
    const output: Output = {
      path,
      text: `${mark ? '\uFEFF' : ''}${text}`,
      mode: (await stat(path)).mode & 0o777,
    };
    const written = await writeFiles([output], cwd);
    return written.ok ? undefined : written;
  } catch (error) {
    return systemFailure(error, file);
  }
}
