/** What it means that an item is done, by its kind: what comes after it, and hold points that ask for it, need that. */
import type {State} from '../build/state.js';
import type {Verb} from '../procedure/verbs.js';
import {locksOf} from '../spec/locks.js';
import type {Fastener, Item, ItemKind} from '../spec/model.js';
import type {Context} from './model.js';

const VERB: {readonly [kind in ItemKind]: Verb} = {
  part: 'install',
  surface: 'clean',
  joint: 'seal',
  fastener: 'torque',
  fit: 'measure',
  mark: 'record',
  check: 'check',
  'hold-point': 'witness',
  system: 'fill',
  alteration: 'alter',
  tool: 'check',
  consumable: 'cure',
};

/** The verb that does an item of this kind. */
export function verbFor(item: Item): Verb {
  return VERB[item.kind];
}

/** Whether the item is as the specification asks, now. */
export function isDone(item: Item, place: string, state: State): boolean {
  switch (item.kind) {
    case 'part':
      return item.given || state.holds('installed', item.id, place);
    case 'surface':
      return state.holds('clean', item.id, place) || state.holds('lubed', item.id, place);
    case 'joint':
      return typeof item.seal?.value !== 'object' || state.holds('sealed', item.id, place);
    case 'fastener':
      return (
        tightAsAsked(item, place, state) && lockedAsAsked(item, place, state) && isStriped(item, place, state)
      );
    case 'fit':
      return state.holds('measured', item.id, place);
    case 'mark':
      return state.holds('recorded', item.id, place);
    case 'check':
      return state.holds('checked', item.id, place);
    case 'hold-point':
      return state.holds('witnessed', item.id, place);
    case 'system':
      return state.holds('filled', item.id, place);
    default:
      return true;
  }
}

/**
 * Not done yet, though some step of the book does it. What no step ever does is another finding, and not one
 * more for everything that comes after it.
 */
export function isLate(item: Item, place: string, {state, does}: Pick<Context, 'state' | 'does'>): boolean {
  if (isDone(item, place, state)) return false;
  if (item.kind === 'fastener' && tightAsAsked(item, place, state)) {
    if (lockedAsAsked(item, place, state)) return does('stripe', item.id, place);
    const {holds, detail} = state.get('locked', item.id, place);
    if (!holds) return does('lock', item.id, place);
    return detail?.lacks?.some((lock) => does('lock', item.id, place, lock)) ?? false;
  }
  return does(verbFor(item), item.id, place) || isNeverMissed(item);
}

/** What goes in for a while only, no other finding asks for: whoever names it as coming first must. */
function isNeverMissed(item: Item): boolean {
  return item.kind === 'part' && item.temporary;
}

/** At its final torque, where it has one. */
export function tightAsAsked(fastener: Fastener, place: string, state: State): boolean {
  const asked = fastener.torque?.value;
  if (asked === undefined || asked === 'none' || asked === 'unknown') return true;
  const fact = state.get('tight', fastener.id, place);
  return fact.holds && fact.detail?.final === true;
}

/** With every lock that the specification asks for. */
export function lockedAsAsked(fastener: Fastener, place: string, state: State): boolean {
  return locksOf(fastener).length === 0 || state.whole('locked', fastener.id, place);
}

/** With its stripe of paint, where the specification asks for one. */
function isStriped({id, stripe}: Fastener, place: string, state: State): boolean {
  return !stripe || state.holds('striped', id, place);
}
