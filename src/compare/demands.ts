/** What the specification asks of an item, one demand a field, in a form that two revisions can be held against each other in. */
import type {Amount} from '../quantity/model.js';
import type {Fastener, Fit, Item, ItemOf, Located, Part, Specified, Surface} from '../spec/model.js';
import type {Where} from '../text/source.js';

export type Demanded =
  /** Asked or not: the word is what is asked, where the aspect does not say it. */
  | {readonly type: 'there'}
  /** Said to need nothing, which is more than silence. */
  | {readonly type: 'none'}
  /** One of these will do: the fewer, the stricter. */
  | {readonly type: 'any-of'; readonly ids: readonly string[]}
  /** Only an engine with one of these options has it; none: every engine. */
  | {readonly type: 'options'; readonly ids: readonly string[]}
  | {readonly type: 'word'; readonly word: string; readonly grade?: number}
  | {readonly type: 'id'; readonly id: string}
  | {readonly type: 'amount'; readonly amount: Amount; readonly stricter: 'narrower' | 'more' | 'neither'}
  | {readonly type: 'amounts'; readonly amounts: readonly Amount[]}
  /** Prose and names: nothing for the engine. */
  | {readonly type: 'text'; readonly text: string};

export interface Demand {
  /** What is asked: `lock`, `limits`, `after main-caps`. Unique in its item. */
  readonly aspect: string;
  /** The item that the aspect names, where it names one. */
  readonly about?: string;
  readonly value: Demanded;
  /** Its going is a weakening, its coming a strengthening; otherwise it is a change. */
  readonly asks: boolean;
  readonly where: Where;
}

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
      return [
        there('record', item),
        ...idOf('match', item.matches, true),
        ...textOf('stamped', item.stamped, item),
      ];
    case 'check':
      return [
        there('check', item),
        ...amount('limits', item.limits, 'narrower'),
        ...(item.expect === undefined ? [] : [word('expect', item.expect, item.where)]),
        ...flag('rework', item.rework, item),
        ...anyOf('tool', item.using, item.where),
        ...each('hazard', item.hazards),
      ];
    case 'hold-point':
      return [
        there('witness', item),
        ...each('ask', item.asks),
        ...(item.by === undefined ? [] : [word('by', item.by, item.where)]),
      ];
    case 'system':
      return [
        there('fill', item),
        ...each('joint', item.joints),
        ...each('closed by', item.closedBy),
        ...anyOf('fluid', item.with, item.where),
        ...amount('amount', item.amount, 'neither'),
        ...each('hazard', item.hazards),
      ];
    case 'alteration':
      return [
        ...each('of', item.of),
        ...textOf('does', item.does, item),
        ...anyOf('tool', item.using, item.where),
        ...each('hazard', item.hazards),
      ];
    case 'tool':
      return ofTool(item);
    case 'consumable':
      return ofConsumable(item);
  }
}

function ofPart(part: Part): Demand[] {
  return [
    ...flag('install', !part.given, part),
    ...flag('renew', part.singleUse, part),
    ...flag('inspect', part.reused, part),
    ...flag('turn', part.turning, part),
    ...each('alter', part.alterations),
    ...each('closes', part.closes),
    ...each('after', part.after),
    ...each('hazard', part.hazards),
    ...anyOf('tool', part.using, part.where),
    ...amount('size', part.size, 'neither'),
    ...idOf('seat', part.seatsIn, false),
    word('quantity', String(part.quantity), part.where),
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
    ...anyOf('lubricant', surface.lubricants, surface.where),
    ...idOf('on', surface.on, false),
    ...[...surface.sizes].flatMap(([place, size]) =>
      amount(place === '' ? 'size' : `size at ${place}`, size, 'neither'),
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
  const {torque, threads, lock} = item;
  const locked = known(lock?.value);
  return [
    word('count', String(item.count), item.where),
    ...each('holds', item.holds),
    ...flag('renew', item.singleUse, item),
    ...(typeof torque?.value === 'object'
      ? amount('torque', {...torque, value: torque.value}, 'neither')
      : []),
    ...(torque?.value === 'none' ? [none('torque', torque.where)] : []),
    ...(torque?.value === 'snug' ? [{...word('torque', 'snug', torque.where), asks: true}] : []),
    ...amount('angle', item.angle, 'neither', true),
    ...(item.passes === undefined
      ? []
      : [{...amounts('passes', item.passes.value, item.passes.where), asks: true}]),
    ...(threads === undefined || threads.value === 'unknown'
      ? []
      : [
          threads.value === 'dry'
            ? {...word('threads', 'dry', threads.where), asks: true}
            : ({
                aspect: 'threads',
                value: {type: 'any-of', ids: threads.value},
                asks: true,
                where: threads.where,
              } as const),
        ]),
    ...(lock?.value === 'none' ? [none('lock', lock.where)] : []),
    ...(locked === undefined || lock === undefined
      ? []
      : [{aspect: 'lock', value: {type: 'id', id: locked}, asks: true, where: lock.where} as const]),
    ...said('thread', item.thread),
    ...said('grade', item.grade),
    ...said('into', item.into),
    ...amount('hole', item.hole, 'neither'),
    ...amount('engagement', item.engagement, 'neither'),
    word('layout', JSON.stringify([item.layoutUnit, item.layout]), item.where),
    ...(item.order.length === 0 ? [] : [{...word('order', item.order.join(', '), item.where), asks: true}]),
    ...item.runs.map(({value, where}, index) => word(`wire run ${index + 1}`, value.join(', '), where)),
  ];
}

function ofFit(item: Fit): Demand[] {
  const {limits, when} = item;
  return [
    there('measure', item),
    ...(typeof limits?.value === 'object'
      ? amount('limits', {...limits, value: limits.value}, 'narrower')
      : []),
    ...each('between', item.between),
    word('by', item.by, item.where),
    ...anyOf('tool', item.using, item.where),
    ...flag('rework', item.rework, item),
    ...each('installed', when?.installed ?? []),
    ...each('tight', when?.tight ?? []),
  ];
}

function ofTool(item: ItemOf<'tool'>): Demand[] {
  return [
    ...amount('range', item.range, 'neither'),
    ...amount('resolution', item.resolution, 'neither'),
    ...said('accuracy', item.accuracy),
    ...(item.calibrated === undefined
      ? []
      : [word('calibrated', item.calibrated.value, item.calibrated.where)]),
    ...(item.due === undefined ? [] : [word('due', item.due.value, item.due.where)]),
    ...(item.serial === undefined ? [] : [word('serial', item.serial, item.where)]),
    ...(item.gauge ? [word('gauge', 'yes', item.where)] : []),
  ];
}

function ofConsumable(item: ItemOf<'consumable'>): Demand[] {
  return [
    word('use', item.use, item.where),
    ...(item.lock === undefined ? [] : [word('kind of lock', item.lock, item.where)]),
    ...each('hazard', item.hazards),
    ...amount('cure', item.cure, 'more', true),
    ...(item.k === undefined ? [] : [word('k', String(item.k.value), item.k.where)]),
    ...amount('range', item.range, 'neither'),
    ...amount('size', item.size, 'neither'),
  ];
}

/** A decision that nothing is needed: what was decided should not go silent again. */
function none(aspect: string, where: Where): Demand {
  return {aspect, value: {type: 'none'}, asks: true, where};
}

/** `none` asks nothing, and neither does what nobody knows yet. */
function known(value: string | undefined): string | undefined {
  return value === 'none' || value === 'unknown' ? undefined : value;
}

function values(list: readonly Located<string>[]): string[] {
  return list.map(({value}) => value);
}

function there(aspect: string, {where}: Item): Demand {
  return {aspect, value: {type: 'there'}, asks: true, where};
}

function flag(aspect: string, set: boolean, item: Item): Demand[] {
  return set ? [there(aspect, item)] : [];
}

function each(aspect: string, list: readonly Located<string>[]): Demand[] {
  const once = new Map(list.map((one) => [one.value, one]));
  return [...once.values()].map(({value, where}) => ({
    aspect: `${aspect} ${value}`,
    about: value,
    value: {type: 'there'},
    asks: true,
    where,
  }));
}

function anyOf(aspect: string, list: readonly Located<string>[], where: Where): Demand[] {
  const [first] = list;
  if (first === undefined) return [];
  return [{aspect, value: {type: 'any-of', ids: values(list)}, asks: true, where: first.where ?? where}];
}

function idOf(aspect: string, one: Located<string> | undefined, asks: boolean): Demand[] {
  return one === undefined ? [] : [{aspect, value: {type: 'id', id: one.value}, asks, where: one.where}];
}

function word(aspect: string, said: string, where: Where, grade?: number): Demand {
  return {aspect, value: {type: 'word', word: said, ...(grade !== undefined && {grade})}, asks: false, where};
}

function said(aspect: string, one: Specified<string> | undefined): Demand[] {
  return one === undefined ? [] : [word(aspect, one.value, one.where)];
}

function text(aspect: string, said: string, {where}: Item): Demand {
  return {aspect, value: {type: 'text', text: said}, asks: false, where};
}

function textOf(aspect: string, said: string | undefined, item: Item): Demand[] {
  return said === undefined ? [] : [text(aspect, said, item)];
}

function amount(
  aspect: string,
  one: Specified<Amount | 'unknown'> | undefined,
  stricter: 'narrower' | 'more' | 'neither',
  asks = aspect === 'torque' || aspect === 'limits',
): Demand[] {
  if (one === undefined || one.value === 'unknown') return [];
  return [{aspect, value: {type: 'amount', amount: one.value, stricter}, asks, where: one.where}];
}

function amounts(aspect: string, list: readonly Amount[], where: Where): Demand {
  return {aspect, value: {type: 'amounts', amounts: list}, asks: false, where};
}
