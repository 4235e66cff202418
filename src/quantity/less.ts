/** An amount made less by another: nominal sizes of what was ground. */
import {convertDifference, decimalStep} from './convert.js';
import type {Amount, Quantity} from './model.js';

/**
 * Every limit of the amount less `by`, in the amount's own unit and to the finer of the two steps; a tolerance keeps
 * its deviations. Where `by` has limits of its own, its nominal or else its upper end (the lower, of a least) is taken.
 *
 * @throws TypeError when the two are of different dimensions
 */
export function lessBy(amount: Amount, by: Amount): Amount {
  const off = takenOff(by);
  switch (amount.form) {
    case 'single':
      return {...amount, value: less(amount.value, off)};
    case 'range':
      return {...amount, low: less(amount.low, off), high: less(amount.high, off)};
    case 'tolerance':
      return {...amount, nominal: less(amount.nominal, off)};
    case 'most':
      return {...amount, high: less(amount.high, off)};
    case 'least':
      return {...amount, low: less(amount.low, off)};
  }
}

function takenOff(by: Amount): Quantity {
  if (by.form === 'single') return by.value;
  if (by.form === 'tolerance') return by.nominal;
  return by.form === 'least' ? by.low : by.high;
}

function less(from: Quantity, by: Quantity): Quantity {
  const off = convertDifference(by, from.unit);
  const value = from.value - off.value;
  if (from.step === 0 && off.step === 0) return {...from, value};
  const step = Math.min(decimalPlaceOf(from), decimalPlaceOf(off));
  // What binary fractions add far behind the last place stated is no figure of the size.
  return {...from, value: Number(value.toFixed(places(step))), step};
}

/** A fraction is exact: 1-17/32 bears all figures of 1.53125, and cut to those of an undersize it would lie elsewhere. */
function decimalPlaceOf({value, step}: Quantity): number {
  return step > 0 ? step : decimalStep(Number(value.toPrecision(13)));
}

/** Decimal places down to a step, at most what a number holds. */
function places(step: number): number {
  return Math.min(12, Math.max(0, Math.ceil(-Math.log10(step) - 1e-9)));
}
