/**
 * Whether a value has the shape of a record. The same as `RECORD` of `src/readings` says, written out by hand: the
 * library behind that one weighs more than this whole script. A test holds the two against each other.
 */
import type {BuildRecord, Entry, SheetRecord} from '../readings/record.js';

export function isRecord(value: unknown): value is BuildRecord {
  return (
    isObject(value) &&
    hasOnly(value, ['record', 'engine', 'job', 'engineNumber', 'sheets']) &&
    value.record === 1 &&
    isText(value.engine, 1) &&
    isTextOrMissing(value, 'job') &&
    isTextOrMissing(value, 'engineNumber') &&
    Array.isArray(value.sheets) &&
    value.sheets.every(isSheetRecord)
  );
}

/** The longest text of a record, in UTF-16 units, and the longest initials. */
export const LONGEST = 2_000;
export const LONGEST_INITIALS = 40;

export function isSheetRecord(value: unknown): value is SheetRecord {
  return (
    isObject(value) &&
    hasOnly(value, ['procedure', 'title', 'revision', 'fingerprint', 'entries']) &&
    isText(value.procedure, 1) &&
    isText(value.title, 0) &&
    isText(value.revision, 0) &&
    isHash(value.fingerprint) &&
    Array.isArray(value.entries) &&
    value.entries.every(isEntry)
  );
}

function isEntry(value: unknown): value is Entry {
  return (
    isObject(value) &&
    hasOnly(value, ['at', 'by', 'box', 'value', 'seal']) &&
    isTime(value.at) &&
    isText(value.by, 1, LONGEST_INITIALS) &&
    isText(value.box, 1) &&
    isText(value.value, 0) &&
    isHash(value.seal)
  );
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function hasOnly(value: object, keys: readonly string[]): boolean {
  return Object.keys(value).every((key) => keys.includes(key));
}

function isText(value: unknown, least: number, most = LONGEST): value is string {
  return typeof value === 'string' && value.length >= least && value.length <= most;
}

function isTextOrMissing(value: Readonly<Record<string, unknown>>, key: string): boolean {
  return value[key] === undefined || isText(value[key], 0);
}

function isHash(value: unknown): boolean {
  return typeof value === 'string' && /^[0-9a-f]{64}$/.test(value);
}

const TIME = /^(\d{4}-\d\d-\d\d)T(?:[01]\d|2[0-3]):[0-5]\d:[0-5]\d(?:\.\d+)?Z$/;

/** ISO 8601 in UTC, on a day that the calendar has. */
function isTime(value: unknown): boolean {
  const day = typeof value === 'string' ? TIME.exec(value)?.[1] : undefined;
  if (day === undefined) return false;
  const start = new Date(`${day}T00:00:00Z`);
  return !Number.isNaN(start.getTime()) && start.toISOString().startsWith(day);
}
