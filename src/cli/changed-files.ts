/** `wmark check --only-changed --since REV`: which files differ from a revision, and the findings that touch them. */
import type {Failure} from '../host/failure.js';
import {shownName, truePath} from '../host/names.js';
import {changedSince, repositoryOf, revisionIn} from '../host/revision.js';
import type {FindingJson} from './answer.js';

interface Changed {
  readonly ok: true;
  readonly names: ReadonlySet<string>;
}

/** The names of the files that differ from a revision, as findings name them. */
export async function changedFiles(
  paths: readonly string[],
  {since, onlyChanged}: {readonly since?: string; readonly onlyChanged?: boolean},
): Promise<Changed | Failure | undefined> {
  if (!onlyChanged && since === undefined) return undefined;
  if (since === undefined) {
    return {ok: false, says: '--only-changed needs a revision to compare with', hint: 'add --since REV'};
  }
  if (!onlyChanged) {
    const says = '--since says with what --only-changed compares, and means nothing without it';
    return {ok: false, says, hint: 'add --only-changed, or leave --since out'};
  }
  const names = new Set<string>();
  const cwd = (await truePath(process.cwd())) ?? process.cwd();
  for (const path of paths) {
    const repository = await repositoryOf(path, cwd);
    if (!repository.ok) return repository;
    const revision = await revisionIn(repository, since);
    if (!revision.ok) return revision;
    const found = await changedSince(repository, revision);
    if (!found.ok) return found;
    for (const file of found.paths) names.add(shownName(file, cwd));
  }
  return {ok: true, names};
}

/** A finding counts where it stands, or where its story runs, in one of the files. */
export function inFiles(findings: readonly FindingJson[], names: ReadonlySet<string>): FindingJson[] {
  return findings.filter(({file, story, related}) =>
    [file, ...[...story, ...related].map((one) => one.file)].some((name) => names.has(name)),
  );
}
