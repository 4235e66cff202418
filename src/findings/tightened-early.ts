/** A fastener is tightened before what its `after` names: a locking pin that is out, a fastener that is slack, a seal that cures. */
import type {Action} from '../build/program.js';
import {wordsOf} from '../procedure/values.js';
import type {Fastener} from '../spec/model.js';
import {awaited, reportEarly} from './comes-first.js';
import type {Context} from './model.js';

/**
 * Reports what must come before a tightening and is not there, at every tightening, of a trial too: what a pin keeps
 * from turning turns at the first pass as at the last.
 */
export function tightenedEarly(action: Action, context: Context): void {
  const {item, places} = action;
  if (item.kind !== 'fastener' || isRunDown(action, item)) return;
  const early = awaited(item, places, item.after, context).flatMap((one) => {
    if (one.first.kind !== 'fastener') return [one];
    // Its lock and its stripe may well come later.
    return one.verb === 'torque' ? [{...one, says: 'tight'}] : [];
  });
  reportEarly(action, 'torqued', early, context);
}

/** Snug only holds things together, for a pin to be put through. */
function isRunDown({tag}: Action, {torque}: Fastener): boolean {
  return wordsOf(tag, 'to') === 'snug' && torque?.value !== 'snug';
}
