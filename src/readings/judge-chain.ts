/** What the entries of a sheet say of themselves, whatever the sheet asks: seals and times. */
import type {SheetRecord} from './record.js';
import {minuteUtc, remark} from './remark.js';
import type {Remark} from './report.js';
import {brokenAt} from './seal.js';

export function chainRemarks(sheet: SheetRecord): Remark[] {
  return [...sealRemarks(sheet), ...clockRemarks(sheet)];
}

function sealRemarks(sheet: SheetRecord): Remark[] {
  const index = brokenAt(sheet);
  const entry = index === undefined ? undefined : sheet.entries[index];
  if (index === undefined || entry === undefined) return [];
  const where = `the seal of entry ${index + 1} (${entry.box}, ${minuteUtc(entry.at)})`;
  const what = 'this entry, or something before it, was changed, added or taken out after it was written';
  return [
    remark('seal-broken', {sheet: sheet.procedure, step: '', message: `${where} does not fit: ${what}`}),
  ];
}

function clockRemarks({procedure, entries}: SheetRecord): Remark[] {
  const back = entries.flatMap((entry, index) => {
    const before = entries[index - 1];
    return before && Date.parse(entry.at) < Date.parse(before.at) ? [{entry, before, index}] : [];
  });
  const [first] = back;
  if (first === undefined) return [];
  const times = back.length === 1 ? 'once' : `${back.length} times`;
  const example = `entry ${first.index + 1} is of ${minuteUtc(first.entry.at)}, the one before it of ${minuteUtc(first.before.at)}`;
  const message = `the clock goes back ${times}: ${example}; times of this sheet are not to be relied on`;
  return [remark('clock-back', {sheet: procedure, step: '', message})];
}
