/** A fastener is tightened before what its `after` names: a locking pin that is out, a fastener that is slack. */
import type {Action} from '../build/program.js';
import {meetingPlaces} from '../build/relations.js';
import {wordsOf} from '../procedure/values.js';
import type {Fastener, Item} from '../spec/model.js';
import {isLate, tightAsAsked, verbFor} from './done.js';
import type {Context} from './model.js';
import {about, agreeing, itemAt, storyOf, tagWhere} from './phrase.js';

/**
 * Reports what must come before a tightening and is not there, at every tightening, of a trial too: what a pin keeps
 * from turning turns at the first pass as at the last.
 */
export function tightenedEarly(action: Action, context: Context): void {
  const {item, places} = action;
  if (item.kind !== 'fastener' || isRunDown(action, item)) return;
  for (const {value, where} of item.after) {
    const first = context.book.spec.items.get(value);
    if (first === undefined) continue;
    const late = meetingPlaces(item, places, first).filter((place) => isAwaited(first, place, context));
    if (late.length === 0) continue;
    const part = first.kind === 'part';
    const facts = late.map((place) => context.state.get(part ? 'installed' : 'tight', first.id, place));
    const done = part ? 'in' : 'tight';
    context.report({
      where: tagWhere(action),
      message: `${itemAt(item, places)} ${agreeing(item, 'is', 'are')} torqued before ${itemAt(first, late)} ${agreeing(first, 'is', 'are')} ${done}`,
      ...about(item, places),
      story: storyOf(facts),
      related: [{where, says: `${item.id} ${agreeing(item, 'is', 'are')} tightened after ${value}`}],
      lacks: {item: first.id, verbs: [verbFor(first)]},
    });
  }
}

/** Snug only holds things together, for a pin to be put through. */
function isRunDown({tag}: Action, {torque}: Fastener): boolean {
  return wordsOf(tag, 'to') === 'snug' && torque?.value !== 'snug';
}

/** Its lock and its stripe may well come later; what no step ever tightens is another finding. */
function isAwaited(first: Item, place: string, context: Context): boolean {
  if (first.kind !== 'fastener') return isLate(first, place, context);
  return !tightAsAsked(first, place, context.state) && context.does('torque', first.id, place);
}
