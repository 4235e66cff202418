/** Reads record files from disk. */
import {resolve} from 'node:path';
import type {NamedRecord} from '../readings/builds.js';
import {readRecord} from '../readings/read.js';
import {positionAt} from '../text/source.js';
import type {Failure} from './failure.js';
import {shownName} from './names.js';
import {LIMITS, readText} from './read.js';

export interface ReadRecords {
  readonly records: readonly NamedRecord[];
  /** Of files that can't be read, or are no records, each with its place. */
  readonly failures: readonly Failure[];
}

/** In the order of the paths, each file once. */
export async function readRecords(
  paths: readonly string[],
  cwd: string = process.cwd(),
): Promise<ReadRecords> {
  const records: NamedRecord[] = [];
  const failures: Failure[] = [];
  for (const path of new Set(paths.map((one) => resolve(cwd, one)))) {
    const file = shownName(path, cwd);
    const text = await readText(path, file, LIMITS.record);
    if (!text.ok) {
      failures.push(text);
      continue;
    }
    const read = readRecord(text.source);
    if (read.ok) records.push({file, record: read.record});
    else {
      failures.push(
        ...read.problems.map(({span, says, hint}): Failure => {
          const where = {file, ...positionAt(text.source, span.start)};
          return {ok: false, says, where, ...(hint !== undefined && {hint})};
        }),
      );
    }
  }
  return {records, failures};
}
