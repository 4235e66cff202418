/** Whether a value that somebody wrote down again, perhaps in another unit, is still the one that was asked for. */
import {agrees, dimensionOf, highOf, lowOf, si, unitOf} from './convert.js';
import type {Amount, Quantity} from './model.js';

/**
 * Whether `stated` may stand in the place of `asked`: the same figures in one unit; in another one the value rounded to
 * the figures stated, and a limit rounded inwards too. 0.04 mm stands for 0.0015 in, 0.035 in and 0.036 in stand for a
 * least of 0.9 mm; 0.034 in does not, nor does 0.002 in stand for 0.0015 in. A single value stands for the nominal of a
 * tolerance.
 */
export function standsFor(stated: Amount, asked: Amount): boolean {
  if (stated.form === 'single' && asked.form === 'tolerance') return isRounded(stated.value, asked.nominal);
  if (stated.form === 'tolerance' && asked.form === 'single') return isRounded(stated.nominal, asked.value);
  if ((stated.form === 'single') !== (asked.form === 'single')) return false;
  if (dimensionOf(stated) !== dimensionOf(asked)) return false;
  const inwards = stated.form === 'single' ? NEITHER : INWARDS;
  return both(lowOf(stated), lowOf(asked), inwards.low) && both(highOf(stated), highOf(asked), inwards.high);
}

/** Whether either may stand for the other, so that nothing was won or lost when the one became the other. */
export function isRestated(one: Amount, other: Amount): boolean {
  return unitOf(one).symbol === unitOf(other).symbol
    ? standsFor(one, other)
    : standsFor(one, other) && standsFor(other, one);
}

const NEITHER = {low: 0, high: 0} as const;
const INWARDS = {low: 1, high: -1} as const;

function both(stated: Quantity | undefined, asked: Quantity | undefined, inwards: 1 | -1 | 0): boolean {
  if (stated === undefined || asked === undefined) return stated === asked;
  return isRounded(stated, asked, inwards);
}

/** `inwards` is the way in which a limit may be rounded by up to a whole step: 1 upwards, -1 downwards, 0 neither. */
function isRounded(stated: Quantity, asked: Quantity, inwards: 1 | -1 | 0 = 0): boolean {
  if (stated.unit.dimension !== asked.unit.dimension) return false;
  const sameUnit = stated.unit.symbol === asked.unit.symbol;
  const finer = Math.min(stated.step, asked.step);
  // A fraction is exact: what it may stand for lies within the figures of what was asked.
  const step = sameUnit
    ? finer
    : stated.step === 0
      ? asked.step * (asked.unit.factor / stated.unit.factor)
      : stated.step;
  const rounded = {...stated, step};
  if (agrees(rounded, {...asked, step: 0})) return true;
  const rise = si(stated) - si(asked);
  return (
    !sameUnit &&
    inwards !== 0 &&
    rise * inwards > 0 &&
    agrees({...rounded, step: 2 * step}, {...asked, step: 0})
  );
}
