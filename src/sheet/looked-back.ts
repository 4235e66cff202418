/** What a step looks back to: the readings that open its branch, and the work that its hold point signs for. */
import type {Branch} from '../build/form.js';
import type {Step} from '../procedure/model.js';
import {branchState, tagsOf} from '../procedure/values.js';
import type {Amount} from '../quantity/model.js';
import {type Context, placesOfUse, type Use, usesOf} from './context.js';
import {limitsOf, readingKeys} from './entry.js';

/** The case in which the sub-steps of an `if:` are followed, and the boxes whose readings decide it. */
export function branchOf(use: Use, step: Step, context: Context): Branch {
  const {id, places} = use.target;
  const asked = new Set(places.map(({name}) => name));
  return {item: id, is: branchState(use.tag), boxes: deciding(id, asked, step, context)};
}

/** The limits that judge those readings: the same that stand at their blanks; undefined where none are known. */
export function judgingLimits(use: Use, step: Step, context: Context): Amount | undefined {
  const {id, places} = use.target;
  const asked = new Set(places.map(({name}) => name));
  const read = lastReading(id, asked, step, context);
  const reading = read && usesOf(read, context).find((one) => one.target.id === id && isReading(one));
  const limits = reading && limitsOf(reading, context);
  return typeof limits === 'object' ? limits : undefined;
}

function isReading({tag}: Use): boolean {
  return tag.verb === 'measure' || tag.verb === 'check';
}

/** The readings of an item in the last step, up to this one, that takes any; only those of the places asked for. */
function deciding(id: string, asked: ReadonlySet<string>, step: Step, context: Context): readonly string[] {
  const read = lastReading(id, asked, step, context);
  return read === undefined ? [] : keysIn(read, id, asked, context);
}

function lastReading(id: string, asked: ReadonlySet<string>, step: Step, context: Context): Step | undefined {
  return context.steps.slice(0, step.index + 1).findLast((one) => keysIn(one, id, asked, context).length > 0);
}

function keysIn(step: Step, id: string, asked: ReadonlySet<string>, context: Context): readonly string[] {
  return usesOf(step, context).flatMap((use, at) => {
    if (use.target.id !== id) return [];
    const keys = readingKeys({...use, number: at + 1}, step, context);
    if (asked.size === 0) return keys;
    const places = placesOfUse(use);
    return keys.filter((_, place) => asked.has(places[place] ?? ''));
  });
}

/**
 * The steps up to this one that do something to what a hold point asks for, and the step itself; all since the hold
 * point before where it asks for nothing by name. Nobody signs for an item that they worked on (14 CFR 121.371(c)).
 */
export function stepsLookedAt(asks: readonly string[], step: Step, {steps}: Context): readonly string[] {
  const before = steps.slice(0, step.index);
  const asked = new Set(asks);
  const last = before.findLastIndex((one) => tagsOf(one, 'witness').length > 0);
  const worked = before.filter(({tags, index}) =>
    asked.size === 0 ? index > last : tags.some(({targets}) => targets.some(({id}) => asked.has(id))),
  );
  return [...worked, step].map(({number}) => number);
}
