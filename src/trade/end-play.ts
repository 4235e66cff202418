/** End play of a shaft: what the parts give, and the thrust washers that bring it within its limits. */
import {compare, highOf, lowOf, si} from '../quantity/convert.js';
import {formatAmount} from '../quantity/format.js';
import type {Amount, Quantity} from '../quantity/model.js';
import {type Fit, fitOfLimits} from './fit.js';
import {lengthLike} from './result.js';
import {ESTIMATE, notOf, type Refused, refused, type Worked} from './worked.js';

/**
 * End play from the length between the shaft's thrust faces and that of what stands between them, washers included:
 * readings or limits (lengths over 0). Exact. Geometry.
 */
export function endPlay(between: Amount, over: Amount): Worked<Fit> {
  const fit = fitOfLimits(between, over);
  if (!fit.ok) return fit;
  if (fit.result.most.value <= 0)
    return refused('the shaft would be locked endways', 'check both lengths and their units');
  return {
    ok: true,
    result: fit.result,
    formula: 'end play = length between thrust faces − length over the thrust bearing',
    inputs: [
      {name: 'between thrust faces', value: between},
      {name: 'over the thrust bearing', value: over},
    ],
    source: 'geometry',
    ...(fit.result.least.value < 0
      ? {advisory: 'By these limits some pairs would have no end play at all.'}
      : {}),
  };
}

export interface Washer {
  /** The thickness to fit in place of the present one. */
  readonly washer: Quantity;
  /** The end play that it gives. */
  readonly play: Quantity;
}

/**
 * The washer of a set that brings the end play nearest to the middle of its limits (lengths over 0, play 0 or more);
 * refused where none brings it within them. Geometry: a thicker washer takes its excess off the play.
 */
export function thrustWasher(
  play: Quantity,
  limits: Amount,
  present: Quantity,
  set: readonly Quantity[],
): Worked<Washer> {
  const [low, high] = [lowOf(limits), highOf(limits)];
  if (low === undefined || high === undefined)
    return refused('the limits have one end only', 'give both, such as 0.003–0.009 in');
  const refusal =
    notOf('length', {'the end play': play}, 'not-negative') ??
    notOf('length', {'the washer': present, 'the lower limit': low, 'the upper limit': high}) ??
    firstWrong(set);
  if (refusal) return refusal;
  const choices = set
    .map((washer) => ({
      washer,
      play: lengthLike(si(play) - (si(washer) - si(present)), [play, washer, present]),
    }))
    .filter((one) => compare(one.play, low) >= 0 && compare(one.play, high) <= 0);
  const found = nearestTo((si(low) + si(high)) / 2, choices);
  if (found === undefined)
    return refused(
      `no washer of the set brings the end play within ${formatAmount(limits)}`,
      'look for wear of the thrust faces, or get other washers',
    );
  return {
    ok: true,
    result: found,
    formula: 'play = play before − (washer − present washer)',
    inputs: [
      {name: 'end play', value: play},
      {name: 'limits', value: limits},
      {name: 'present washer', value: present},
      ...set.map((value) => ({name: 'washer of the set', value})),
    ],
    source: 'geometry',
    advisory: ESTIMATE,
  };
}

function nearestTo(middle: number, choices: readonly Washer[]): Washer | undefined {
  const away = (one: Washer) => Math.abs(si(one.play) - middle);
  const [first, ...others] = choices;
  return first && others.reduce((best, one) => (away(one) < away(best) ? one : best), first);
}

function firstWrong(set: readonly Quantity[]): Refused | undefined {
  if (set.length === 0) return refused('the set has no washer', 'give the thicknesses that can be had');
  for (const washer of set) {
    const refusal = notOf('length', {'a washer of the set': washer});
    if (refusal) return refusal;
  }
  return undefined;
}
