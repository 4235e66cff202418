/**
 * What each verb does to the facts: the table of the design, one function a verb. What a verb needs first is
 * judged by the findings; nothing here complains.
 */
import type {Tag} from '../procedure/model.js';
import {idsOf} from '../procedure/values.js';
import type {Verb} from '../procedure/verbs.js';
import {placesOf} from '../spec/items.js';
import {locksOf} from '../spec/locks.js';
import type {Fastener, Item} from '../spec/model.js';
import {disturb} from './disturbed.js';
import {type Doing, setAll, setOwn, undo, undoAll, undoOwn} from './doing.js';
import type {Detail} from './facts.js';
import {goesOnFirst, lockedWith, lockKindOf} from './locks.js';
import type {Action} from './program.js';
import {isFastenerAction, torqueNow} from './reached.js';
import {closedBy, meetingPlaces, type Relations, relatedTo} from './relations.js';
import {leaveOil, soil} from './soiling.js';
import type {State} from './state.js';

type Effect = (doing: Doing) => void;

/** Changes the state as the action does. */
export function apply(action: Action, state: State, known: Relations): void {
  const doing = {action, state, relations: known, spec: known.spec};
  EFFECTS[action.verb]?.(doing);
  disturb(doing);
}

const EFFECTS: {readonly [verb in Verb]?: Effect} = {
  clean(doing) {
    for (const item of cleaned(doing)) {
      const places = meetingPlaces(doing.action.item, doing.action.places, item);
      setAll(doing, 'clean', item, places);
      for (const kind of ['lubed', 'sealed', 'cured'] as const) undoAll(doing, kind, item, places);
      undoStrips(doing, item, places);
    }
    leaveOil(doing, facesOf(doing));
  },
  inspect(doing) {
    setOwn(doing, 'inspected');
    soil(doing, facesOf(doing));
  },
  measure: (doing) => setOwn(doing, 'measured'),
  lay(doing) {
    setOwn(doing, 'strip', named(doing.action.tag, 'with'));
    undoOwn(doing, 'crushed');
  },
  lube(doing) {
    const {action, relations} = doing;
    const detail = named(action.tag, 'with');
    if (action.item.kind === 'fastener') setOwn(doing, 'threads', detail);
    else if (action.item.kind === 'part') {
      for (const surface of relatedTo(relations.surfacesOn, action.item)) {
        setAll(doing, 'lubed', surface, meetingPlaces(action.item, action.places, surface), detail);
      }
    } else setOwn(doing, 'lubed', detail);
  },
  seal(doing) {
    setOwn(doing, 'sealed', named(doing.action.tag, 'with'));
    undoAll(doing, 'cured', doing.action.item, doing.action.places);
  },
  alter,
  renew(doing) {
    setOwn(doing, 'fresh');
    for (const kind of ['altered', 'inspected', 'threads', 'striped'] as const) undoOwn(doing, kind);
    undoLubed(doing);
    undoFits(doing);
  },
  install: (doing) => setOwn(doing, 'installed'),
  remove,
  torque,
  loosen(doing) {
    undoOwn(doing, 'tight');
    undoOwn(doing, 'locked');
    undoOwn(doing, 'striped');
    undoOwn(doing, 'fresh');
  },
  lock,
  stripe: (doing) => setOwn(doing, 'striped', named(doing.action.tag, 'with')),
  turn: (doing) => setOwn(doing, 'turned'),
  cure(doing) {
    for (const joint of cured(doing))
      setAll(doing, 'cured', joint, meetingPlaces(doing.action.item, doing.action.places, joint));
  },
  fill: (doing) => setOwn(doing, 'filled', named(doing.action.tag, 'with')),
  drain: (doing) => undoOwn(doing, 'filled'),
  check: (doing) => setOwn(doing, 'checked'),
  record: (doing) => setOwn(doing, 'recorded'),
  witness: (doing) => setOwn(doing, 'witnessed'),
};

/** Cutting and grinding leave swarf: the surfaces of the part are clean no longer. */
function alter(doing: Doing): void {
  const {action, state} = doing;
  const {item, places, tag} = action;
  const said = idsOf(tag, 'by');
  const only = item.kind === 'part' ? item.alterations.map(({value}) => value) : [];
  for (const place of places) {
    const done = state.named('altered', item.id, place);
    state.set('altered', item.id, place, action, {ids: [...done, ...(said.length > 0 ? said : only)]});
  }
  undoLubed(doing);
  for (const [surface, at] of ownSurfaces(doing)) {
    for (const place of at) state.spoil('clean', surface.id, place, action);
  }
  undoFits(doing);
}

function undoLubed(doing: Doing): void {
  for (const [surface, at] of ownSurfaces(doing)) undoAll(doing, 'lubed', surface, at);
}

function ownSurfaces({action: {item, places}, relations}: Doing): [Item, readonly string[]][] {
  const surfaces = relatedTo(relations.surfacesOn, item);
  return surfaces.map((surface) => [surface, meetingPlaces(item, places, surface)]);
}

/** The item itself, and what lies on it where it is a part. */
function facesOf(doing: Doing): [Item, readonly string[]][] {
  const {item, places} = doing.action;
  return [[item, places], ...ownSurfaces(doing)];
}

function torque(doing: Doing): void {
  const {action, state, relations} = doing;
  if (!isFastenerAction(action)) return;
  const {item, places} = action;
  for (const place of places) {
    const reached = torqueNow(action, place, state, relations);
    state.set('tight', item.id, place, action, reached);
    if (reached.final === true) crush(doing, item, place);
    loseLocks(doing, item, place);
    undo(doing, 'striped', item, place);
  }
}

/** A tag that names no lock means all that are asked for. */
function lock({action, state, spec}: Doing): void {
  if (!isFastenerAction(action)) return;
  const {item, places, tag} = action;
  const named = idsOf(tag, 'with');
  const added = named.length > 0 ? named : locksOf(item);
  // Threadlocker is what the threads then carry.
  const wet = added.filter((id) => lockKindOf(spec, id) === 'threadlocker');
  for (const place of places) {
    const on = [...new Set([...state.named('locked', item.id, place), ...added])];
    state.set('locked', item.id, place, action, lockedWith(item, on, spec));
    if (wet.length > 0) state.set('threads', item.id, place, action, {ids: wet});
  }
}

/** What is put on after the tightening comes off for it; threadlocker and the like stay. */
function loseLocks(doing: Doing, fastener: Fastener, place: string): void {
  const {state, spec} = doing;
  const on = state.named('locked', fastener.id, place);
  const left = on.filter((id) => goesOnFirst(spec, id));
  if (on.length > 0 && left.length === on.length) return;
  undo(doing, 'locked', fastener, place);
  if (left.length > 0) state.keep('locked', fastener.id, place, lockedWith(fastener, left, spec));
}

/** A strip under a fastener that has come to its final torque is crushed. */
function crush({action, state, relations}: Doing, fastener: Fastener, place: string): void {
  for (const fit of relatedTo(relations.stripsUnder, fastener)) {
    for (const at of meetingPlaces(fastener, [place], fit)) {
      if (state.holds('strip', fit.id, at)) state.set('crushed', fit.id, at, action);
    }
  }
}

function remove(doing: Doing): void {
  const {action, relations} = doing;
  const {item, places} = action;
  if (item.kind !== 'part') return;
  undoOwn(doing, 'installed');
  if (item.singleUse) undoOwn(doing, 'fresh');
  for (const fastener of relatedTo(relations.holders, item)) {
    const at = meetingPlaces(item, places, fastener);
    undoAll(doing, 'tight', fastener, at);
    undoAll(doing, 'locked', fastener, at);
    undoAll(doing, 'striped', fastener, at);
  }
  for (const closed of closedBy(relations, item)) {
    const at = meetingPlaces(item, places, closed);
    for (const kind of ['lubed', 'sealed', 'cured'] as const) undoAll(doing, kind, closed, at);
    // Also a surface that was clean because its part was new has been in use now.
    for (const place of at) doing.state.spoil('clean', closed.id, place, action);
  }
}

function cleaned({action, relations}: Doing): readonly Item[] {
  return [action.item, ...relatedTo(relations.surfacesOn, action.item)];
}

function cured({action, state, relations}: Doing): readonly Item[] {
  const {item} = action;
  if (item.kind !== 'consumable') return [item];
  return relations.joints.filter((joint) =>
    placesOf(joint).some((place) => state.named('sealed', joint.id, place).includes(item.id)),
  );
}

function undoStrips(doing: Doing, item: Item, places: readonly string[]): void {
  for (const fit of relatedTo(doing.relations.fitsOf, item)) {
    const at = meetingPlaces(item, places, fit);
    undoAll(doing, 'strip', fit, at);
    undoAll(doing, 'crushed', fit, at);
  }
}

/** A reading of the part as it was says nothing of it as it is, and a strip goes with the part that it lay on. */
function undoFits(doing: Doing): void {
  const {action, relations} = doing;
  for (const fit of relatedTo(relations.fitsOf, action.item)) {
    const at = meetingPlaces(action.item, action.places, fit);
    for (const kind of ['measured', 'strip', 'crushed'] as const) undoAll(doing, kind, fit, at);
  }
}

function named(tag: Tag, word: 'with' | 'by'): Detail | undefined {
  const ids = idsOf(tag, word);
  return ids.length === 0 ? undefined : {ids};
}
