/** How wide a text is on paper, about: enough to cut it, or to let it break, where it would run off the page. */

/**
 * In letters. Behind Latin, Greek and Cyrillic come ideographs, about twice as wide as a letter, and whatever no font
 * has: the frame that stands for it is as wide.
 */
export function widthOf(text: string): number {
  let width = 0;
  for (const character of text) width += (character.codePointAt(0) ?? 0) >= LAST_LETTERS ? 2 : 1;
  return width;
}

const LAST_LETTERS = 0x0530;
