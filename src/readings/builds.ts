/**
 * Records put together to builds. A sheet is exported by itself, more than once while it is followed, so that one
 * engine has several files.
 */
import {fill} from '../text/fill.js';
import {grouped} from '../text/grouped.js';
import type {BuildRecord, SheetRecord} from './record.js';
import {remark} from './remark.js';
import type {Remark} from './report.js';
import {stamped} from './stamped.js';
import type {ReportWords} from './words.js';

/** A record with the file that it came from, by which a person finds it again. */
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
  /** Records of one sheet that go different ways, of which one is judged. */
  readonly apart: readonly Apart[];
}

/** Two records of one sheet of which neither says all that the other does. */
export interface Apart {
  readonly sheet: string;
  /** The file whose record is judged. */
  readonly judged: string;
  readonly other: string;
}

/** Records of the same engine and job are one build; without a job, of the same stamped number; else each its own. */
export function buildsOf(records: readonly NamedRecord[]): Build[] {
  return [...grouped(records, keyOf).values()].map(together);
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
  return job || engineNumber || (files[0] ?? '');
}

function keyOf({file, record: {engine, job, engineNumber}}: NamedRecord): string {
  if (job) return JSON.stringify([engine, 'job', stamped(job)]);
  return JSON.stringify(engineNumber ? [engine, 'number', stamped(engineNumber)] : [engine, 'file', file]);
}

function together(group: readonly NamedRecord[]): Build {
  const all = group.flatMap(({file, record}) => record.sheets.map((sheet): Export => ({file, sheet})));
  const exports = grouped(all, ({sheet}) => JSON.stringify([sheet.procedure, sheet.fingerprint]));
  const fullest = [...exports.values()].map((list) => ({list, best: list.reduce(fuller)}));
  const record = group[0]?.record;
  const number = group.map((one) => one.record.engineNumber).find((one) => one !== undefined);
  return {
    engine: record?.engine ?? '',
    ...(record?.job !== undefined && {job: record.job}),
    ...(number !== undefined && {engineNumber: number}),
    files: [...new Set(group.map(({file}) => file))],
    sheets: fullest.map(({best}) => best.sheet),
    apart: fullest.flatMap(({list, best}) =>
      list
        .filter((one) => !holds(best.sheet, one.sheet))
        .map(({file}) => ({sheet: best.sheet.procedure, judged: best.file, other: file})),
    ),
  };
}

interface Export {
  readonly file: string;
  readonly sheet: SheetRecord;
}

function fuller(one: Export, other: Export): Export {
  return other.sheet.entries.length > one.sheet.entries.length ? other : one;
}

/**
 * Whether one says all that the other says: an earlier export says no more than a later one, nor do the records of
 * two tablets say more than the one in which they were put together and sealed anew.
 */
function holds(more: SheetRecord, fewer: SheetRecord): boolean {
  if (more === fewer) return true;
  const said = new Set(more.entries.map(identity));
  return fewer.entries.every((entry) => said.has(identity(entry)));
}

function identity({at, by, box, value}: SheetRecord['entries'][number]): string {
  return JSON.stringify([at, by, box, value]);
}

/** Which file was judged, and which was not. */
export function differRemark({sheet, ...files}: Apart, {remarks}: ReportWords): Remark {
  return remark('records-differ', {sheet, step: '', message: fill(remarks.recordsDiffer, files)});
}
