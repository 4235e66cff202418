/** Whether two texts of a procedure say the same: the net under every edit that is made for looks only. */
import type {Procedure} from '../model.js';

/** True where everything that a sheet or a finding is made of is equal: all but spans, spelling and numerals. */
export function sameMeaning(one: Procedure, other: Procedure): boolean {
  return meaning(one) === meaning(other);
}

/** Steps are in the sections too, but a step that is in none would be a fault of ours: both are compared. */
function meaning({front, sections, steps}: Procedure): string {
  return JSON.stringify([front, sections, steps], withoutPlaces);
}

/** Where and how things are written. */
const WRITTEN: ReadonlySet<string> = new Set([
  'span',
  'headSpan',
  'verbSpan',
  'valueSpan',
  'position',
  'raw',
]);

function withoutPlaces(key: string, value: unknown): unknown {
  if (WRITTEN.has(key)) return undefined;
  // Neither the order of clauses nor that of places says anything.
  if ((key === 'clauses' || key === 'places') && Array.isArray(value)) return sorted(value);
  return value;
}

function sorted(values: readonly unknown[]): unknown[] {
  const texts = values.map((value) => ({value, text: JSON.stringify(value, withoutPlaces)}));
  return texts.sort((one, other) => compared(one.text, other.text)).map(({value}) => value);
}

function compared(one: string, other: string): number {
  return one < other ? -1 : one > other ? 1 : 0;
}
