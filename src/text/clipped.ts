/** Texts of a stranger cut short for a message: a line of one megabyte in quotes would drown what is said of it. */

/** The text in at most so many UTF-16 units; where it is longer, its beginning and an ellipsis. */
export function clipped(text: string, most: number): string {
  if (text.length <= most) return text;
  // Half of a surrogate pair is no character: an emoji goes whole or not at all.
  return `${text.slice(0, most - 1).replace(/[\uD800-\uDBFF]$/, '')}…`;
}
