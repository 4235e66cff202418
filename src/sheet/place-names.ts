/** What the places of a procedure's items are called, drawn once: bearings, cylinders, anything with several places. */
import type {Procedure} from '../procedure/model.js';
import {type Context, spaced, usesOf} from './context.js';
import {placesDrawing} from './drawing.js';
import type {PlaceNames} from './model.js';

/** Names beyond these are left to "and others". */
const MOST_NAMED = 4;

/** One drawing for each list of places, with the items that share it; fasteners are drawn where they are tightened. */
export function placeNames(procedure: Procedure, context: Context): PlaceNames[] {
  const found = new Map<string, {readonly at: readonly string[]; readonly names: Set<string>}>();
  for (const step of procedure.steps) {
    for (const {item} of usesOf(step, context)) {
      if (item === undefined || item.at.length < 2 || item.kind === 'fastener') continue;
      const key = item.at.join('\n');
      const known = found.get(key) ?? {at: item.at, names: new Set()};
      found.set(key, known);
      known.names.add(item.name);
    }
  }
  return [...found.values()].map(({at, names}) => ({
    items: [...names].slice(0, MOST_NAMED),
    more: names.size > MOST_NAMED,
    drawing: placesDrawing('places', at.map(spaced)),
  }));
}
