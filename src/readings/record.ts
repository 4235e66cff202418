/**
 * The record of a build: who ticked, read and signed what, and when, against the sheets that were followed. Entries
 * are only ever added, each sealed with the one before it, so that a later change to any of them shows.
 */
import {sha256} from '@noble/hashes/sha2.js';
import {bytesToHex, utf8ToBytes} from '@noble/hashes/utils.js';
import * as z from 'zod';

const HASH = z.string().regex(/^[0-9a-f]{64}$/);

/** The longest text that an entry takes, in UTF-16 units. */
const LONGEST = 2_000;

export const ENTRY = z.strictObject({
  /** When, by the clock of the device: ISO 8601 in UTC. */
  at: z.iso.datetime(),
  /** Initials of whoever did it. */
  by: z.string().min(1).max(40),
  /** Key of the box on the sheet. */
  box: z.string().min(1).max(LONGEST),
  /** A reading or number as written, `done` for a tick or signature; empty for an answer taken back. */
  value: z.string().max(LONGEST),
  /** Over the seal before it and this entry. */
  seal: HASH,
});

export const SHEET_RECORD = z.strictObject({
  /** File name of the procedure without folder and ending. */
  procedure: z.string().min(1).max(LONGEST),
  title: z.string().max(LONGEST),
  revision: z.string().max(LONGEST),
  /** Of the book that the sheet was made from, whole. */
  fingerprint: HASH,
  entries: z.array(ENTRY),
});

export const RECORD = z.strictObject({
  record: z.literal(1),
  /** Id of the engine's specification. */
  engine: z.string().min(1).max(LONGEST),
  job: z.string().max(LONGEST).optional(),
  /** As stamped on the engine. */
  engineNumber: z.string().max(LONGEST).optional(),
  sheets: z.array(SHEET_RECORD),
});

export type Entry = z.infer<typeof ENTRY>;
export type SheetRecord = z.infer<typeof SHEET_RECORD>;
export type BuildRecord = z.infer<typeof RECORD>;

/** The sheet's record with one entry more. */
export function withEntry(sheet: SheetRecord, entry: Omit<Entry, 'seal'>): SheetRecord {
  const last = sheet.entries.at(-1)?.seal ?? opening(sheet);
  return {...sheet, entries: [...sheet.entries, {...entry, seal: sealOf(entry, last)}]};
}

/**
 * Index of the first entry whose seal does not follow from what stands before it; undefined where all do. Whoever
 * rewrites every later seal as well goes unnoticed: the chain shows slips and careless edits, not forgery.
 */
export function brokenAt(sheet: SheetRecord): number | undefined {
  let last = opening(sheet);
  for (const [index, entry] of sheet.entries.entries()) {
    if (entry.seal !== sealOf(entry, last)) return index;
    last = entry.seal;
  }
  return undefined;
}

/** What the first entry is sealed with: the sheet that was followed. */
function opening({procedure, fingerprint}: SheetRecord): string {
  return hash([procedure, fingerprint]);
}

function sealOf({at, by, box, value}: Omit<Entry, 'seal'>, last: string): string {
  return hash([last, at, by, box, value]);
}

/** SHA-256 (FIPS 180-4) over the JSON of the texts, which no two lists share. */
function hash(texts: readonly string[]): string {
  return bytesToHex(sha256(utf8ToBytes(JSON.stringify(texts))));
}
