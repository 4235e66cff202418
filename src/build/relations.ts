/** Which items bear on which: the specification read backwards, once a book. */

import {itemsOfKind, placesOf} from '../spec/items.js';
import type {
  Check,
  Fastener,
  Fit,
  HoldPoint,
  Item,
  Joint,
  Located,
  Mark,
  Part,
  Specification,
  Surface,
  System,
  Tool,
} from '../spec/model.js';
import type {Action} from './program.js';

/** What hangs on the specification alone. */
export interface ItemRelations {
  readonly spec: Specification;
  /** By part: fasteners that hold it, surfaces on it, fits that it bears on. */
  readonly holders: ReadonlyMap<string, readonly Fastener[]>;
  readonly surfacesOn: ReadonlyMap<string, readonly Surface[]>;
  readonly fitsOf: ReadonlyMap<string, readonly Fit[]>;
  /** By fastener: the fits whose gauging strip it crushes. */
  readonly stripsUnder: ReadonlyMap<string, readonly Fit[]>;
  /** By part: the surfaces and joints that it closes; names that resolve to nothing are left out. */
  readonly closed: ReadonlyMap<string, readonly (Surface | Joint)[]>;
  /** By surface or joint: the parts that close it. */
  readonly closers: ReadonlyMap<string, readonly Part[]>;
  /** By fastener or part: the readings that count no longer once it is moved. */
  readonly disturbs: ReadonlyMap<string, readonly (Fit | Check)[]>;
  /** By any item: the hold points that ask for it. */
  readonly askedBy: ReadonlyMap<string, readonly HoldPoint[]>;
  /** By joint: the systems that put it under load. */
  readonly loadedBy: ReadonlyMap<string, readonly System[]>;
  /** By kind, in the order of the files: a book may have tens of thousands of items, and many look through them. */
  readonly parts: readonly Part[];
  readonly surfaces: readonly Surface[];
  readonly joints: readonly Joint[];
  readonly fasteners: readonly Fastener[];
  readonly fits: readonly Fit[];
  readonly marks: readonly Mark[];
  readonly checks: readonly Check[];
  readonly holdPoints: readonly HoldPoint[];
  readonly systems: readonly System[];
  readonly tools: readonly Tool[];
}

export interface Relations extends ItemRelations {
  /** See `Program`. */
  readonly lastTorques: ReadonlySet<Action>;
}

export function relations(spec: Specification): ItemRelations {
  const kinds = {
    parts: itemsOfKind(spec, 'part'),
    surfaces: itemsOfKind(spec, 'surface'),
    joints: itemsOfKind(spec, 'joint'),
    fasteners: itemsOfKind(spec, 'fastener'),
    fits: itemsOfKind(spec, 'fit'),
    marks: itemsOfKind(spec, 'mark'),
    checks: itemsOfKind(spec, 'check'),
    holdPoints: itemsOfKind(spec, 'hold-point'),
    systems: itemsOfKind(spec, 'system'),
    tools: itemsOfKind(spec, 'tool'),
  };
  const {parts, surfaces, fasteners, fits, holdPoints, systems} = kinds;
  const surfacesOn = gather(surfaces, partsUnder);
  const owner = new Map(surfaces.map((surface) => [surface.id, partsUnder(surface)]));
  return {
    ...kinds,
    spec,
    holders: gather(fasteners, ({holds}) => values(holds)),
    surfacesOn,
    fitsOf: gather(fits, ({between}) => values(between).flatMap((id) => [id, ...(owner.get(id) ?? [])])),
    stripsUnder: gather(fits, ({by, when}) => (by === 'strip' ? values(when?.tight ?? []) : [])),
    closed: new Map(parts.map((part) => [part.id, closedOf(spec, part)])),
    closers: gather(parts, ({closes}) => values(closes)),
    disturbs: gather([...fits, ...kinds.checks], ({disturbedBy}) => values(disturbedBy)),
    askedBy: gather(holdPoints, ({asks}) => values(asks)),
    loadedBy: gather(systems, ({joints}) => values(joints)),
  };
}

/**
 * The places of `other` that belong to some places of `item`: the same names where the two share any, all of
 * its places where they share none (a camshaft in one piece closes all its bores).
 */
export function meetingPlaces(item: Item, places: readonly string[], other: Item): readonly string[] {
  const all = placesOf(other);
  const shared = item.at.some((name) => other.at.includes(name));
  return shared ? all.filter((name) => places.includes(name)) : all;
}

/** What stands under an item in one of the lists of relations; empty where nothing does. */
export function relatedTo<T>(list: ReadonlyMap<string, readonly T[]>, {id}: Pick<Item, 'id'>): readonly T[] {
  return list.get(id) ?? NONE;
}

const NONE: readonly never[] = [];

/** Surfaces and joints that a part closes. */
export function closedBy({closed}: Pick<Relations, 'closed'>, part: Part): readonly (Surface | Joint)[] {
  return relatedTo(closed, part);
}

function closedOf(spec: Specification, part: Part): readonly (Surface | Joint)[] {
  const items = part.closes.flatMap(({value}) => spec.items.get(value) ?? []);
  return items.filter((item) => item.kind === 'surface' || item.kind === 'joint');
}

/** The part that a surface is on, or none. */
function partsUnder({on}: Surface): readonly string[] {
  return on === undefined ? [] : [on.value];
}

function values(list: readonly Located<string>[]): string[] {
  return list.map(({value}) => value);
}

function gather<T>(items: readonly T[], keys: (item: T) => readonly string[]): Map<string, T[]> {
  const map = new Map<string, T[]>();
  for (const item of items) {
    for (const key of new Set(keys(item))) {
      const list = map.get(key);
      if (list === undefined) map.set(key, [item]);
      else list.push(item);
    }
  }
  return map;
}
