/** An amount made less by another: nominal sizes of what was ground. */
import {convertDifference} from './convert.js';
import type {Amount, Quantity} from './model.js';

/** Every number of the amount less the `by` (its upper end, where it is limits), in the amount's own unit and to the finer of the two steps. */
export function lessBy(amount: Amount, by: Amount): Amount {
  const off = single(by);
  if (off === undefined) return amount;
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

function single(amount: Amount): Quantity | undefined {
  if (amount.form === 'single') return amount.value;
  if (amount.form === 'tolerance') return amount.nominal;
  return amount.form === 'least' ? amount.low : amount.high;
}

function less(from: Quantity, by: Quantity): Quantity {
  const off = convertDifference(by, from.unit);
  const steps = [from.step, off.step].filter((step) => step > 0);
  const step = steps.length === 0 ? 0 : Math.min(...steps);
  const value = from.value - off.value;
  // What binary fractions add far behind the last place stated is no figure of the size.
  return {...from, value: step === 0 ? value : Number(value.toFixed(places(step))), step};
}

/** Decimal places down to a step, at most what a number holds. */
function places(step: number): number {
  return Math.min(12, Math.max(0, Math.ceil(-Math.log10(step) - 1e-9)));
}
