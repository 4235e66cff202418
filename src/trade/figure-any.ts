/** Options of figures that hold for whatever is measured: lengths, torques, temperatures. */
import type {Amount, Quantity} from '../quantity/model.js';
import {readAmount} from '../quantity/parse.js';
import {type Option, type Read, text} from './figure-options.js';
import {refused} from './worked.js';

/** A value or limits in any unit. */
export function anyAmount(says: string, example: string): Option<Amount> {
  return text('an amount with its unit', says, example, readAny);
}

/** One value in any unit. */
export function anyQuantity(says: string, example: string): Option<Quantity> {
  return text('a value with its unit', says, example, (given) => {
    const read = readAny(given);
    if (!read.ok) return read;
    if (read.value.form === 'single') return {ok: true, value: read.value.value};
    return refused('limits were given where one value is due', `write it as ${example}`);
  });
}

function readAny(given: string): Read<Amount> {
  const reading = readAmount(given);
  if (reading.ok) return {ok: true, value: reading.amount};
  return refused(reading.fault.says, reading.fault.hint);
}
