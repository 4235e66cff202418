/** A fastener is tightened, or locked, before what must come first: a locking pin that is out, a fastener that is slack, a seal that cures. */
import {goesOnFirst} from '../build/locks.js';
import type {Action} from '../build/program.js';
import {idsOf, wordsOf} from '../procedure/values.js';
import {locksOf} from '../spec/locks.js';
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

/**
 * A wire or a tab closes the work: it waits for what `lock-after` names. Threadlocker and what else goes on before the
 * torque cannot wait.
 */
export function lockedEarly(action: Action, context: Context): void {
  const {item, places, tag} = action;
  if (item.kind !== 'fastener') return;
  const named = idsOf(tag, 'with');
  const locks = named.length > 0 ? named : locksOf(item);
  if (locks.length > 0 && locks.every((one) => goesOnFirst(context.book.spec, one))) return;
  reportEarly(action, 'locked', awaited(item, places, item.lockAfter, context), context);
}

/** Snug only holds things together, for a pin to be put through. */
function isRunDown({tag}: Action, {torque}: Fastener): boolean {
  return wordsOf(tag, 'to') === 'snug' && torque?.value !== 'snug';
}
