/** What passes for initials beside an entry: one rule for every question of the tablet, and for the report. */

/** One to five letters of any script, without blanks; each may have a point or hyphen behind it: `AB`, `J.-M.`. */
const INITIALS = /^(?:\p{L}\p{M}*[.-]{0,2}){1,5}$/u;

export function isInitials(text: string): boolean {
  return INITIALS.test(text);
}
