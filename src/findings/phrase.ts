/** How findings speak of items, places, steps and what happened to a fact. */
import type {Fact, FactKind} from '../build/facts.js';
import type {Remark} from '../build/found.js';
import {type Action, whereIn} from '../build/program.js';
import {tell} from '../build/tell.js';
import {placesOf} from '../spec/items.js';
import type {Item} from '../spec/model.js';
import type {Where} from '../text/source.js';

/** `main-caps[front, rear]`, or the bare id where it is about every place. */
export function itemAt(item: Item, places: readonly string[]): string {
  const part = placeText(item, places);
  return part === undefined ? item.id : `${item.id}[${part}]`;
}

/** The places in words, or nothing where they are all the item has. */
export function placeText(item: Item, places: readonly string[]): string | undefined {
  const all = placesOf(item);
  const named = all.filter((place) => places.includes(place));
  return named.length === all.length || named.length === 0 ? undefined : named.join(', ');
}

/**
 * The verb as it goes with the item's id: `bolts are`, `crank-nut is`. Several are meant where the id is a plural or the
 * specification counts more than one; a count left out is 1, so the id has to speak for most fasteners.
 */
export function agreeing(item: Item, one: string, several: string): string {
  const counted = item.kind === 'fastener' && item.count > 1;
  return counted || PLURAL.test(item.id) ? several : one;
}

/** Words behind the item's id, as they go with it: `[is|are] never installed`, the one for one and the other for several. */
export function inNumber(item: Item, words: string): string {
  return words.replace(/\[([^[|\]]*)\|([^[|\]]*)\]/g, (_, one: string, several: string) =>
    agreeing(item, one, several),
  );
}

/** `timing-cover closes it`, `main-caps close them`. */
export function closing(cover: Item, closed: Item): string {
  return `${cover.id} ${agreeing(cover, 'closes', 'close')} ${agreeing(closed, 'it', 'them')}`;
}

/** `axis`, `boss`, `gas` and `radius` are one thing each. */
const PLURAL = /[^aisu]s$/;

/** The item and place fields of a finding. */
export function about(item: Item, places: readonly string[]): {item: string; place?: string} {
  const place = placeText(item, places);
  return {item: item.id, ...(place !== undefined && {place})};
}

/** Where an action's tag stands. */
export function tagWhere(action: Action): Where {
  return whereIn(action.step, action.tag.span);
}

/** Where an action names its item. */
export function targetWhere(action: Action): Where {
  return whereIn(action.step, action.target.span);
}

/** What set facts and what undid them, in build order. */
export function storyOf(facts: readonly Fact[]): Remark[] {
  const told = new Map<string, {action: Action; says: string}>();
  const add = (kind: FactKind, holds: boolean, action: Action | undefined) => {
    if (action === undefined) return;
    const says = tell(kind, holds, action);
    told.set(says, {action, says});
  };
  for (const {kind, by, undone} of facts) {
    if (kind === undefined) continue;
    add(kind, true, by);
    add(kind, false, undone);
  }
  return [...told.values()]
    .sort((a, b) => inBuildOrder(a.action, b.action))
    .map(({action, says}) => ({where: tagWhere(action), says}));
}

/** Sorts actions as the build does them. */
export function inBuildOrder(a: Action, b: Action): number {
  return a.step.order - b.step.order || a.tag.span.start - b.tag.span.start;
}

/** The remark that points at an item in the specification. */
export function specified(item: Item, says = `${item.id} is specified here`): Remark {
  return {where: item.where, says};
}

/** `a`, `a or b`, `a, b or c`. */
export function listed(words: readonly string[], joiner = 'or'): string {
  const last = words.at(-1) ?? '';
  return words.length < 2 ? last : `${words.slice(0, -1).join(', ')} ${joiner} ${last}`;
}
