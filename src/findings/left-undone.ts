/** The common part of what is left undone at the end of the build: which places, where to say so, and the story. */

import type {Fact, FactKind} from '../build/facts.js';
import {stepName} from '../build/tell.js';
import {placesOf} from '../spec/items.js';
import type {Item} from '../spec/model.js';
import type {Fix} from '../text/edit.js';
import {lastPlace} from './last-place.js';
import type {Context} from './model.js';
import {about, inNumber, itemAt, specified, storyOf} from './phrase.js';

export interface Undone {
  /** The fact that should hold at the end. */
  readonly fact: FactKind;
  /** Further facts whose story belongs to it. */
  readonly also?: readonly FactKind[];
  /** What ends wrong, after the item, for one and for several: "[is|are] never installed". */
  readonly never: string;
  /** What was done and undone again, after the item: "[is|are] taken out". */
  readonly again: string;
  /** Why it must be, for the place in the specification. */
  readonly asked: string;
  /** What would mend it, where that is certain. */
  readonly fix?: (open: readonly string[]) => Fix | undefined;
}

/** Reports the places of an item at which the fact does not hold now. */
export function reportUndone(item: Item, undone: Undone, context: Context): void {
  const {state} = context;
  reportOpen(
    item,
    placesOf(item).filter((place) => !state.holds(undone.fact, item.id, place)),
    undone,
    context,
  );
}

/** Reports these places of an item. */
export function reportOpen(item: Item, open: readonly string[], undone: Undone, context: Context): void {
  if (open.length === 0) return;
  const {state, relations, report} = context;
  const kinds = [undone.fact, ...(undone.also ?? [])];
  const facts = open.map((place) => state.get(undone.fact, item.id, place));
  const where = lastPlace(item, open, kinds, state, relations);
  const fix = undone.fix?.(open);
  report({
    where,
    message: `${itemAt(item, open)} ${cause(facts, item, undone)}`,
    ...about(item, open),
    story: storyOf(open.flatMap((place) => kinds.map((kind) => state.get(kind, item.id, place)))),
    related: [specified(item, undone.asked)],
    ...(fix && {fix}),
  });
}

function cause(facts: readonly Fact[], subject: Item, {never, again}: Undone): string {
  const fact = facts.find(({holds, undone}) => !holds && undone !== undefined);
  if (fact?.undone === undefined) return inNumber(subject, never);
  const {step, verb, item} = fact.undone;
  const done = fact.by === undefined ? '' : `: done at ${stepName(fact.by.step, step)},`;
  return `${inNumber(subject, again)}${done} undone at ${stepName(step)} (${verb}: ${item.id}) and never made good`;
}
