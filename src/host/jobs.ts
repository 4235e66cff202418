/** Reads the jobs of a book from disk: jobs/*.yaml beside its engine.yaml. */
import {join} from 'node:path';
import type {Job} from '../spec/job.js';
import {jobsTogether} from '../spec/jobs.js';
import type {Specification} from '../spec/model.js';
import type {Problem} from '../text/problem.js';
import {type Failure, systemFailureOf} from './failure.js';
import {isJobName, JOBS_FOLDER} from './find.js';
import {liesBelow, shownName} from './names.js';
import {LIMITS} from './read.js';
import type {Reader} from './reader.js';

export interface ReadJobs {
  /** In order of their file names. */
  readonly jobs: readonly Job[];
  /** Of files that can't be read. */
  readonly problems: readonly Problem[];
}

/** The jobs beside the engine.yaml in a folder (a true path). */
export async function jobsBeside(
  folder: string,
  spec: Specification,
  {shopFolder, cwd, reader}: {readonly shopFolder: string; readonly cwd: string; readonly reader: Reader},
): Promise<ReadJobs> {
  const jobs: Job[] = [];
  const problems: Problem[] = [];
  const files = await jobFiles(join(folder, JOBS_FOLDER), cwd, reader.disk);
  if (!files.ok) return {jobs, problems: [problemOf(files)]};
  for (const file of files.paths) {
    const shown = shownName(file, cwd);
    // A link of this name could lead anywhere, so it is the true file that has to lie in the shop's folder.
    const path = await reader.disk.truePath(file);
    if (path === undefined || !liesBelow(path, shopFolder)) {
      problems.push(outside(shown));
      continue;
    }
    const read = await reader.text(path, shown, LIMITS.specification);
    if (read.ok) jobs.push(reader.job(read.source, spec));
    else problems.push(problemOf(read));
  }
  return {jobs: jobsTogether(jobs), problems};
}

async function jobFiles(
  folder: string,
  cwd: string,
  disk: Reader['disk'],
): Promise<{readonly ok: true; readonly paths: readonly string[]} | Failure> {
  const names = await disk.names(folder);
  if (!('code' in names)) {
    return {ok: true, paths: names.filter(isJobName).map((name) => join(folder, name))};
  }
  if (names.code === 'ENOENT' || names.code === 'ENOTDIR') return {ok: true, paths: []};
  return systemFailureOf(names.code, shownName(folder, cwd));
}

/** No other file names a job, so the problem stands in the job's own, which nobody could read. */
function problemOf({says, hint, where}: Failure): Problem {
  const line = where?.line === undefined ? '' : ` (line ${where.line})`;
  return {
    name: 'file-unreadable',
    where: {file: where?.file ?? '', span: {start: 0, end: 0}},
    says: `the job can't be read: ${says}${line}`,
    ...(hint !== undefined && {hint}),
  };
}

function outside(file: string): Problem {
  return {
    name: 'file-unreadable',
    where: {file, span: {start: 0, end: 0}},
    says: "the job can't be read: it leads outside the shop's folder",
    hint: 'put the file itself there',
  };
}
