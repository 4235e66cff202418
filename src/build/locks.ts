/** The locks on a fastener: which of those that the specification asks for are on, and which stay when it is tightened. */
import {isLockKind, LOCK_KINDS, locksOf} from '../spec/locks.js';
import type {Fastener, LockKind, Specification} from '../spec/model.js';
import type {Detail} from './facts.js';

/** The kind of lock that a word names, itself or as a consumable that is one. */
export function lockKindOf(spec: Specification, word: string): LockKind | undefined {
  const item = spec.items.get(word);
  if (item?.kind === 'consumable') return item.lock;
  return isLockKind(word) ? word : undefined;
}

/** True for a lock that is on the fastener before it is tightened, and stays on when it is tightened further. */
export function goesOnFirst(spec: Specification, word: string): boolean {
  const kind = lockKindOf(spec, word);
  return kind !== undefined && LOCK_KINDS[kind].goesOn === 'before';
}

/** Whether the lock that is named is the one asked for: the same by name, or of the kind where only that is asked. */
export function isLockAsked(named: string, asked: string, spec: Specification): boolean {
  return named === asked || (isLockKind(asked) && lockKindOf(spec, named) === asked);
}

/**
 * What is known of a fastener with these locks on. One of another kind stands in for one asked for: that it is wrong is
 * a finding of its own.
 */
export function lockedWith(fastener: Fastener, ids: readonly string[], spec: Specification): Detail {
  const asked = locksOf(fastener);
  const missing = asked.filter((one) => !ids.some((id) => isLockAsked(id, one, spec)));
  const wrong = ids.filter((id) => !asked.some((one) => isLockAsked(id, one, spec)));
  return missing.length > wrong.length ? {ids, lacks: missing} : {ids};
}
