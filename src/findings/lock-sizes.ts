/** The size of the wire or pin that locks a fastener, as the specification or a step names it, and where. */
import {lockKindOf} from '../build/locks.js';
import {type Action, whereIn} from '../build/program.js';
import {clauseOf} from '../procedure/values.js';
import type {Quantity} from '../quantity/model.js';
import {readAmount} from '../quantity/parse.js';
import {locksOf} from '../spec/locks.js';
import type {Fastener, LockKind, Specification} from '../spec/model.js';
import type {Where} from '../text/source.js';
import {aimedAt} from './worked-figures.js';

export interface SizedLock {
  /** As named: `wire-032`, `safety-wire`. */
  readonly name: string;
  readonly size: Quantity;
  readonly where: Where;
}

/** Whether the specification asks for a lock of the kind, by its name or by a consumable that is one. */
export function isLockedWith(fastener: Fastener, kind: LockKind, spec: Specification): boolean {
  return locksOf(fastener).some((name) => lockKindOf(spec, name) === kind);
}

/** The consumables that the specification asks for, where their size is known. */
export function specifiedLock(fastener: Fastener, kind: LockKind, spec: Specification): SizedLock[] {
  const where = fastener.lock?.where ?? fastener.where;
  return locksOf(fastener).flatMap((name) => {
    const size = sizeOf(name, kind, spec);
    return size === undefined ? [] : [{name, size, where}];
  });
}

/** What a `lock` tag names beyond the specification: another consumable, or a size in words behind it. */
export function usedLocks({item, tag, step}: Action, kind: LockKind, spec: Specification): SizedLock[] {
  const value = clauseOf(tag, 'with')?.value;
  const asked = item.kind === 'fastener' ? locksOf(item) : [];
  return (value?.type === 'ids' ? value.ids : []).flatMap(({id, span, rest}) => {
    if (lockKindOf(spec, id) !== kind) return [];
    const inWords = lengthIn(rest);
    const size = inWords ?? (asked.includes(id) ? undefined : sizeOf(id, kind, spec));
    return size ? [{name: id, size, where: whereIn(step, span)}] : [];
  });
}

function sizeOf(id: string, kind: LockKind, {items}: Specification): Quantity | undefined {
  const item = items.get(id);
  if (item?.kind !== 'consumable' || item.lock !== kind || item.size === undefined) return undefined;
  return aimedAt(item.size.value);
}

function lengthIn(words: string): Quantity | undefined {
  const reading = readAmount(words, 'length');
  return reading.ok ? aimedAt(reading.amount) : undefined;
}
