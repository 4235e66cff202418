/** What stands at the head and foot of every page, cut to the room that there is. */

/** What every page says of the whole: a name, which is cut where it must be, and what follows it, which never is. */
export interface Running {
  readonly left: {readonly name: string; readonly rest: string};
  readonly right: {readonly name: string; readonly rest: string};
  readonly engineNumber?: string;
}

/**
 * How many characters the running head and the engine's number on the foot have room for in the widest of the fonts:
 * a margin box does not grow with its text, it lets it run off the page.
 */
const HEAD = 82;
export const ENGINE_NUMBER = 18;
/** The name at the right is left at least this much. */
const LEAST = 20;

/** Both sides of the running head, each name cut where the other leaves it no room. */
export function fitted({left, right}: Running): {readonly left: string; readonly right: string} {
  const room = HEAD - widthOf(left.rest) - widthOf(right.rest);
  const forRight = Math.max(LEAST, room - widthOf(left.name));
  const rightName = shortened(right.name, forRight);
  const leftName = shortened(left.name, Math.max(LEAST, room - widthOf(rightName)));
  return {left: leftName + left.rest, right: rightName + right.rest};
}

/** A text cut to a width in characters. */
export function shortened(text: string, room: number): string {
  if (widthOf(text) <= room) return text;
  let kept = '';
  for (const character of text) {
    if (widthOf(kept) + widthOf(character) >= room) break;
    kept += character;
  }
  return `${kept.trimEnd()}…`;
}

/** Ideographs and their like, from U+1100 on, are about twice as wide as letters. */
function widthOf(text: string): number {
  let width = 0;
  for (const character of text) width += (character.codePointAt(0) ?? 0) >= 0x1100 ? 2 : 1;
  return width;
}
