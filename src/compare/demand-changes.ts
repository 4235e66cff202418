/** What the specification asks for less, more or otherwise: item by item, field by field. */
import type {Remark} from '../build/found.js';
import type {Verb} from '../procedure/verbs.js';
import type {Item} from '../spec/model.js';
import {KIND_SAYS} from '../spec/sections.js';
import {deedRemark} from './deed-changes.js';
import {type Demand, type Demanded, demandsOf} from './demands.js';
import type {Judge, Sides} from './judge.js';
import type {Effect, Piece} from './model.js';
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
  return [
    {
      effect: asks(item) ? 'weakened' : 'changed',
      subject: item.id,
      item: item.id,
      aspect: 'item',
      says: `${KIND_SAYS[item.kind]} that the specification no longer names`,
      before: [
        {where: item.where, says: `${item.id} is specified here`},
        ...before.deeds
          .filter((deed) => deed.item === item.id && isFirstPlace(deed.place, item))
          .map(deedRemark),
      ],
      now: [],
    },
  ];
}

function itemCome(item: Item, {now}: Sides): Piece[] {
  return [
    {
      effect: asks(item) ? 'strengthened' : 'changed',
      subject: item.id,
      item: item.id,
      aspect: 'item',
      says: `${KIND_SAYS[item.kind]} that the specification now names`,
      before: [],
      now: [
        {where: item.where, says: `${item.id} is specified here`},
        ...now.deeds
          .filter((deed) => deed.item === item.id && isFirstPlace(deed.place, item))
          .map(deedRemark),
      ],
    },
  ];
}

function isFirstPlace(place: string, {at}: Item): boolean {
  return place === (at[0] ?? '');
}

function itemChanges(item: Item, other: Item, sides: Sides): Piece[] {
  const {renames} = sides;
  const old = new Map(
    demandsOf(item)
      .map((demand) => renamed(demand, item, other, sides))
      .map((one) => [one.aspect, one]),
  );
  const fresh = new Map(demandsOf(other).map((one) => [one.aspect, one]));
  const piece = (effect: Effect, aspect: string, says: string, before: Remark[], now: Remark[]): Piece => ({
    effect,
    subject: other.id,
    item: other.id,
    aspect,
    says,
    before: [...before, ...stepsFor(aspect, item, sides.before)],
    now: [...now, ...stepsFor(aspect, other, sides.now)],
  });
  const at = ({where}: Demand | Item): Remark[] => [{where, says: `${other.id} in the specification`}];
  const fields = [...old.values()].flatMap((demand) => {
    const now = fresh.get(demand.aspect);
    if (now === undefined) {
      const says =
        demand.value.type === 'there'
          ? `${demand.aspect} is no longer asked for`
          : `${demand.aspect} ${valueSays(demand.value)} is no longer asked for`;
      return [piece(goneEffect(demand, 'weakened'), demand.aspect, says, at(demand), at(other))];
    }
    const effect = judged(demand.value, now.value);
    if (effect === undefined) return [];
    const says = `${demand.aspect} ${valueSays(demand.value)}, now ${valueSays(now.value)}`;
    return [piece(effect, demand.aspect, says, at(demand), at(now))];
  });
  const added = [...fresh.values()]
    .filter(({aspect}) => !old.has(aspect))
    .map((demand) => {
      const says =
        demand.value.type === 'there'
          ? `${demand.aspect} is asked for now`
          : `${demand.aspect} ${valueSays(demand.value)} is asked for now`;
      return piece(goneEffect(demand, 'strengthened'), demand.aspect, says, at(item), at(demand));
    });
  const name =
    idNow(renames, item.id) === item.id
      ? []
      : [piece('reworded', 'id', `called ${item.id} before`, at(item), at(other))];
  return [...name, ...placeChanges(item, other, sides), ...fields, ...added];
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
    .map(deedRemark);
}

const VERBS: Readonly<Record<string, readonly Verb[]>> = {
  limits: ['measure', 'check'],
  torque: ['torque'],
  passes: ['torque'],
  angle: ['torque'],
  threads: ['lube'],
  assembly: ['clean', 'lube'],
  lubricant: ['lube'],
  lock: ['lock'],
  seal: ['seal'],
  cure: ['cure'],
  fluid: ['fill'],
  amount: ['fill'],
  install: ['install'],
  renew: ['renew'],
  inspect: ['inspect'],
  turn: ['turn'],
  alter: ['alter'],
  rework: ['if', 'repeat'],
  ask: ['witness'],
  by: ['witness'],
  after: ['install'],
  tool: ['install', 'measure', 'check'],
};

function goneEffect({asks: isAsked, value}: Demand, effect: Effect): Effect {
  if (value.type === 'text') return 'reworded';
  if (value.type === 'none' && effect === 'strengthened') return 'changed';
  return isAsked ? effect : 'changed';
}

function placeChanges(item: Item, other: Item, {renames}: Sides): Piece[] {
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

/** The demand as the new side would write it. */
function renamed(demand: Demand, _item: Item, other: Item, {renames}: Sides): Demand {
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
  if (value.type === 'any-of' || value.type === 'options') return {...value, ids: value.ids.map(rename)};
  return value.type === 'id' ? {...value, id: rename(value.id)} : value;
}
