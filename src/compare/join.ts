/**
 * From pieces to changes: what several judges or several places say of one thing becomes one change, a finding that
 * the steps brought goes to the change that explains it or becomes one of its own, and all are put in order.
 */
import type {Remark} from '../build/found.js';
import type {Finding} from '../findings/model.js';
import {itemAt} from '../findings/phrase.js';
import {placesOf} from '../spec/items.js';
import {grouped} from '../text/grouped.js';
import {withFindings} from './explain.js';
import type {Sides} from './judge.js';
import {type Change, EFFECTS, type Piece, type Side} from './model.js';
import {itemBefore} from './renames.js';
import {requiredOf} from './required.js';
import {isOfWords} from './reworded.js';
import {withoutTwins} from './twins.js';
import {LOST_WORD} from './words.js';

/**
 * The changes of a comparison, in the order in which they are told. `rewordings` are what is left of the steps, of which
 * those are dropped that a graver change tells already; `found` are the findings that the steps brought.
 */
export function joined(
  pieces: readonly Piece[],
  rewordings: readonly Piece[],
  found: readonly Finding[],
  sides: Sides,
): Change[] {
  const explained = withFindings(withoutTwins(withoutEchoes(pieces), sides), found, sides);
  const serious = explained.filter(({effect}) => effect !== 'reworded');
  const told = new Set(serious.flatMap(({before, now}) => [...before, ...now].map(lineOf)));
  // A step of which something graver is said need not be called new or dropped too; its words are told all the same.
  const rest = rewordings.filter(
    (piece) => isOfWords(piece) || ![...piece.before, ...piece.now].some((one) => told.has(lineOf(one))),
  );
  const alike = grouped([...explained, ...rest], ({effect, subject, aspect, says}) =>
    JSON.stringify([effect, subject, aspect, says]),
  );
  return [...alike.values()].map((group) => changeOf(group, sides)).sort(inOrder(sides));
}

/** The step that a remark stands in is what its words begin with, up to the colon. */
function lineOf({where, says}: Remark): string {
  return `${where.file} ${says.split(':')[0]}`;
}

/** That a fact no longer holds at the end is news only where the step that went was not told already. */
function withoutEchoes(pieces: readonly Piece[]): Piece[] {
  const keyOf = ({item, place, aspect}: Piece) => `${item} ${place} ${aspect}`;
  const seen = new Set<string>();
  return pieces.filter((piece) => {
    if (piece.effect !== 'weakened' || piece.item === undefined) return true;
    const isEnd = piece.says.endsWith('at the end of the build');
    if (isEnd && seen.has(keyOf(piece))) return false;
    seen.add(keyOf(piece));
    return true;
  });
}

function changeOf(group: readonly Piece[], sides: Sides): Change {
  const [first] = group;
  if (first === undefined) throw new Error('a change of nothing');
  const {effect, item, aspect, says} = first;
  const spec = sides.now.book.spec.items.has(item ?? '') ? sides.now.book.spec : sides.before.book.spec;
  const known = item === undefined ? undefined : spec.items.get(item);
  const places = group.flatMap(({place}) => (place === undefined ? [] : place.split(', ')));
  const subject =
    known === undefined ? first.subject : itemAt(known, places.length === 0 ? placesOf(known) : places);
  const side = (which: 'before' | 'now'): Side => ({
    ...(item !== undefined && {required: required(item, aspect, sides, which)}),
    at: once(group.flatMap((piece) => piece[which])),
  });
  return {
    effect,
    subject,
    ...(item !== undefined && {item}),
    aspect,
    message: `${subject}: ${says}`,
    before: side('before'),
    now: side('now'),
    brings: [...new Set(group.flatMap(({brings = []}) => brings))],
  };
}

function required(
  item: string,
  aspect: string,
  {before, now, renames}: Sides,
  which: 'before' | 'now',
): string {
  if (which === 'now') return requiredOf(now.book.spec, item, aspect);
  return requiredOf(before.book.spec, itemBefore(before.book.spec, renames, item)?.id ?? item, aspect);
}

/** What is said of a step twice, of its tag and of a clause in it, is said once. */
function once(remarks: readonly Remark[]): Remark[] {
  const seen = new Map<string, Remark>();
  for (const one of remarks) {
    const key = `${one.where.file} ${one.says}`;
    if (!seen.has(key)) seen.set(key, one);
  }
  return [...seen.values()];
}

/** Weakened first; within an effect by file of the build and place in it, the specification last. */
function inOrder({before, now}: Sides): (a: Change, b: Change) => number {
  const files = [now, before].flatMap(({book}) => [
    ...book.procedures.map(({source}) => source.file),
    ...book.spec.files.keys(),
  ]);
  const rank = new Map([...files].reverse().map((file, index) => [file, files.length - index]));
  const at = ({now: fresh, before: old}: Change) => (fresh.at[0] ?? old.at[0])?.where;
  return (a, b) =>
    EFFECTS.indexOf(a.effect) - EFFECTS.indexOf(b.effect) ||
    lostFirst(a) - lostFirst(b) ||
    (rank.get(at(a)?.file ?? '') ?? 0) - (rank.get(at(b)?.file ?? '') ?? 0) ||
    (at(a)?.span.start ?? 0) - (at(b)?.span.start ?? 0) ||
    (a.message < b.message ? -1 : a.message > b.message ? 1 : 0);
}

/** A text that lost a "never" is read before others that were worded anew. */
function lostFirst({aspect}: Change): number {
  return aspect === LOST_WORD ? 0 : 1;
}
