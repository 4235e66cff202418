/** A date and a time of day as people write them down, and how long lies between two of them. */

const CLOCK = /^(?:(\d{4})-(\d\d)-(\d\d)[T ]|(\d\d?)\.(\d\d?)\.(\d{4}),? )?(\d\d?):(\d\d)$/;

/**
 * Minutes by the clock on the wall, counted from no zone in particular: `17:05` alone is of the `day`, ISO 8601.
 * Undefined for what is no time. A change to or from summer time between two of them is not seen.
 */
export function clockTime(text: string, day: string): number | undefined {
  const found = CLOCK.exec(text.trim());
  if (found === null) return undefined;
  const [, year, month, date, ownDate, ownMonth, ownYear, hour, minute] = found;
  const two = (part: string | undefined) => (part ?? '').padStart(2, '0');
  const own = ownYear === undefined ? day : `${ownYear}-${two(ownMonth)}-${two(ownDate)}`;
  const on = year === undefined ? own : `${year}-${month}-${date}`;
  const at = Date.parse(`${on}T${two(hour)}:${minute}:00Z`);
  // A day that the calendar has not would be counted on into the next month.
  return Number.isNaN(at) || !new Date(at).toISOString().startsWith(on) ? undefined : at / 60_000;
}

/** `2026-03-01 17:05`. */
export function clockText(minutes: number): string {
  return new Date(minutes * 60_000).toISOString().slice(0, 16).replace('T', ' ');
}

/** `10 min`, `4 h`, `4 h 30 min`; to the nearest minute. */
export function durationText(minutes: number): string {
  const whole = Math.round(minutes);
  const [hours, rest] = [Math.floor(whole / 60), whole % 60];
  return [...(hours > 0 ? [`${hours} h`] : []), ...(rest > 0 || hours === 0 ? [`${rest} min`] : [])].join(
    ' ',
  );
}
