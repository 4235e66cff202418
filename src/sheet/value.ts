/** Amounts as the sheet prints them, and the few comparisons that decide what it prints. */
import {amountsAgree, compare, dimensionOf, highOf, lowOf, unitOf} from '../quantity/convert.js';
import {otherUnit} from '../quantity/counterpart.js';
import {formatAmount, inOtherSystem, type System} from '../quantity/format.js';
import type {Amount, Quantity, Unit} from '../quantity/model.js';
import type {Context} from './context.js';
import type {Value} from './model.js';
import type {Words} from './words.js';

/** A value as one text, the other system in brackets: "1.2 in (30 mm)". */
export function valueText({text, also}: Value): string {
  return also === undefined ? text : `${text} (${also})`;
}

/** The amount in the shop's system, with the other one beside it where the two differ. */
export function printed(amount: Amount, context: Shown): Value {
  return bothSystems(amount, amount, context);
}

/** What a tool reaches: `2–6 in` is meant to the millimetre, 51–152 mm, though its ends have but one figure. */
export function printedReach(amount: Amount, context: Shown): Value {
  const low = lowOf(amount);
  const high = highOf(amount);
  if (amount.form !== 'range' || low === undefined || high === undefined) return printed(amount, context);
  // A nought has no last figure that would say anything.
  const steps = [low, high].flatMap(({value, step}) => (value === 0 ? [] : [step]));
  const isCoarse = Math.min(...steps) > Math.abs(high.value) / FEWEST_STEPS;
  const finer = (end: Quantity) => (isCoarse ? {...end, step: end.step / 10} : end);
  return bothSystems(amount, {form: 'range', low: finer(low), high: finer(high)}, context);
}

/** A reach of fewer steps than these, of its last figure, would lose a noticeable part of itself by rounding. */
const FEWEST_STEPS = 30;

/** `restated` is the same amount with the figures that it is to have in the other system. */
function bothSystems(amount: Amount, restated: Amount, context: Shown): Value {
  const {units: first} = context.spec.shop;
  const stated = inWords(formatAmount(amount), context.words);
  const inOther = inOtherSystem(restated);
  const other = inOther === undefined ? undefined : inWords(inOther, context.words);
  if (other === undefined || other === stated) return {text: stated};
  return statedFirst(amount, first) ? {text: stated, also: other} : {text: other, also: stated};
}

/** The unit in which a reading is written down beside these limits: that of the value printed first. */
export function readingUnit(limits: Amount, {spec}: Pick<Context, 'spec'>): Unit {
  const other = otherUnit(limits);
  return other === undefined || statedFirst(limits, spec.shop.units) ? unitOf(limits) : other;
}

/** The units of the shop and the words of the sheet. */
type Shown = Pick<Context, 'spec' | 'words'>;

/** The few words that a formatted value or the symbol of a unit has in it, in the language of the sheet. */
export function inWords(text: string, {amounts}: Words): string {
  return text.replace(/(?<![\p{L}])(?:to|turn|day)(?![\p{L}])/gu, (word) =>
    word === 'to' ? amounts.to : word === 'turn' ? amounts.turn : amounts.day,
  );
}

/** A unit that serves both systems is never put second. */
function statedFirst(amount: Amount, first: System): boolean {
  return unitOf(amount).system !== (first === 'inch' ? 'metric' : 'inch');
}

/** Whether two amounts say the same, to the figures stated. */
export function sameAmount(one: Amount, other: Amount): boolean {
  return amountsAgree(one, other);
}

/** Whether all that one allows lies below what the other asks for. */
export function isLess(one: Amount, other: Amount): boolean {
  const high = highOf(one);
  const low = lowOf(other);
  if (high === undefined || low === undefined || dimensionOf(one) !== dimensionOf(other)) return false;
  return !sameAmount(one, other) && compare(high, low) < 0;
}
