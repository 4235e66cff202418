/** Places that an item no longer has, has anew, or calls otherwise. */
import type {Item} from '../spec/model.js';
import type {Sides} from './judge.js';
import type {Effect, Piece} from './model.js';
import {placeNow} from './renames.js';

/** `item` is of the old side and `other` the same item of the new one. */
export function placeChanges(item: Item, other: Item, {renames}: Sides): Piece[] {
  const old = item.at.map((place) => placeNow(renames, other.id, place));
  const gone = old.filter((place) => !other.at.includes(place));
  const come = other.at.filter((place) => !old.includes(place));
  const renamedHere = item.at.filter((place, index) => place !== old[index]);
  const piece = (effect: Effect, says: string): Piece => ({
    effect,
    subject: other.id,
    item: other.id,
    aspect: 'places',
    says,
    before: [{where: item.where, says: `${item.id} in the specification`}],
    now: [{where: other.where, says: `${other.id} in the specification`}],
  });
  return [
    ...(gone.length === 0 ? [] : [piece('weakened', `no longer at ${gone.join(', ')}`)]),
    ...(come.length === 0 ? [] : [piece('strengthened', `now at ${come.join(', ')} too`)]),
    ...(renamedHere.length === 0
      ? []
      : [
          piece(
            'changed',
            `${renamedHere.join(', ')} now called ${renamedHere.map((place) => placeNow(renames, other.id, place)).join(', ')}`,
          ),
        ]),
  ];
}
