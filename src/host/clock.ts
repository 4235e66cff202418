/** The date, for calibration that has run out. */

/** Today where the command runs, ISO 8601. */
export function today(now: Date = new Date()): string {
  const parts = [now.getFullYear(), now.getMonth() + 1, now.getDate()];
  return parts.map((part) => String(part).padStart(2, '0')).join('-');
}
