/** Short ways to get at results; each stops the test with the reason where there is none. */
import {si} from '../../src/quantity/convert.js';
import type {Quantity} from '../../src/quantity/model.js';
import {type UnitSymbol, unit} from '../../src/quantity/units.js';
import type {Named, Refused, Worked, WorkedOut} from '../../src/trade/worked.js';

export function out<T>(worked: Worked<T>): WorkedOut<T> {
  if (!worked.ok) throw new Error(`${worked.says}; ${worked.hint}`);
  const {formula, inputs, source, band, advisory} = worked;
  const texts = [formula, source, ...(advisory === undefined ? [] : [advisory])];
  if (texts.some(isBlank)) throw new Error(`formula, source or advisory is blank: ${texts.join(' / ')}`);
  insistOnWords([...inputs, ...(band ? [band] : [])]);
  return worked;
}

/** A person who checks the working must see what each value is: none without its name, no name without its value. */
export function insistOnWords(values: readonly Named[]): void {
  for (const {name, value} of values) {
    if (isBlank(name)) throw new Error('a value of the working has no name');
    if (typeof value === 'string' ? isBlank(value) : typeof value !== 'object')
      throw new Error(`${name} of the working has no value`);
  }
}

function isBlank(text: string | undefined): boolean {
  return text === undefined || text.trim() === '';
}

export function result<T>(worked: Worked<T>): T {
  return out(worked).result;
}

export function refusal<T>(worked: Worked<T>): Refused {
  if (worked.ok) throw new Error('worked out, where a refusal is due');
  if (isBlank(worked.says) || isBlank(worked.hint))
    throw new Error(`a refusal says what is wrong and what to do: "${worked.says}; ${worked.hint}"`);
  return worked;
}

/** The value in a unit, without the noise of conversion. */
export function valueIn(quantity: Quantity | undefined, symbol: UnitSymbol): number {
  if (quantity === undefined) throw new Error('no quantity');
  const to = unit(symbol);
  return Number(((si(quantity) - to.offset) / to.factor).toPrecision(10));
}
