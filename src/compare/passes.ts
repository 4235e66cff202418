/** Torque passes held against those before: fewer, or one that takes more of the torque at a time, draws a joint down less evenly. */
import {dimensionOf, limitsOf} from '../quantity/convert.js';
import {formatAmount} from '../quantity/format.js';
import type {Amount} from '../quantity/model.js';
import type {Effect} from './model.js';
import {sameAmount} from './same-amount.js';

/** Undefined where every pass is what it was. */
export function judgedPasses(before: readonly Amount[], now: readonly Amount[]): Effect | undefined {
  if (now.length < before.length) return 'weakened';
  if (now.length > before.length) return 'strengthened';
  if (before.every((one, index) => isSame(one, now[index])))
    return isSaidAlike(before, now) ? undefined : 'reworded';
  // Undersizes for a grind are a list too, and nothing is drawn down by them.
  if ([...before, ...now].some((one) => dimensionOf(one) !== 'torque')) return 'changed';
  const rise = largestShare(now) - largestShare(before);
  // Shares move a little with the torque itself; half a hundredth is rounding.
  if (rise > ROUNDING) return 'weakened';
  return rise < -ROUNDING && isSame(before.at(-1), now.at(-1)) ? 'strengthened' : 'changed';
}

const ROUNDING = 0.005;

/** The most of the last torque that one pass adds to the pass before it. */
function largestShare(passes: readonly Amount[]): number {
  const ends = passes.map((one) => limitsOf(one).high);
  const rises = ends.map((end, index) => end - (ends[index - 1] ?? 0));
  return Math.max(...rises) / (ends.at(-1) ?? 1);
}

function isSame(before: Amount | undefined, now: Amount | undefined): boolean {
  return before !== undefined && now !== undefined && sameAmount(before, now);
}

function isSaidAlike(before: readonly Amount[], now: readonly Amount[]): boolean {
  return before.map(formatAmount).join() === now.map(formatAmount).join();
}
