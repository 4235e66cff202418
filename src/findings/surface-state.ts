/** How clean and how wet a surface is: asked by several findings. */

import {meetingPlaces, type Relations} from '../build/relations.js';
import type {State} from '../build/state.js';
import type {Surface} from '../spec/model.js';

/** Cleaned since it was last dirtied, or on a part that is new out of its wrapper. */
export function surfaceClean(state: State, {spec}: Relations, surface: Surface, place: string): boolean {
  const fact = state.get('clean', surface.id, place);
  if (fact.holds) return true;
  if (fact.undone !== undefined || surface.on === undefined) return false;
  const part = spec.items.get(surface.on.value);
  if (part === undefined) return false;
  return meetingPlaces(surface, [place], part).every((at) => state.holds('fresh', part.id, at));
}

/** Carries lubricant now. */
export function surfaceLubed(state: State, surface: Surface, place: string): boolean {
  return state.holds('lubed', surface.id, place);
}

/** Carries one of the lubricants that the specification names, or any where it names none. */
export function lubedAsAsked(state: State, surface: Surface, place: string): boolean {
  const fact = state.get('lubed', surface.id, place);
  if (!fact.holds) return false;
  const used = fact.detail?.ids;
  // A tag that names no lubricant takes the one specified.
  if (used === undefined || surface.lubricants.length === 0) return true;
  return surface.lubricants.some(({value}) => used.includes(value));
}
