/** Records as files: what a page gives out, and what it takes in. */
import type {Form} from '../build/form.js';
import type {BuildRecord, SheetRecord} from '../readings/record.js';
import {brokenAt} from '../readings/seal.js';
import {stamped} from '../readings/stamped.js';
import {isRecord} from './shape.js';

/** What this device holds of one build: its sheets of one fingerprint, and the number of its engine. */
export interface Held {
  readonly engineNumber?: string;
  readonly sheets: readonly SheetRecord[];
}

/** The record of this build as a file holds it: all of its sheets that the device has. */
export function recordOf({engine, job}: Form, {engineNumber, sheets}: Held): BuildRecord {
  return {
    record: 1,
    engine,
    ...(job === undefined ? {} : {job}),
    ...(engineNumber === undefined ? {} : {engineNumber}),
    sheets: [...sheets],
  };
}

/** For people to look at too, if they must. */
export function recordText(record: BuildRecord): string {
  return `${JSON.stringify(record, undefined, 2)}\n`;
}

/** `NUMBER.record.json`: by the job, else the engine, else the procedure; fit for any file system. */
export function recordFile({job, procedure}: Form, engineNumber: string | undefined): string {
  const number = [job, engineNumber, procedure].find((one) => one !== undefined && one.trim() !== '') ?? '';
  const name = number
    .trim()
    .replace(/[^\p{L}\p{N}._-]+/gu, '-')
    .replace(/^[.-]+/, '')
    .slice(0, 80);
  return `${name === '' ? 'sheet' : name}.record.json`;
}

/** Why a file is not taken in, and what to say of it. */
export type Unfit =
  | {readonly why: 'not-record'}
  | {readonly why: 'broken'; readonly sheet: string; readonly entry: number}
  | {readonly why: 'other-engine'; readonly engine: string}
  | {readonly why: 'other-job'; readonly number: string; readonly own: string}
  | {readonly why: 'other-revision'; readonly sheet: SheetRecord};

export type Taken = {readonly ok: true; readonly record: BuildRecord} | ({readonly ok: false} & Unfit);

/** The record of a file, if it is one of this very build: engine, job, fingerprint and seals. Never throws. */
export function takenIn(text: string, form: Form, engineNumber: string | undefined): Taken {
  const record = parsed(text);
  if (!isRecord(record)) return {ok: false, why: 'not-record'};
  if (record.engine !== form.engine) return {ok: false, why: 'other-engine', engine: record.engine};
  const numbers = [
    [record.job, form.job],
    [record.engineNumber, engineNumber],
  ] as const;
  for (const [number, own] of numbers) {
    if (number !== undefined && own !== undefined && stamped(number) !== stamped(own))
      return {ok: false, why: 'other-job', number, own};
  }
  const foreign = record.sheets.find(({fingerprint}) => fingerprint !== form.fingerprint);
  if (foreign !== undefined) return {ok: false, why: 'other-revision', sheet: foreign};
  for (const sheet of record.sheets) {
    const entry = brokenAt(sheet);
    if (entry !== undefined) return {ok: false, why: 'broken', sheet: sheet.procedure, entry: entry + 1};
  }
  return {ok: true, record};
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    return undefined;
  }
}
