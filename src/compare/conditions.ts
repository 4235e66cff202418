/** Conditions of a deed, which are held together as words that name the item and places of a reading. */
import {idNow, placeNow, type Renames} from './renames.js';

/** `only where squish[left] is under`; of an option, `only with electric-starter`. */
const READING = /^only where ([^ [\]]+)(?:\[([^\]]*)\])? is (\w+)$/;

/** The condition as the new side would write it. */
export function renamedCondition(words: string, renames: Renames): string {
  const [, id, places, is] = READING.exec(words) ?? [];
  if (id === undefined)
    return words
      .split(' ')
      .map((word) => idNow(renames, word))
      .join(' ');
  const now = idNow(renames, id);
  const at =
    places === undefined
      ? ''
      : `[${named(places)
          .map((one) => placeNow(renames, now, one))
          .join(', ')}]`;
  return `only where ${now}${at} is ${is}`;
}

/** `only where x is over` is a part of `only where x is out`, `only where x[left] is out` one of the same. */
export function isPartOf(words: string, whole: string): boolean {
  const [, id, places, is] = READING.exec(words) ?? [];
  const [, of, all, was] = READING.exec(whole) ?? [];
  if (id === undefined || id !== of) return false;
  const sided = is === was || (was === 'out' && (is === 'over' || is === 'under'));
  return sided && isWithin(places, all);
}

/** Of no places named, all are meant. */
function isWithin(places: string | undefined, all: string | undefined): boolean {
  if (all === undefined) return true;
  return places !== undefined && named(places).every((one) => named(all).includes(one));
}

function named(places: string): string[] {
  return places.split(', ');
}
