/**
 * The keys of a sheet's boxes: what records call them by. They come from the printed number of the step, the turn of
 * the tag's target in it and the place, so that the same texts give the same keys each time.
 */

/** The box that says a step is done, `3b:done`. */
export function doneKey(step: string): string {
  return `${step}:done`;
}

/** A key a place for the `entry`th target of a step's tags, from 1; `3b:1` alone where the item has but one place. */
export function placeKeys(step: string, entry: number, places: readonly string[]): string[] {
  return distinct(places.map((place) => (place === '' ? `${step}:${entry}` : `${step}:${entry}:${place}`)));
}

/** For each pass of a tightening, from 1, a key a fastener or place: `9:1:2:front`. */
export function passKeys(
  step: string,
  entry: number,
  passes: number,
  positions: readonly string[],
): string[][] {
  return Array.from({length: passes}, (_, at) => placeKeys(`${step}:${entry}`, at + 1, positions));
}

/** The signature of the second person, `3b:hold:bottom-end-closed`. */
export function holdKey(step: string, item: string): string {
  return `${step}:hold:${item}`;
}

/** Of the things that the second person looks at before signing. */
export function askKeys(hold: string, asks: readonly string[]): string[] {
  return distinct(asks.map((ask) => `${hold}:${ask}`));
}

/** Of the `at`th line, from 0, of a list of things to lay out. */
export function beforeKey(list: 'tools' | 'consumables' | 'parts' | 'new-parts', at: number): string {
  return `before:${list}:${at + 1}`;
}

/** Of the `at`th section, from 0. */
export function sectionKey(at: number): string {
  return `section:${at + 1}:done`;
}

/** The sign-off of the whole sheet. */
export const CLOSING = {
  complete: 'closing:complete',
  built: 'closing:built',
  checked: 'closing:checked',
} as const;

/** A name that an author repeats gets a number behind it. */
export function distinct(keys: readonly string[]): string[] {
  const counts = new Map<string, number>();
  return keys.map((key) => {
    const count = (counts.get(key) ?? 0) + 1;
    counts.set(key, count);
    return count === 1 ? key : `${key}#${count}`;
  });
}
