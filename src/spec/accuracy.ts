/** The accuracy of a gauge, where the shop states it as a length, pressure or the like and not as a class. */
import type {Dimension, Quantity} from '../quantity/model.js';
import {readAmount} from '../quantity/parse.js';
import type {Tool} from './model.js';

/** `±0.0001 in`, of the dimension where one is due. A class or a percentage says nothing of a gauge without its range: it is left to the resolution. */
export function accuracyOf({accuracy}: Tool, due?: Dimension): Quantity | undefined {
  const reading = accuracy && readAmount(accuracy.value.trim().replace(/^(?:±|\+\/-)\s*/, ''), due);
  return reading?.ok && reading.amount.form === 'single' ? reading.amount.value : undefined;
}
