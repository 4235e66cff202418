/** Numbers as they are stamped and written down. */

/** What two people write of one stamped number comes to the same: without blanks and case. */
export function stamped(number: string): string {
  return number.normalize('NFKC').replace(/\s/g, '').toUpperCase();
}
