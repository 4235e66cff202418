/** What the specification asks for less, more or otherwise: item by item, field by field. */
import type {Remark} from '../build/found.js';
import type {Verb} from '../procedure/verbs.js';
import type {Item} from '../spec/model.js';
import {KIND_SAYS} from '../spec/sections.js';
import type {Where} from '../text/source.js';
import type {Demand, Demanded} from './demand.js';
import {demandsOf} from './demands.js';
import {comeWords, goneWords} from './field-words.js';
import type {Judge, Sides} from './judge.js';
import type {Judgement} from './limits.js';
import type {Effect, Piece} from './model.js';
import {placeChanges} from './place-changes.js';
import {reasonChanges, reasonOf} from './reasons.js';
import {tagRemark} from './remarks.js';
import {idNow, placeNow} from './renames.js';
import type {BookSide} from './side.js';
import {judged, valueSays} from './values.js';

export const demandChanges: Judge = (sides) => {
  const {before, now, renames} = sides;
  const seen = new Set<string>();
  const pieces = [...before.book.spec.items.values()].flatMap((item) => {
    const id = idNow(renames, item.id);
    seen.add(id);
    const other = now.book.spec.items.get(id);
    return other === undefined || other.kind !== item.kind
      ? itemGone(item, sides)
      : itemChanges(item, other, sides);
  });
  const added = [...now.book.spec.items.values()].filter(({id}) => !seen.has(id));
  return [...pieces, ...added.flatMap((item) => itemCome(item, sides))];
};

/** Shop's things ask nothing of the engine. */
function asks({kind}: Item): boolean {
  return kind !== 'tool' && kind !== 'consumable';
}

function itemGone(item: Item, {before}: Sides): Piece[] {
  const says = `${KIND_SAYS[item.kind]} that the specification no longer names`;
  return [{...itemPiece(item, says, 'weakened'), before: placesOfWork(item, before), now: []}];
}

function itemCome(item: Item, {now}: Sides): Piece[] {
  const says = `${KIND_SAYS[item.kind]} that the specification now names`;
  return [{...itemPiece(item, says, 'strengthened'), before: [], now: placesOfWork(item, now)}];
}

function itemPiece(item: Item, says: string, effect: Effect) {
  return {
    effect: asks(item) ? effect : 'changed',
    subject: item.id,
    item: item.id,
    aspect: 'item',
    says,
  } as const;
}

/** Where the item is specified, and the steps that deal with it; of steps for several places those for the first. */
function placesOfWork(item: Item, {deeds}: BookSide): Remark[] {
  const own = deeds.filter((deed) => deed.item === item.id && isFirstPlace(deed.place, item));
  return [{where: item.where, says: `${item.id} is specified here`}, ...own.map((deed) => tagRemark(deed))];
}

function isFirstPlace(place: string, {at}: Item): boolean {
  return place === (at[0] ?? '');
}

function itemChanges(item: Item, other: Item, sides: Sides): Piece[] {
  const both: Both = {item, other, sides};
  const old = new Map(
    demandsOf(item)
      .map((demand) => renamed(demand, other, sides))
      .map((one) => [one.aspect, one]),
  );
  const fresh = new Map(demandsOf(other).map((one) => [one.aspect, one]));
  const fields = [
    ...[...old.values()].flatMap((demand) => fieldChange(both, demand, fresh.get(demand.aspect))),
    ...[...fresh.values()].filter(({aspect}) => !old.has(aspect)).map((demand) => fieldCome(both, demand)),
  ];
  const changed = new Set(fields.filter(({effect}) => effect !== 'reworded').map(({aspect}) => aspect));
  return [
    ...nameChange(both),
    ...placeChanges(item, other, sides),
    ...reasonChanges(item, other, changed),
    ...fields,
  ];
}

/** An item as it was and as it is. */
interface Both {
  readonly item: Item;
  readonly other: Item;
  readonly sides: Sides;
}

function nameChange(both: Both): Piece[] {
  const {item, other} = both;
  if (item.id === other.id) return [];
  return [
    fieldPiece(both, 'reworded', {aspect: 'id', says: `called ${item.id} before`, before: item, now: other}),
  ];
}

function fieldChange(both: Both, before: Demand, now: Demand | undefined): Piece[] {
  const {aspect} = before;
  if (now === undefined) {
    const says = goneWords(before);
    return [fieldPiece(both, effectOf(before, 'weakened'), {aspect, says, before, now: both.other})];
  }
  const says = `${aspect} ${valueSays(before.value)}, now ${valueSays(now.value)}`;
  return fieldJudgements(both, before, now).map(({effect, says: more}) =>
    fieldPiece(both, effect, {
      aspect,
      says: more === undefined ? says : `${says}: ${more}`,
      before,
      now,
    }),
  );
}

/** A gauge that is due later and was not calibrated since goes on unchecked for longer. */
function fieldJudgements({item, other}: Both, before: Demand, now: Demand): readonly Judgement[] {
  if (before.aspect !== 'due' || item.kind !== 'tool' || other.kind !== 'tool')
    return judged(before.value, now.value);
  const [was, is] = [item.due?.value ?? '', other.due?.value ?? ''];
  if (was === is) return [];
  if (is < was) return [{effect: 'strengthened'}];
  return [{effect: item.calibrated?.value === other.calibrated?.value ? 'weakened' : 'changed'}];
}

function fieldCome(both: Both, now: Demand): Piece {
  const says = comeWords(now);
  return fieldPiece(both, effectOf(now, 'strengthened'), {aspect: now.aspect, says, before: both.item, now});
}

interface Told {
  readonly aspect: string;
  readonly says: string;
  readonly before: {readonly where: Where};
  readonly now: {readonly where: Where};
}

function fieldPiece({item, other, sides}: Both, effect: Effect, {aspect, says, before, now}: Told): Piece {
  const at = ({where}: {readonly where: Where}, of: Item): Remark => {
    const reason = reasonOf(of, aspect);
    return {
      where,
      says: `${of.id} in the specification${reason === undefined ? '' : `: ${aspect}, because ${reason}`}`,
    };
  };
  return {
    effect,
    subject: other.id,
    item: other.id,
    aspect,
    says,
    asks: true,
    before: [at(before, item), ...stepsFor(aspect, item, sides.before)],
    now: [at(now, other), ...stepsFor(aspect, other, sides.now)],
  };
}

/** The steps that do what the field asks for; where it asks for nothing done, the steps that deal with the item. */
function stepsFor(aspect: string, item: Item, {deeds}: BookSide): Remark[] {
  const [stem = aspect] = aspect.split(' ');
  const verbs = VERBS[stem] ?? [];
  return deeds
    .filter(
      (deed) =>
        deed.item === item.id && isFirstPlace(deed.place, item) && verbs.some((verb) => verb === deed.verb),
    )
    .map((deed) => tagRemark(deed));
}

const VERBS: Readonly<Record<string, readonly Verb[]>> = {
  limits: ['measure', 'check'],
  disturbed: ['measure', 'check'],
  torque: ['torque'],
  passes: ['torque'],
  angle: ['torque'],
  threads: ['lube'],
  assembly: ['clean', 'lube'],
  lubricant: ['lube'],
  lock: ['lock'],
  locked: ['lock'],
  stripe: ['stripe'],
  seal: ['seal'],
  cure: ['cure'],
  fluid: ['fill'],
  amount: ['fill'],
  install: ['install'],
  remove: ['remove'],
  renew: ['renew'],
  inspect: ['inspect'],
  turn: ['turn'],
  alter: ['alter'],
  rework: ['if', 'repeat'],
  ask: ['witness'],
  by: ['witness'],
  after: ['install', 'torque', 'check', 'fill'],
  tool: ['install', 'measure', 'check'],
};

/** What the going (or coming) of a demand is, were it one that asks. */
function effectOf({asks: isAsked, value}: Demand, effect: Effect): Effect {
  if (value.type === 'text') return 'reworded';
  if (value.type === 'none' && effect === 'strengthened') return 'changed';
  return isAsked ? effect : 'changed';
}

/** The demand as the new side would write it. */
function renamed(demand: Demand, other: Item, {renames}: Sides): Demand {
  const about = demand.about === undefined ? undefined : idNow(renames, demand.about);
  const stem = demand.about === undefined ? demand.aspect : demand.aspect.slice(0, -demand.about.length);
  const sized = /^size at (.+)$/.exec(stem)?.[1];
  const aspect = sized === undefined ? stem + (about ?? '') : `size at ${placeNow(renames, other.id, sized)}`;
  return {
    ...demand,
    aspect,
    value: renamedValue(demand.value, (id) => idNow(renames, id)),
    ...(about !== undefined && {about}),
  };
}

function renamedValue(value: Demanded, rename: (id: string) => string): Demanded {
  if (value.type === 'any-of' || value.type === 'all-of' || value.type === 'options')
    return {...value, ids: value.ids.map(rename)};
  return value.type === 'id' ? {...value, id: rename(value.id)} : value;
}
