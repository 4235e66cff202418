/**
 * The seals of a record's entries: each over the one before it, so that a later change to any of them shows. Apart
 * from the record's shape, so that whoever only adds entries needs nothing to read shapes with.
 */
import {sha256} from '@noble/hashes/sha2.js';
import {bytesToHex, utf8ToBytes} from '@noble/hashes/utils.js';
import type {Entry, SheetRecord} from './record.js';

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
