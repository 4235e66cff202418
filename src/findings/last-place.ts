/** Where a finding about something left undone should stand: at the step that an author would add to. */
import type {FactKind} from '../build/facts.js';
import type {Action} from '../build/program.js';
import {meetingPlaces, type Relations} from '../build/relations.js';
import type {State} from '../build/state.js';
import {placesOf} from '../spec/items.js';
import type {Item} from '../spec/model.js';
import type {Where} from '../text/source.js';
import {inBuildOrder, tagWhere} from './phrase.js';

const ALL: readonly FactKind[] = [
  'clean',
  'inspected',
  'threads',
  'fresh',
  'installed',
  'tight',
  'locked',
  'striped',
  'measured',
  'sealed',
  'cured',
  'filled',
  'strip',
];

/**
 * The last action that touched these facts of the item, or failing that anything of it, or of the parts that
 * it belongs to; the item's place in the specification where no step deals with any of them.
 */
export function lastPlace(
  item: Item,
  places: readonly string[],
  kinds: readonly FactKind[],
  state: State,
  relations: Relations,
): Where {
  const action =
    last(touching(item, places, kinds, state)) ??
    last(touching(item, places, ALL, state)) ??
    last(
      belongingTo(item, relations).flatMap((other) => [
        ...touching(other, meetingPlaces(item, places, other), ALL, state),
      ]),
    );
  return action === undefined ? item.where : tagWhere(action);
}

function* touching(
  item: Item,
  places: readonly string[],
  kinds: readonly FactKind[],
  state: State,
): Generator<Action> {
  for (const place of places.length === 0 ? placesOf(item) : places) {
    for (const kind of kinds) {
      const {by, undone} = state.get(kind, item.id, place);
      if (by !== undefined) yield by;
      if (undone !== undefined) yield undone;
    }
  }
}

function last(actions: Iterable<Action>): Action | undefined {
  let latest: Action | undefined;
  for (const action of actions) {
    if (latest === undefined || inBuildOrder(latest, action) < 0) latest = action;
  }
  return latest;
}

/** The items whose steps a missing one would stand beside. */
function belongingTo(item: Item, {spec}: Relations): Item[] {
  return ids(item).flatMap((id) => spec.items.get(id) ?? []);
}

function ids(item: Item): string[] {
  const values = (list: readonly {readonly value: string}[]) => list.map(({value}) => value);
  switch (item.kind) {
    case 'fastener':
      return values(item.holds);
    case 'fit':
      return [
        ...values(item.when?.installed ?? []),
        ...values(item.when?.tight ?? []),
        ...values(item.between),
      ];
    case 'joint':
      return values(item.between);
    case 'surface':
      return item.on ? [item.on.value] : [];
    case 'hold-point':
      return values(item.asks);
    case 'system':
      return [...values(item.joints), ...values(item.closedBy)];
    default:
      return [];
  }
}
