/** What a Typst template is given to lay out, as plain data: no text of a book or record is ever read as Typst. */
import type {Paper} from '../spec/model.js';

/** What one page template is filled with. */
export interface Print {
  readonly template: 'sheet' | 'cover' | 'report';
  /** Goes in as JSON; its texts are washed on the way (`json.ts`). */
  readonly data: object;
}

/** Parts of an ISO 8601 date for the document's own date; none where it is not a date of the calendar. */
export function documentDate(date: string): {year: number; month: number; day: number} | null {
  const [, year, month, day] = /^(\d{4})-(\d\d)-(\d\d)$/.exec(date) ?? [];
  if (year === undefined || Number.isNaN(Date.parse(`${date}T00:00:00Z`))) return null;
  if (new Date(`${date}T00:00:00Z`).toISOString().slice(0, 10) !== date) return null;
  return {year: Number(year), month: Number(month), day: Number(day)};
}

/** The name by which Typst knows a paper. */
export function paperName(paper: Paper): string {
  return paper === 'A4' ? 'a4' : 'us-letter';
}
