/** What goes along with a command though no word of its own commands it: a new part, a turning shaft, a spring washer. */
import type {Verb} from '../procedure/verbs.js';
import {locksOf} from '../spec/locks.js';
import type {Item} from '../spec/model.js';
import type {Heard} from './heard.js';

/** Verbs that the same words say of the item, before the command's own and after it. */
export function companionsOf(
  verb: Verb,
  item: Item,
  heard: Heard,
): {readonly before: readonly Verb[]; readonly after: readonly Verb[]} {
  return {
    before: isRenewed(verb, item, heard) ? ['renew'] : [],
    after: [
      ...(isTurned(verb, item, heard) ? (['turn'] as const) : []),
      ...(isWashered(verb, item, heard) ? (['lock'] as const) : []),
    ],
  };
}

/** `fit a new oil filter`: the new one is taken from its box here; `the new one` was taken before. */
function isRenewed(verb: Verb, item: Item, {text}: Heard): boolean {
  const single = verb === 'install' && item.kind === 'part' && item.singleUse;
  return single && /^\w+\s+(?:in |on )?an?\s+new\b/i.test(text);
}

/** `slide the camshaft in, turning as it goes`, of what the specification wants turned. */
function isTurned(verb: Verb, item: Item, {sentence}: Heard): boolean {
  return verb === 'install' && item.kind === 'part' && item.turning && sentence.has('turning');
}

/** `torque the bolts, a spring washer under each`. */
function isWashered(verb: Verb, item: Item, {stretch}: Heard): boolean {
  const sprung = verb === 'torque' && item.kind === 'fastener' && locksOf(item).includes('spring-washer');
  return sprung && /\bspring washers?\b/i.test(stretch.text);
}
