/** Runs the built command as a user would, in a folder of the test's own. */
import {spawnSync} from 'node:child_process';
import {existsSync} from 'node:fs';
import {fileURLToPath} from 'node:url';

/** The built command; `npm test` builds it first. */
export const COMMAND = fileURLToPath(new URL('../../dist/wmark.js', import.meta.url));

/** Not the user's own. A test works in a new folder, of which nothing is kept there yet. */
const CACHE_HOME = fileURLToPath(new URL('../../.cache/tests', import.meta.url));

export interface Ran {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

export function wmark(folder: string, ...words: readonly string[]): Ran {
  return run(process.execPath, [COMMAND, ...words], folder);
}

/**
 * A shell script with `$WMARK` for the command; it runs apart from this system's mounts where `apart` says so, so
 * that a file system that it mounts is gone when it ends.
 */
export function shell(folder: string, script: string, {apart = false} = {}): Ran {
  const words = ['sh', '-e', '-c', `WMARK='"${process.execPath}" "${COMMAND}"'\n${script}`];
  const [command = 'sh', ...rest] = apart ? [...APART, ...words] : words;
  return run(command, rest, folder);
}

/** A user namespace of its own lets anybody mount, where the system allows it. */
const APART =
  process.getuid?.() === 0 ? ['unshare', '--mount'] : ['unshare', '--user', '--map-root-user', '--mount'];

/** Whether a small file system can be mounted for a test. */
export function canMount(folder: string): boolean {
  return shell(folder, 'mkdir -p try && mount -t tmpfs -o size=64k tmpfs try', {apart: true}).code === 0;
}

function run(command: string, words: readonly string[], folder: string): Ran {
  if (!existsSync(COMMAND)) throw new Error(`${COMMAND} is not there; run \`npm run build\` first`);
  const {status, stdout, stderr, error} = spawnSync(command, words, {
    cwd: folder,
    encoding: 'utf8',
    env: {...process.env, XDG_CACHE_HOME: CACHE_HOME},
    maxBuffer: 64 * 1024 * 1024,
  });
  if (error) return {code: null, out: '', err: error.message};
  return {code: status, out: stdout, err: stderr};
}
