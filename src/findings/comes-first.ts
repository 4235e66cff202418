/** What an `after` names: whether it is there yet, and how one says that it is not. */
import type {FactKind} from '../build/facts.js';
import type {Action} from '../build/program.js';
import {meetingPlaces} from '../build/relations.js';
import type {Verb} from '../procedure/verbs.js';
import {placesOf} from '../spec/items.js';
import type {Item, Joint, Located} from '../spec/model.js';
import type {Where} from '../text/source.js';
import {curing} from './curing.js';
import {isDone, isLate, lockedAsAsked, tightAsAsked, verbFor} from './done.js';
import type {Context} from './model.js';
import {about, agreeing, itemAt, storyOf, tagWhere} from './phrase.js';

/** What must come first and is not there, at the places where the same is to be done. */
export interface Awaited {
  readonly first: Item;
  readonly places: readonly string[];
  /** What is still to be done to it. */
  readonly verb: Verb;
  /** Where the specification says that it comes first. */
  readonly where: Where;
}

/** How an item is once the verb is done, and the facts that tell its story. */
const ONCE: {readonly [verb in Verb]?: {readonly says: string; readonly facts: readonly FactKind[]}} = {
  install: {says: 'in', facts: ['installed']},
  measure: {says: 'measured', facts: ['measured']},
  check: {says: 'checked', facts: ['checked']},
  witness: {says: 'witnessed', facts: ['witnessed']},
  record: {says: 'recorded', facts: ['recorded']},
  torque: {says: 'torqued', facts: ['tight']},
  lock: {says: 'locked', facts: ['tight', 'locked']},
  stripe: {says: 'striped', facts: ['tight', 'striped']},
  seal: {says: 'sealed', facts: ['sealed']},
  cure: {says: 'cured', facts: ['sealed', 'cured']},
  fill: {says: 'filled', facts: ['filled']},
};

export function saysOnce(verb: Verb): string {
  return ONCE[verb]?.says ?? 'done';
}

/** What is done by some step of the book, but not yet: of `after`, at the places that meet these of the item. */
export function awaited(
  item: Item,
  places: readonly string[],
  after: readonly Located<string>[],
  context: Context,
): Awaited[] {
  return after.flatMap(({value, where}) => {
    const first = context.book.spec.items.get(value);
    if (first === undefined) return [];
    const late = new Map<Verb, string[]>();
    for (const place of meetingPlaces(item, places, first)) {
      const verb = dueVerb(first, place, context);
      if (verb !== undefined) late.set(verb, [...(late.get(verb) ?? []), place]);
    }
    return [...late].map(([verb, at]) => ({first, places: at, verb, where}));
  });
}

/** Reports each of them at an action that they should come before: "first-start is checked before may-start is witnessed". */
export function reportEarly(
  action: Action,
  done: string,
  early: readonly (Awaited & {readonly says?: string})[],
  context: Context,
): void {
  const {item, places} = action;
  const be = agreeing(item, 'is', 'are');
  for (const {first, places: late, verb, where, says = saysOnce(verb)} of early) {
    context.report({
      where: tagWhere(action),
      message: `${itemAt(item, places)} ${be} ${done} before ${itemAt(first, late)} ${agreeing(first, 'is', 'are')} ${says}`,
      ...about(item, places),
      story: storyOf(factsOf(first, late, verb, context)),
      related: [{where, says: `${item.id} ${be} ${done} after ${first.id}`}],
      lacks: {item: first.id, verbs: [verb]},
    });
  }
}

function factsOf({id}: Item, places: readonly string[], verb: Verb, {state}: Context) {
  return places.flatMap((place) => (ONCE[verb]?.facts ?? []).map((kind) => state.get(kind, id, place)));
}

/** What is never done at all is another finding, and asked for nowhere else. */
function dueVerb(first: Item, place: string, context: Context): Verb | undefined {
  if (first.kind === 'joint' && isDone(first, place, context.state)) return cureDue(first, place, context);
  if (!isLate(first, place, context)) return undefined;
  if (first.kind !== 'fastener' || !tightAsAsked(first, place, context.state)) return verbFor(first);
  return lockedAsAsked(first, place, context.state) ? 'stripe' : 'lock';
}

/** A sealed joint is done once its sealant has cured: until then nothing may be driven in over it, nor the joint wired up. */
function cureDue(joint: Joint, place: string, {state, relations, does}: Context): Verb | undefined {
  const needs = curing(joint, place, state, relations);
  if (needs === undefined) return undefined;
  const cured =
    does('cure', joint.id, place) || placesOf(needs.sealant).some((at) => does('cure', needs.sealant.id, at));
  return cured ? 'cure' : undefined;
}
