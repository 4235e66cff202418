/** What the entries of a sheet say of themselves, whatever the sheet asks: seals and times. */
import {fill} from '../text/fill.js';
import {minuteUtc} from './figures.js';
import type {SheetRecord} from './record.js';
import {remark} from './remark.js';
import type {Remark} from './report.js';
import {brokenAt} from './seal.js';
import {counted, type ReportWords} from './words.js';

/** Of a sheet that the book does not know as well: what it asked need not be known for this. */
export function chainRemarks(sheet: SheetRecord, words: ReportWords): Remark[] {
  return [...sealRemarks(sheet, words), ...clockRemarks(sheet, words)];
}

function sealRemarks(sheet: SheetRecord, {remarks}: ReportWords): Remark[] {
  const index = brokenAt(sheet);
  const entry = index === undefined ? undefined : sheet.entries[index];
  if (index === undefined || entry === undefined) return [];
  const {box, at} = entry;
  const message = fill(remarks.sealBroken, {number: index + 1, box, at: minuteUtc(at)});
  return [remark('seal-broken', {sheet: sheet.procedure, step: '', message})];
}

function clockRemarks({procedure, entries}: SheetRecord, {remarks}: ReportWords): Remark[] {
  const back = entries.flatMap((entry, index) => {
    const before = entries[index - 1];
    return before && Date.parse(entry.at) < Date.parse(before.at) ? [{entry, before, index}] : [];
  });
  const [first] = back;
  if (first === undefined) return [];
  const message = fill(remarks.clockBack, {
    times: counted(back.length, remarks.times),
    number: first.index + 1,
    at: minuteUtc(first.entry.at),
    before: minuteUtc(first.before.at),
  });
  return [remark('clock-back', {sheet: procedure, step: '', message})];
}
