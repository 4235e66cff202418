/** What a row of the tables of calls is: a calculation that works, and which of its quantities may be what. */
import type {Amount, Quantity} from '../../src/quantity/model.js';
import type {Worked} from '../../src/trade/worked.js';
import {q} from '../help/amount.js';

export type Inputs = Readonly<Record<string, Quantity>>;

export interface Call {
  readonly of: string;
  /** A call that works, each quantity by the name that the table below uses. */
  readonly inputs: Inputs;
  /** Those that may be nought, and those that may be negative too. */
  readonly nought?: readonly string[];
  readonly any?: readonly string[];
  readonly work: (inputs: Inputs) => Worked<unknown>;
}

export type Get = (name: string) => Quantity;

/** The quantity of that name; a slip in a row of the table stops the test. */
export function quantityOf(inputs: Inputs, name: string): Quantity {
  const found = inputs[name];
  if (found === undefined) throw new Error(`no input ${name}`);
  return found;
}

export function range(low: Quantity, high: Quantity): Amount {
  return {form: 'range', low, high};
}

/** A row whose texts are read as quantities: `call('crush', {height: '0.002 in'}, (get) => ...)`. */
export function call(
  name: string,
  texts: Readonly<Record<string, string>>,
  work: (get: Get) => Worked<unknown>,
  free: Pick<Call, 'nought' | 'any'> = {},
): Call {
  const inputs = Object.fromEntries(Object.entries(texts).map(([key, text]) => [key, q(text)]));
  return {of: name, inputs, work: (given) => work((key) => quantityOf(given, key)), ...free};
}
