/** What the specification asks of an item, one demand a field, in a form that two revisions can be held against each other in. */
import type {Fastener, Fit, Item, ItemOf, Part, Surface} from '../spec/model.js';
import {
  amount,
  amounts,
  anyOf,
  type Demand,
  each,
  flag,
  idOf,
  known,
  none,
  said,
  text,
  textOf,
  there,
  values,
  word,
} from './demand.js';
import {ofConsumable, ofTool} from './demands-shop.js';

/**
 * In no order that means anything. Whatever field of the specification has no line here, no comparison sees: a change of
 * it is told nowhere.
 */
export function demandsOf(item: Item): Demand[] {
  return [
    text('name', item.name, item),
    ...(item.note === undefined ? [] : [text('note', item.note, item)]),
    ...(item.source === undefined ? [] : [word('source', item.source, item.where)]),
    ...(item.type === undefined ? [] : [word('type', item.type, item.where)]),
    {
      aspect: 'options',
      value: {type: 'options', ids: values(item.only)},
      asks: true,
      where: item.only[0]?.where ?? item.where,
    },
    ...own(item),
  ];
}

/** Limits ask, and the narrower, the more. */
const LIMITS = {stricter: 'narrower', asks: true} as const;

function own(item: Item): Demand[] {
  switch (item.kind) {
    case 'part':
      return ofPart(item);
    case 'surface':
      return ofSurface(item);
    case 'joint':
      return [...each('between', item.between), ...ofSeal(item)];
    case 'fastener':
      return ofFastener(item);
    case 'fit':
      return ofFit(item);
    case 'mark':
      return ofMark(item);
    case 'check':
      return ofCheck(item);
    case 'hold-point':
      return ofHoldPoint(item);
    case 'system':
      return ofSystem(item);
    case 'alteration':
      return ofAlteration(item);
    case 'tool':
      return ofTool(item);
    case 'consumable':
      return ofConsumable(item);
  }
}

function ofPart(part: Part): Demand[] {
  return [
    ...flag('install', !part.given && !part.temporary, part),
    ...flag('remove', part.temporary, part),
    ...flag('renew', part.singleUse, part),
    ...flag('inspect', part.reused, part),
    ...flag('turn', part.turning, part),
    ...each('alter', part.alterations),
    ...each('blocks', part.blocks),
    ...each('closes', part.closes),
    ...each('after', part.after),
    ...each('hazard', part.hazards),
    ...anyOf('tool', part.using),
    ...amount('size', part.size),
    ...idOf('seat', part.seatsIn, false),
    word('quantity', String(part.quantity), part.where, part.quantity),
    ...[...part.substitutes.values()].map(({name, alterations, where}) =>
      word(`substitute ${name}`, values(alterations).join(', ') || 'as it comes', where),
    ),
  ];
}

/** Dry is clean and more; lubed is clean and more; neither is more than the other. */
const GRADES: Readonly<Record<string, number>> = {clean: 0, dry: 1, lubed: 1};

function ofSurface(surface: Surface): Demand[] {
  const state = known(surface.assembly?.value);
  return [
    ...(state === undefined || surface.assembly === undefined
      ? []
      : [{...word('assembly', state, surface.assembly.where, GRADES[state]), asks: true}]),
    ...anyOf('lubricant', surface.lubricants),
    ...idOf('on', surface.on, false),
    ...[...surface.sizes].flatMap(([place, size]) =>
      amount(place === '' ? 'size' : `size at ${place}`, size),
    ),
    ...(surface.grinds.length === 0
      ? []
      : [
          amounts(
            'grinds',
            surface.grinds.map(({value}) => value),
            surface.grinds[0]?.where ?? surface.where,
          ),
        ]),
    ...(surface.order === undefined ? [] : [word('order', surface.order.value, surface.order.where)]),
  ];
}

function ofSeal({seal}: ItemOf<'joint'>): Demand[] {
  if (seal?.value === 'none') return [none('seal', seal.where)];
  if (seal === undefined || typeof seal.value === 'string') return [];
  return [{aspect: 'seal', value: {type: 'any-of', ids: seal.value}, asks: true, where: seal.where}];
}

function ofFastener(item: Fastener): Demand[] {
  return [
    word('count', String(item.count), item.where, item.count),
    ...each('holds', item.holds),
    ...each('after', item.after),
    ...flag('renew', item.singleUse, item),
    ...ofTorque(item),
    ...ofThreads(item),
    ...ofLock(item),
    ...flag('stripe', item.stripe, item),
    ...said('thread', item.thread),
    ...said('grade', item.grade),
    ...said('into', item.into),
    ...amount('hole', item.hole),
    ...amount('engagement', item.engagement),
    word('layout', JSON.stringify([item.layoutUnit, item.layout]), item.where),
    ...(item.order.length === 0 ? [] : [{...word('order', item.order.join(', '), item.where), asks: true}]),
    ...item.runs.map(({value, where}, index) => word(`wire run ${index + 1}`, value.join(', '), where)),
  ];
}

function ofTorque({torque, angle, passes}: Fastener): Demand[] {
  return [
    ...(typeof torque?.value === 'object'
      ? amount('torque', {...torque, value: torque.value}, {asks: true})
      : []),
    ...(torque?.value === 'none' ? [none('torque', torque.where)] : []),
    ...(torque?.value === 'snug' ? [{...word('torque', 'snug', torque.where), asks: true}] : []),
    ...amount('angle', angle, {asks: true}),
    ...(passes === undefined ? [] : [{...amounts('passes', passes.value, passes.where), asks: true}]),
  ];
}

function ofThreads({threads}: Fastener): Demand[] {
  if (threads === undefined || threads.value === 'unknown') return [];
  const {value, where} = threads;
  if (value === 'dry') return [{...word('threads', 'dry', where), asks: true}];
  return [{aspect: 'threads', value: {type: 'any-of', ids: value}, asks: true, where}];
}

function ofLock({lock}: Fastener): Demand[] {
  if (lock === undefined || lock.value === 'unknown') return [];
  const {value, where} = lock;
  if (value === 'none') return [none('lock', where)];
  return [{aspect: 'lock', value: {type: 'all-of', ids: value}, asks: true, where}];
}

function ofFit(item: Fit): Demand[] {
  const {limits, when} = item;
  return [
    there('measure', item),
    ...(typeof limits?.value === 'object' ? amount('limits', {...limits, value: limits.value}, LIMITS) : []),
    ...each('between', item.between),
    ...each('taper-of', item.taperOf),
    ...each('out-of-round-of', item.outOfRoundOf),
    word('by', item.by, item.where),
    ...anyOf('tool', item.using),
    ...each('disturbed by', item.disturbedBy),
    ...flag('rework', item.rework, item),
    ...each('installed', when?.installed ?? []),
    ...each('tight', when?.tight ?? []),
  ];
}

function ofMark(item: ItemOf<'mark'>): Demand[] {
  return [
    there('record', item),
    ...idOf('match', item.matches, true),
    ...textOf('stamped', item.stamped, item),
  ];
}

function ofCheck(item: ItemOf<'check'>): Demand[] {
  return [
    there('check', item),
    ...amount('limits', item.limits, LIMITS),
    ...(item.expect === undefined ? [] : [word('expect', item.expect, item.where)]),
    ...each('after', item.after),
    ...each('disturbed by', item.disturbedBy),
    ...flag('rework', item.rework, item),
    ...anyOf('tool', item.using),
    ...each('hazard', item.hazards),
  ];
}

function ofHoldPoint(item: ItemOf<'hold-point'>): Demand[] {
  return [
    there('witness', item),
    ...each('ask', item.asks),
    ...(item.by === undefined ? [] : [word('by', item.by, item.where)]),
  ];
}

function ofSystem(item: ItemOf<'system'>): Demand[] {
  return [
    there('fill', item),
    ...each('joint', item.joints),
    ...each('closed by', item.closedBy),
    ...each('after', item.after),
    ...anyOf('fluid', item.with),
    ...amount('amount', item.amount),
    ...each('hazard', item.hazards),
  ];
}

function ofAlteration(item: ItemOf<'alteration'>): Demand[] {
  return [
    ...each('of', item.of),
    ...textOf('does', item.does, item),
    ...anyOf('tool', item.using),
    ...each('hazard', item.hazards),
  ];
}
