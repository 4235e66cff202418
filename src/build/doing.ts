/**
 * An action being done: what it is done to, and the few ways in which it changes the state. Here too a signature is lost
 * with what it stands for, so that no verb can forget that.
 */
import type {Item, Specification} from '../spec/model.js';
import type {Detail, FactKind} from './facts.js';
import type {Action} from './program.js';
import {type Relations, relatedTo} from './relations.js';
import type {State} from './state.js';

export interface Doing {
  readonly action: Action;
  readonly state: State;
  readonly relations: Relations;
  readonly spec: Specification;
}

/** The fact holds of the action's own item, at the action's places. */
export function setOwn(doing: Doing, kind: FactKind, detail?: Detail): void {
  setAll(doing, kind, doing.action.item, doing.action.places, detail);
}

/** The fact holds of an item at these places. */
export function setAll(
  doing: Doing,
  kind: FactKind,
  item: Item,
  places: readonly string[],
  detail?: Detail,
): void {
  for (const place of places) doing.state.set(kind, item.id, place, doing.action, detail);
}

/** The fact holds no longer of the action's own item, at the action's places. */
export function undoOwn(doing: Doing, kind: FactKind): void {
  undoAll(doing, kind, doing.action.item, doing.action.places);
}

/** The fact holds no longer of an item at these places. */
export function undoAll(doing: Doing, kind: FactKind, item: Item, places: readonly string[]): void {
  for (const place of places) undo(doing, kind, item, place);
}

/** What a hold point asked for no longer stands, so its signature doesn't either. */
export function undo({action, state, relations}: Doing, kind: FactKind, item: Item, place: string): void {
  if (!state.undo(kind, item.id, place, action) || !WITNESSED.has(kind)) return;
  for (const point of relatedTo(relations.askedBy, item)) state.undo('witnessed', point.id, '', action);
}

/** What a second person looks at: these facts gone, there is something else there than was signed for. */
const WITNESSED: ReadonlySet<FactKind> = new Set([
  'installed',
  'tight',
  'locked',
  'striped',
  'measured',
  'checked',
  'sealed',
  'filled',
]);
