/** A scratch git repository of a test's own. */
import {execFileSync} from 'node:child_process';
import {mkdir, rm, writeFile} from 'node:fs/promises';
import {dirname, join} from 'node:path';
import {temporaryFolder} from '../host/temporary.js';

export interface Scratch {
  readonly folder: string;
  git(...words: readonly string[]): string;
  /** Writes files, or takes them away with `undefined`, and commits all; gives the commit. */
  commit(files: {readonly [path: string]: string | undefined}): Promise<string>;
  write(files: {readonly [path: string]: string | undefined}): Promise<void>;
}

export async function scratch(files: {readonly [path: string]: string | Uint8Array}): Promise<Scratch> {
  const folder = await temporaryFolder(files);
  const git = (...words: readonly string[]) =>
    execFileSync('git', ['-C', folder, ...IDENTITY, ...words], {
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'pipe'],
    }).trim();
  const write = async (changes: {readonly [path: string]: string | undefined}) => {
    for (const [path, text] of Object.entries(changes)) {
      const file = join(folder, path);
      if (text === undefined) await rm(file);
      else {
        await mkdir(dirname(file), {recursive: true});
        await writeFile(file, text);
      }
    }
  };
  git('init', '--quiet', '--initial-branch=main');
  git('add', '--all');
  git('commit', '--quiet', '--message=first');
  return {
    folder,
    git,
    write,
    async commit(changes) {
      await write(changes);
      git('add', '--all');
      git('commit', '--quiet', '--allow-empty', '--message=next');
      return git('rev-parse', 'HEAD');
    },
  };
}

/** Nothing of the machine's own settings. */
const IDENTITY = [
  '-c',
  'user.name=Test',
  '-c',
  'user.email=test@example.invalid',
  '-c',
  'commit.gpgsign=false',
  '-c',
  'protocol.file.allow=always',
];
