/** The kinds of lock that a shop can ask for, and whether each goes on before the fastener is tightened or after. */
import type {Fastener, LockKind} from './model.js';

export interface LockNote {
  /** As a sheet says it. */
  readonly says: string;
  /** When the locking itself is done, against the final torque. */
  readonly goesOn: 'before' | 'after';
  /** What the plain before and after leave out. */
  readonly remark?: string;
}

/** When each goes on is common practice, no source. */
export const LOCK_KINDS: Readonly<Record<LockKind, LockNote>> = {
  'safety-wire': {says: 'safety wire', goesOn: 'after'},
  'cotter-pin': {says: 'cotter pin', goesOn: 'after'},
  'tab-washer': {
    says: 'tab washer',
    goesOn: 'after',
    remark: 'put under the head before tightening, its tab bent up after',
  },
  threadlocker: {says: 'threadlocker', goesOn: 'before', remark: 'on the threads, clean and dry'},
  'spring-washer': {says: 'spring washer', goesOn: 'before'},
  'self-locking-nut': {says: 'self-locking nut', goesOn: 'before'},
  'lock-nut': {says: 'lock nut', goesOn: 'after'},
  staking: {says: 'staking', goesOn: 'after'},
};

/** True for the name of a kind of lock; a lock may also be named by a consumable's id. */
export function isLockKind(word: string): word is LockKind {
  return Object.hasOwn(LOCK_KINDS, word);
}

/** The locks that a fastener asks for, by kind or consumable, all of which go on. */
export function locksOf({lock}: Pick<Fastener, 'lock'>): readonly string[] {
  return lock === undefined || typeof lock.value === 'string' ? [] : lock.value;
}

/** As engine.yaml writes it: `safety-wire`, `[threadlocker, safety-wire]`. */
export function lockText(value: readonly string[] | string | undefined): string {
  if (typeof value !== 'object') return value ?? '';
  return value.length === 1 ? (value[0] ?? '') : `[${value.join(', ')}]`;
}
