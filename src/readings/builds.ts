/**
 * Records put together to builds. A sheet is exported by itself, more than once while it is followed, so that one
 * engine has several files.
 */
import type {BuildRecord, SheetRecord} from './record.js';
import {remark} from './remark.js';
import type {Remark} from './report.js';

export interface NamedRecord {
  readonly file: string;
  readonly record: BuildRecord;
}

/** Everything on record of one engine on the stand. */
export interface Build {
  readonly engine: string;
  readonly job?: string;
  readonly engineNumber?: string;
  readonly files: readonly string[];
  /** One for each sheet that was followed, in the order in which they came. */
  readonly sheets: readonly SheetRecord[];
  readonly remarks: readonly Remark[];
}

/** Records of the same engine and job are one build; without a job, of the same stamped number; else each its own. */
export function buildsOf(records: readonly NamedRecord[]): Build[] {
  const groups = new Map<string, NamedRecord[]>();
  for (const one of records) {
    const key = keyOf(one);
    const group = groups.get(key);
    if (group) group.push(one);
    else groups.set(key, [one]);
  }
  return [...groups.values()].map(together);
}

/** What a build is called beside others: its job, else the number of the engine, else the file. */
export function nameOfBuild({
  job,
  engineNumber,
  files,
}: Pick<Build, 'files'> & {
  readonly job?: string | undefined;
  readonly engineNumber?: string | undefined;
}): string {
  return job ?? engineNumber ?? files[0] ?? '';
}

function keyOf({file, record: {engine, job, engineNumber}}: NamedRecord): string {
  if (job !== undefined) return JSON.stringify([engine, 'job', job]);
  return JSON.stringify(engineNumber ? [engine, 'number', engineNumber] : [engine, 'file', file]);
}

function together(group: readonly NamedRecord[]): Build {
  const sheets = new Map<string, {readonly file: string; readonly sheet: SheetRecord}>();
  const remarks: Remark[] = [];
  for (const {file, record} of group) {
    for (const sheet of record.sheets) {
      const key = JSON.stringify([sheet.procedure, sheet.fingerprint]);
      const known = sheets.get(key);
      const fuller = known === undefined || sheet.entries.length > known.sheet.entries.length;
      if (known && !agree(known.sheet, sheet)) remarks.push(apart(sheet.procedure, known.file, file));
      if (fuller) sheets.set(key, {file, sheet});
    }
  }
  const record = group[0]?.record;
  const number = group.map((one) => one.record.engineNumber).find((one) => one !== undefined);
  return {
    engine: record?.engine ?? '',
    ...(record?.job !== undefined && {job: record.job}),
    ...(number !== undefined && {engineNumber: number}),
    files: [...new Set(group.map(({file}) => file))],
    sheets: [...sheets.values()].map(({sheet}) => sheet),
    remarks,
  };
}

/** An earlier export is the beginning of a later one. */
function agree(one: SheetRecord, other: SheetRecord): boolean {
  const shared = Math.min(one.entries.length, other.entries.length);
  return one.entries
    .slice(0, shared)
    .every((entry, index) => JSON.stringify(values(entry)) === JSON.stringify(values(other.entries[index])));
}

function values(entry: SheetRecord['entries'][number] | undefined) {
  return entry && [entry.at, entry.by, entry.box, entry.value, entry.seal];
}

function apart(sheet: string, one: string, other: string): Remark {
  const says = `two records of this sheet go different ways: ${one} and ${other}`;
  const message = `${says}; the fuller one is judged, and what only the other one holds is not`;
  return remark('records-differ', {sheet, step: '', message});
}
