/** Two records of one sheet made into one: nothing that either says is lost. */
import type {Entry, SheetRecord} from '../readings/record.js';
import {withEntry} from '../readings/seal.js';

/** Both records as one, and what the other brought. */
export interface Merged {
  readonly sheet: SheetRecord;
  /** How many entries of the other are new. */
  readonly taken: number;
  /** Both say something that the other does not: from there on, entries stand in order of time and have new seals. */
  readonly apart: boolean;
}

/**
 * Where one record goes on from the other, the longer one. Where both went on by themselves, what they share stays
 * as it is, and the rest of both follows in order of time. Either way round gives the same entries.
 */
export function merged(mine: SheetRecord, other: SheetRecord): Merged {
  const shared = sharedLength(mine.entries, other.entries);
  const [own, foreign] = [mine.entries.slice(shared), other.entries.slice(shared)];
  const known = new Set(own.map(identity));
  const fresh = foreign.filter((entry) => !known.has(identity(entry)));
  if (fresh.length === 0) return {sheet: mine, taken: 0, apart: false};
  if (own.length === 0) return {sheet: {...mine, entries: other.entries}, taken: fresh.length, apart: false};
  const start: SheetRecord = {...mine, entries: mine.entries.slice(0, shared)};
  const rest = [...own, ...fresh].sort(inTime);
  return {sheet: resealed(start, rest), taken: fresh.length, apart: true};
}

function sharedLength(one: readonly Entry[], other: readonly Entry[]): number {
  const differs = one.findIndex(({seal}, at) => seal !== other[at]?.seal);
  return differs < 0 ? one.length : differs;
}

function resealed(start: SheetRecord, rest: readonly Entry[]): SheetRecord {
  return rest.reduce((sheet, {at, by, box, value}) => withEntry(sheet, {at, by, box, value}), start);
}

function identity({at, by, box, value}: Entry): string {
  return JSON.stringify([at, by, box, value]);
}

/** By time; of the same instant, by what they say, so that the order never hangs on who imports whom. */
function inTime(one: Entry, other: Entry): number {
  const apart = Date.parse(one.at) - Date.parse(other.at);
  if (apart !== 0) return apart;
  const [a, b] = [identity(one), identity(other)];
  return a < b ? -1 : Number(a > b);
}
