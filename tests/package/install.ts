/**
 * An empty project with the packed tarball in it, as npm would install it: unpacked, its dependencies beside it, its
 * command in `.bin`. Dependencies are linked from this project, so that no network is needed.
 */
import {spawnSync} from 'node:child_process';
import {chmodSync, mkdirSync, readFileSync, symlinkSync, writeFileSync} from 'node:fs';
import {dirname, join} from 'node:path';
import {fileURLToPath} from 'node:url';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/** What users of the library have of their own. */
const THEIRS = ['remark-parse', 'remark-stringify', 'unified', '@types/node'];

/** Packs what `npm run build` made, and installs it into the folder. */
export function install(folder: string): void {
  writeFileSync(join(folder, 'package.json'), '{"name": "empty", "private": true, "type": "module"}\n');
  const own = join(folder, 'node_modules', 'witness-mark');
  mkdirSync(own, {recursive: true});
  const tarball = packed(folder);
  must(run(folder, 'tar', ['-xzf', tarball, '--strip-components=1', '-C', own]));
  const {dependencies, bin} = JSON.parse(readFileSync(join(own, 'package.json'), 'utf8'));
  for (const name of new Set([...Object.keys(dependencies), ...THEIRS])) link(folder, name);
  for (const [name, path] of Object.entries<string>(bin)) {
    mkdirSync(join(folder, 'node_modules', '.bin'), {recursive: true});
    chmodSync(join(own, path), 0o755);
    symlinkSync(join('..', 'witness-mark', path), join(folder, 'node_modules', '.bin', name));
  }
}

function packed(folder: string): string {
  const {out} = must(run(ROOT, 'npm', ['pack', '--json', '--ignore-scripts', '--pack-destination', folder]));
  const [{filename}] = JSON.parse(out);
  return join(folder, filename);
}

function link(folder: string, name: string): void {
  const path = join(folder, 'node_modules', name);
  mkdirSync(dirname(path), {recursive: true});
  symlinkSync(join(ROOT, 'node_modules', name), path, 'junction');
}

export interface Ran {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

export function run(folder: string, command: string, words: readonly string[]): Ran {
  const {status, stdout, stderr} = spawnSync(command, words, {cwd: folder, encoding: 'utf8'});
  return {code: status, out: stdout, err: stderr};
}

export function node(folder: string, ...words: readonly string[]): Ran {
  return run(folder, process.execPath, words);
}

/** The compiler of this project, over the empty one. */
export function tsc(folder: string): Ran {
  return node(folder, join(ROOT, 'node_modules', 'typescript', 'bin', 'tsc'), '-p', '.');
}

function must(ran: Ran): Ran {
  if (ran.code !== 0) throw new Error(ran.err || ran.out);
  return ran;
}
