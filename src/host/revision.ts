/** Finds a revision in the repository that a path lies in, and what changed since. */
import {existsSync} from 'node:fs';
import {dirname, resolve} from 'node:path';
import type {Failure} from './failure.js';
import {git, gitFailure, gitText, isRefusal, type Refusal} from './git.js';
import {shownName, truePath} from './names.js';

export interface Repository {
  readonly ok: true;
  /** True path of its top folder. */
  readonly top: string;
}

/** A commit that is there. */
export interface Revision {
  readonly ok: true;
  /** As the user wrote it. */
  readonly name: string;
  /** All digits of its hash. */
  readonly commit: string;
}

/** The repository of a path, which need not be there any more. */
export async function repositoryOf(path: string, cwd: string): Promise<Repository | Failure> {
  const absolute = resolve(cwd, path);
  const said = await gitText(existingFolder(absolute), ['rev-parse', '--show-toplevel']);
  const file = shownName(absolute, cwd);
  if (typeof said !== 'string') {
    if (!isRefusal(said)) return said;
    const outside = /not a git repository/.test(said.refused);
    return {
      ok: false,
      says: outside ? 'it lies in no git repository, so it has no revisions' : `git says: ${said.refused}`,
      hint: 'compare two folders instead: wmark compare OLD NEW',
      where: {file},
    };
  }
  return {ok: true, top: (await truePath(said)) ?? said};
}

/** The commit that a revision names. */
export async function revisionIn({top}: Repository, name: string): Promise<Revision | Failure> {
  // What begins with a dash would be an option to git.
  const found = name.startsWith('-')
    ? NO_COMMIT
    : await gitText(top, ['rev-parse', '--verify', `${name}^{commit}`]);
  if (typeof found === 'string') return {ok: true, name, commit: found};
  if (!isRefusal(found)) return found;
  const shallow = await gitText(top, ['rev-parse', '--is-shallow-repository']);
  if (shallow === 'true') {
    return {
      ok: false,
      says: `revision ${name} is not in this clone, which is shallow: it holds only the newest commits`,
      hint: 'fetch the rest with `git fetch --unshallow`; in a pipeline, check out with its whole history (fetch-depth: 0)',
    };
  }
  return {
    ok: false,
    says: `there is no revision ${name} in this repository`,
    hint: 'name a branch, a tag or a commit; `git fetch` brings those of others',
  };
}

const NO_COMMIT: Refusal = {ok: false, refused: ''};

/** True paths of the files that differ between the revision and the working tree, those that git does not know among them. */
export async function changedSince(
  {top}: Repository,
  {commit}: Revision,
): Promise<{readonly ok: true; readonly paths: ReadonlySet<string>} | Failure> {
  const diff = await git(top, ['diff', '--name-only', '-z', '--no-renames', commit, '--']);
  const others = await git(top, ['ls-files', '--others', '--exclude-standard', '-z', '--full-name']);
  if (!diff.ok) return gitFailure(diff, top);
  if (!others.ok) return gitFailure(others, top);
  const names = [diff, others].flatMap(({out}) => out.toString('utf8').split('\0'));
  return {ok: true, paths: new Set(names.filter((name) => name !== '').map((name) => resolve(top, name)))};
}

/** The path itself where it is a folder, else the nearest folder above that is there. */
function existingFolder(path: string): string {
  let at = existsSync(path) ? path : dirname(path);
  while (!existsSync(at) && dirname(at) !== at) at = dirname(at);
  return existsSync(`${at}/.`) ? at : dirname(at);
}
