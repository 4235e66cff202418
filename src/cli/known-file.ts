/** The list of known findings on disk, and how findings of a report are held against it. */
import {existsSync} from 'node:fs';
import {dirname, relative, resolve, sep} from 'node:path';
import {type Candidate, type Known, readKnown, type Sorted, sorted} from '../findings/known.js';
import type {Failure} from '../host/failure.js';
import {shownName} from '../host/names.js';
import {LIMITS, readText} from '../host/read.js';
import {positionAt, type Source} from '../text/source.js';
import type {FindingJson} from './answer.js';

export interface KnownList {
  readonly ok: true;
  readonly source: Source;
  /** Path of its folder, to which the files of its entries are relative. */
  readonly folder: string;
  readonly entries: readonly Known[];
}

export async function knownList(path: string, cwd: string): Promise<KnownList | Failure> {
  const absolute = resolve(cwd, path);
  const read = await readText(absolute, shownName(absolute, cwd), LIMITS.specification);
  if (!read.ok) return read;
  const {known, problems} = readKnown(read.source);
  const [problem] = problems;
  if (problem === undefined)
    return {ok: true, source: read.source, folder: dirname(absolute), entries: known};
  const {line, column} = positionAt(read.source, problem.where.span.start);
  const {says, hint} = problem;
  return {ok: false, says, ...(hint !== undefined && {hint}), where: {file: read.source.file, line, column}};
}

/** A finding with its file as the list in a folder would name it. */
export function candidate(
  finding: FindingJson,
  folder: string,
  cwd: string,
): Candidate & {readonly from: FindingJson} {
  const {name, message, item, place, file} = finding;
  return {
    name,
    message,
    file: relative(folder, resolve(cwd, file)).split(sep).join('/'),
    ...(item !== null && {item}),
    ...(place !== null && {place}),
    from: finding,
  };
}

export function sortedBy(
  findings: readonly FindingJson[],
  {folder, entries}: Pick<KnownList, 'folder' | 'entries'>,
  cwd: string,
): Sorted<Candidate & {readonly from: FindingJson}> {
  return sorted(
    findings.map((finding) => candidate(finding, folder, cwd)),
    entries,
  );
}

/** Whether this run looked at the file of an entry: it is one of those that were judged, or it is gone. */
export function seenBy(files: readonly string[], folder: string, cwd: string): (entry: Known) => boolean {
  const paths = new Set(files.map((file) => resolve(cwd, file)));
  return ({file}) => paths.has(resolve(folder, file)) || !existsSync(resolve(folder, file));
}
