/** Amounts as a shop writes them; a text that is none stops the test with the reason. */
import type {Amount, Dimension, Quantity} from '../../src/quantity/model.js';
import {readAmount} from '../../src/quantity/parse.js';

/** `amount('1.500–1.502 in')`. */
export function amount(text: string, dimension?: Dimension): Amount {
  const reading = readAmount(text, dimension);
  if (!reading.ok) throw new Error(`${text}: ${reading.fault.says}`);
  return reading.amount;
}

/** A single one: `q('2.500 in')`. */
export function q(text: string): Quantity {
  const read = amount(text);
  if (read.form !== 'single') throw new Error(`${text} is not a single value`);
  return read.value;
}
