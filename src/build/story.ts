/** The life of every item through the build: each fact of it that a step set or undid, in build order. */
import {placesOf} from '../spec/items.js';
import type {Item} from '../spec/model.js';
import type {Change, FactKind} from './facts.js';
import type {Ledger} from './ledger.js';
import type {Action} from './program.js';
import type {State} from './state.js';

/** One turn in an item's life. Places that share it are told together. */
export interface Turn {
  readonly kind: FactKind;
  readonly holds: boolean;
  readonly places: readonly string[];
  readonly action: Action;
}

export interface Life {
  readonly item: Item;
  readonly turns: readonly Turn[];
  /** What holds at the end of the build, by place. */
  readonly end: ReadonlyMap<string, readonly FactKind[]>;
}

/** The lives of all items, by id, from one walk. */
export function lives(run: Ledger): Map<string, Life> {
  const all = new Map<string, Life>();
  const turns = new Map<string, Turn[]>();
  let settling = false;
  let mark = 0;
  run.walk({
    settling(on) {
      settling = on;
    },
    before(_, state) {
      mark = state.mark();
    },
    after(action, state) {
      if (!settling) addTurns(turns, action, state.changesSince(mark));
    },
    end(state) {
      for (const [id, item] of run.relations.spec.items) {
        all.set(id, {item, turns: turns.get(id) ?? [], end: endOf(item, state)});
      }
    },
  });
  return all;
}

function addTurns(turns: Map<string, Turn[]>, action: Action, changes: readonly Change[]): void {
  const grouped = new Map<string, {change: Change; places: string[]}>();
  for (const change of changes) {
    const key = `${change.kind} ${change.item} ${change.holds}`;
    const group = grouped.get(key);
    if (group === undefined) grouped.set(key, {change, places: [change.place]});
    else if (!group.places.includes(change.place)) group.places.push(change.place);
  }
  for (const {change, places} of grouped.values()) {
    const list = turns.get(change.item) ?? [];
    list.push({kind: change.kind, holds: change.holds, places, action});
    turns.set(change.item, list);
  }
}

function endOf(item: Item, state: State): Map<string, FactKind[]> {
  return new Map(placesOf(item).map((place) => [place, state.held(item.id, place)]));
}
