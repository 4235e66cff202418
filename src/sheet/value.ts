/** Amounts as the sheet prints them, and the few comparisons that decide what it prints. */
import {amountsAgree, compare, dimensionOf, highOf, lowOf, unitOf} from '../quantity/convert.js';
import {otherUnit} from '../quantity/counterpart.js';
import {formatAmount, inOtherSystem, type System} from '../quantity/format.js';
import type {Amount, Unit} from '../quantity/model.js';
import type {Value} from './model.js';

/** The amount in the shop's system, with the other one beside it where the two differ. */
export function printed(amount: Amount, first: System): Value {
  const stated = formatAmount(amount);
  const other = inOtherSystem(amount);
  if (other === undefined || other === stated) return {text: stated};
  return statedFirst(amount, first) ? {text: stated, also: other} : {text: other, also: stated};
}

/** The unit in which a reading is written down beside these limits: that of the value printed first. */
export function readingUnit(limits: Amount, first: System): Unit {
  const other = otherUnit(limits);
  return other === undefined || statedFirst(limits, first) ? unitOf(limits) : other;
}

/** A unit that serves both systems is never put second. */
function statedFirst(amount: Amount, first: System): boolean {
  return unitOf(amount).system !== (first === 'inch' ? 'metric' : 'inch');
}

/** Whether two amounts say the same, to the figures stated. */
export function sameAmount(one: Amount, other: Amount): boolean {
  return amountsAgree(one, other);
}

/** Whether all that one allows lies below what the other asks for. */
export function isLess(one: Amount, other: Amount): boolean {
  const high = highOf(one);
  const low = lowOf(other);
  if (high === undefined || low === undefined || dimensionOf(one) !== dimensionOf(other)) return false;
  return !sameAmount(one, other) && compare(high, low) < 0;
}
