/** Whether an amount of the old side and one of the new are the same value. */
import {compare, dimensionOf, highOf, lowOf, unitOf} from '../quantity/convert.js';
import type {Amount, Quantity} from '../quantity/model.js';
import {isRestated} from '../quantity/restated.js';

/** In one unit only the same figures are the same; in two, those of which each is the other rounded to its figures. */
export function sameAmount(before: Amount, now: Amount): boolean {
  if (dimensionOf(before) !== dimensionOf(now)) return false;
  if (unitOf(before).symbol !== unitOf(now).symbol) return isRestated(before, now);
  if ((before.form === 'single') !== (now.form === 'single')) return false;
  return equal(lowOf(before), lowOf(now)) && equal(highOf(before), highOf(now));
}

function equal(a: Quantity | undefined, b: Quantity | undefined): boolean {
  if (a === undefined || b === undefined) return a === b;
  return compare(a, b) === 0;
}
