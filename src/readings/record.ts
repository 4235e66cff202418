/**
 * The record of a build: who ticked, read and signed what, and when, against the sheets that were followed. Entries
 * are only ever added, each sealed with the one before it (`seal.ts`), so that a later change to any of them shows.
 */
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
