/** Dates that the calendar does not have. */

/** What is wrong with a date of the right form, and what to write; undefined where its form is another. */
export function noSuchDay(text: string): {readonly says: string; readonly hint: string} | undefined {
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text) ?? [];
  if (year === undefined || month === undefined || day === undefined) return undefined;
  const name = MONTHS[Number(month) - 1];
  if (name === undefined) {
    return {
      says: `there is no month ${month}`,
      hint: 'write year, month and day: 2026-03-01 is the first of March',
    };
  }
  // Day nought of the next month is the last of this one.
  const last = new Date(Date.UTC(Number(year), Number(month), 0)).getUTCDate();
  if (Number(day) >= 1 && Number(day) <= last) return undefined;
  const says = Number(day) < 1 ? 'there is no day 00' : `${name} ${year} has ${last} days`;
  return {says, hint: `write a day from 01 to ${last}`};
}

const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];
