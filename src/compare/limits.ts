/** Two statements of a limit, end by end: whatever passes now and did not is a weakening, and the other way round. */
import {compare, highOf, lowOf} from '../quantity/convert.js';
import {formatQuantity} from '../quantity/format.js';
import type {Amount, Quantity} from '../quantity/model.js';
import {isRestated} from '../quantity/restated.js';
import type {Effect} from './model.js';

/** `says` is there where a limit moved both ways: "up to 0.0045 in passes now". */
export interface Judgement {
  readonly effect: Effect;
  readonly says?: string;
}

/** Both amounts are of one dimension. Empty where every value passes that passed, and no other. */
export function judgedLimits(before: Amount, now: Amount): Judgement[] {
  const [low, high] = [lowOf(now), highOf(now)];
  const ends = [endMoved(lowOf(before), low, 'low'), endMoved(highOf(before), high, 'high')];
  const wider = [
    ...(ends[0] === 'out'
      ? [low === undefined ? 'any lower value passes now' : `down to ${formatQuantity(low)} passes now`]
      : []),
    ...(ends[1] === 'out'
      ? [high === undefined ? 'any higher value passes now' : `up to ${formatQuantity(high)} passes now`]
      : []),
  ];
  const narrower = [
    ...(ends[0] === 'in' && low !== undefined ? [`below ${formatQuantity(low)} no longer passes`] : []),
    ...(ends[1] === 'in' && high !== undefined ? [`above ${formatQuantity(high)} no longer passes`] : []),
  ];
  const both = wider.length > 0 && narrower.length > 0;
  const judgement = (effect: Effect, says: readonly string[]): Judgement[] =>
    says.length === 0 ? [] : [{effect, ...(both && {says: says.join(', ')})}];
  return [...judgement('weakened', wider), ...judgement('strengthened', narrower)];
}

/** Which way an end moved; one stated in another unit moved only if the one is not the other rounded to its figures. */
function endMoved(
  before: Quantity | undefined,
  now: Quantity | undefined,
  end: 'low' | 'high',
): 'in' | 'out' | undefined {
  if (before === undefined || now === undefined) {
    if (before === now) return undefined;
    return now === undefined ? 'out' : 'in';
  }
  const otherUnit = before.unit.symbol !== now.unit.symbol;
  if (otherUnit && isRestated(oneEnd(before, end), oneEnd(now, end))) return undefined;
  const rise = compare(now, before);
  if (rise === 0) return undefined;
  return rise > 0 === (end === 'high') ? 'out' : 'in';
}

function oneEnd(value: Quantity, end: 'low' | 'high'): Amount {
  return end === 'low' ? {form: 'least', low: value} : {form: 'most', high: value};
}
