/** What the steps no longer do, do anew, or do under another condition. */
import {idsOf} from '../procedure/values.js';
import type {Verb} from '../procedure/verbs.js';
import {clauseChanges} from './clause-changes.js';
import {isPartOf, renamedCondition} from './conditions.js';
import type {Deed} from './deeds.js';
import {DONE, type Judge, type Sides} from './judge.js';
import type {Effect, Piece} from './model.js';
import {tagRemark} from './remarks.js';
import {idNow, itemBefore, placeNow} from './renames.js';

export const deedChanges: Judge = (sides) => {
  const {kept, gone, come} = sides.deeds;
  const slackened = new Set(
    come.filter(({verb}) => verb === 'loosen').map(({item, place}) => `${item} ${place}`),
  );
  return [
    // What went with its item is told of the item.
    ...gone.filter((deed) => isStill(deed, sides)).map((deed) => gonePiece(deed, sides)),
    ...come.filter((deed) => wasAlready(deed, sides)).map((deed) => comePiece(deed, slackened, sides)),
    ...kept.flatMap(([before, now]) => [
      ...conditionChange(before, now, sides),
      ...clauseChanges(before, now, sides),
    ]),
  ];
};

/** A way back that stands in no branch is about no item. */
function named(item: string): {readonly subject: string; readonly item?: string} {
  return item === '' ? {subject: 'way back'} : {subject: item, item};
}

function isStill(deed: Deed, {now, renames}: Sides): boolean {
  const id = idNow(renames, deed.item);
  const item = now.book.spec.items.get(id);
  if (item === undefined) return deed.item === '';
  const place = placeNow(renames, id, deed.place);
  return place === '' || item.at.includes(place);
}

/** What is done to an item, or at a place, that is new is told of the item. */
function wasAlready({item, place}: Deed, {before, renames}: Sides): boolean {
  const old = itemBefore(before.book.spec, renames, item);
  if (old === undefined) return item === '';
  return place === '' || old.at.some((name) => placeNow(renames, item, name) === place);
}

function gonePiece(deed: Deed, sides: Sides): Piece {
  const id = idNow(sides.renames, deed.item);
  const place = placeNow(sides.renames, id, deed.place);
  const left = sides.now.deeds.filter(
    (one) => one.verb === deed.verb && one.item === id && one.place === place,
  );
  return {
    effect: goneEffect(deed, left, sides),
    ...named(id),
    place,
    aspect: deed.verb,
    says: goneSays(deed, left),
    before: [tagRemark(deed)],
    now: left.map((one) => tagRemark(one)),
  };
}

/** One of two locks is told by its name: the other that is left does not stand in for it. */
function goneSays({verb, tag}: Deed, left: readonly Deed[]): string {
  const word = DONE[verb] ?? verb;
  if (left.length === 0) return `no longer ${word}`;
  const others = new Set(left.flatMap((one) => idsOf(one.tag, 'with')));
  const lost = idsOf(tag, 'with').filter((id) => !others.has(id));
  return verb === 'lock' && lost.length > 0
    ? `no longer ${word} with ${lost.join(' and ')}`
    : `${word} at one step fewer`;
}

/** Verbs of a trial fit: one time fewer is no loss while the thing is still done. */
const TRIAL = new Set(['install', 'torque', 'remove', 'loosen']);

/** What is gone but done at another step too is still lost for the time between, unless it was part of a trial fit. */
function goneEffect(deed: Deed, left: readonly Deed[], sides: Sides): Effect {
  if (deed.verb === 'remove' && left.length === 0 && isStillPutIn(deed, sides)) return 'weakened';
  if (deed.verb === 'remove' || deed.verb === 'loosen') return 'changed';
  const lasts = left.some(({when}) => when.length <= deed.when.length);
  return TRIAL.has(deed.verb) && lasts && (deed.verb === 'install' || isTrialDropped(deed, sides))
    ? 'changed'
    : 'weakened';
}

/** A temporary part that goes in as before has to come out again. */
function isStillPutIn(deed: Deed, {now, renames}: Sides): boolean {
  const id = idNow(renames, deed.item);
  const item = now.book.spec.items.get(id);
  const place = placeNow(renames, id, deed.place);
  const isIn = now.deeds.some((one) => one.verb === 'install' && one.item === id && one.place === place);
  return item?.kind === 'part' && item.temporary && isIn;
}

/** The fastener was slackened, or what it holds taken off, and that is gone too: the whole trial went. */
function isTrialDropped({item, place}: Deed, {before, deeds}: Sides): boolean {
  const fastener = before.book.spec.items.get(item);
  const holds = fastener?.kind === 'fastener' ? fastener.holds.map(({value}) => value) : [];
  return deeds.gone.some(
    (one) =>
      (one.verb === 'loosen' && one.item === item && one.place === place) ||
      (one.verb === 'remove' && holds.includes(one.item)),
  );
}

/** Taking apart is no gain: what it takes away has to be made good again. */
const UNDOES: ReadonlySet<Verb> = new Set<Verb>(['remove', 'loosen', 'drain']);

function comePiece(deed: Deed, slackened: ReadonlySet<string>, {before, renames}: Sides): Piece {
  const earlier = before.deeds.filter(
    (one) =>
      one.verb === deed.verb &&
      idNow(renames, one.item) === deed.item &&
      placeNow(renames, deed.item, one.place) === deed.place,
  );
  const word = DONE[deed.verb] ?? deed.verb;
  const plain =
    UNDOES.has(deed.verb) ||
    (deed.verb === 'install' && earlier.length > 0) ||
    // What is slackened anew has to be tightened anew: that is no gain.
    (deed.verb === 'torque' && slackened.has(`${deed.item} ${deed.place}`));
  return {
    effect: plain ? 'changed' : 'strengthened',
    ...named(deed.item),
    place: deed.place,
    aspect: deed.verb,
    says: earlier.length === 0 ? `${word} now` : `${word} at one step more`,
    before: earlier.map((one) => tagRemark(one)),
    now: [tagRemark(deed)],
  };
}

function conditionChange(before: Deed, now: Deed, {renames}: Sides): Piece[] {
  const old = before.when.map((words) => renamedCondition(words, renames));
  const added = now.when.filter((words) => !old.includes(words));
  const lifted = old.filter((words) => !now.when.includes(words));
  if (added.length === 0 && lifted.length === 0) return [];
  const narrower = added.length === 0 || added.every((words) => lifted.some((was) => isPartOf(words, was)));
  const wider = lifted.length === 0 || lifted.every((was) => added.some((words) => isPartOf(was, words)));
  const effect =
    lifted.length === 0 || (narrower && added.length > 0)
      ? 'weakened'
      : added.length === 0 || wider
        ? 'strengthened'
        : 'changed';
  const word = DONE[now.verb] ?? now.verb;
  const was = lifted.length === 0 ? 'always' : lifted.join(', ');
  const says = `${word} ${added.length === 0 ? 'in every case' : added.join(', ')}, before ${was}`;
  return [
    {
      effect,
      ...named(now.item),
      place: now.place,
      aspect: now.verb,
      says,
      before: [tagRemark(before)],
      now: [tagRemark(now)],
    },
  ];
}
