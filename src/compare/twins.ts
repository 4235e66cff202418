/** What is no longer asked for and no longer done is one loss, told of what is asked for, with the steps that went. */
import {placesOf} from '../spec/items.js';
import {grouped} from '../text/grouped.js';
import type {Sides} from './judge.js';
import type {Piece} from './model.js';

/** Joins the two where the steps lost (or won) it at every place of the item. */
export function withoutTwins(pieces: readonly Piece[], {before, now}: Sides): Piece[] {
  const done = grouped(
    pieces.filter(({asks, item, says}) => !asks && item !== undefined && WHOLLY.test(says)),
    keyOf,
  );
  const swallowed = new Set<Piece>();
  const joined = pieces.map((piece) => {
    const twins = piece.asks && piece.item !== undefined ? (done.get(keyOf(piece)) ?? []) : [];
    const item = now.book.spec.items.get(piece.item ?? '') ?? before.book.spec.items.get(piece.item ?? '');
    const places = new Set(twins.map(({place}) => place));
    if (twins.length === 0 || item === undefined || !placesOf(item).every((place) => places.has(place)))
      return piece;
    for (const twin of twins) swallowed.add(twin);
    return {
      ...piece,
      says: `${piece.says}, and ${twins[0]?.says}`,
      before: [...piece.before, ...twins.flatMap((one) => one.before)],
      now: [...piece.now, ...twins.flatMap((one) => one.now)],
    };
  });
  return joined.filter((piece) => !swallowed.has(piece));
}

/** How the steps say that nothing of the kind is left, or that it is all new: the words of `deed-changes.ts`. */
const WHOLLY = /^no longer \S+$|^\S+ now$/;

function keyOf({effect, item, aspect}: Piece): string {
  return `${effect} ${item} ${aspect}`;
}
