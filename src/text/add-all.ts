/**
 * Adds many to a list. `push(...many)` hands each over as an argument of its own and overflows the stack with some
 * hundred thousand, which a text of a few megabytes can hold.
 */
export function addAll<T>(list: T[], many: Iterable<T>): void {
  for (const one of many) list.push(one);
}
