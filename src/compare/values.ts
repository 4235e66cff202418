/** How a demanded or stated value stands to the one before it: weaker, stricter, other, or the same in other words. */
import {
  amountsAgree,
  compare,
  dimensionOf,
  highOf,
  limitsOf,
  lowOf,
  unitOf,
  within,
} from '../quantity/convert.js';
import {formatAmount} from '../quantity/format.js';
import type {Amount, Quantity} from '../quantity/model.js';
import type {Demanded} from './demand.js';
import type {Effect} from './model.js';

/** Undefined where nothing at all has changed. Ids of `before` are those of the new side. */
export function judged(before: Demanded, now: Demanded): Effect | undefined {
  if (before.type === 'amount' && now.type === 'amount')
    return judgedAmount(before.amount, now.amount, now.stricter);
  if (before.type === 'amounts' && now.type === 'amounts') return judgedAmounts(before.amounts, now.amounts);
  if (before.type === 'any-of' && now.type === 'any-of') return judgedChoice(before.ids, now.ids);
  if (before.type === 'options' && now.type === 'options') return judgedOptions(before.ids, now.ids);
  if (before.type === 'word' && now.type === 'word') return judgedWord(before, now);
  if (before.type === 'id' && now.type === 'id') return before.id === now.id ? undefined : 'changed';
  if (before.type === 'text' && now.type === 'text') return before.text === now.text ? undefined : 'reworded';
  if (before.type === now.type) return undefined;
  if (now.type === 'none') return 'weakened';
  return before.type === 'none' ? 'strengthened' : 'changed';
}

/** As a person reads it: "0.0015–0.0030 in", "safety-wire", "wire-032 or wire-041". */
export function valueSays(value: Demanded): string {
  switch (value.type) {
    case 'there':
      return 'asked for';
    case 'none':
      return 'none';
    case 'any-of':
      return value.ids.join(' or ');
    case 'options':
      return value.ids.length === 0 ? 'every engine' : `only with ${value.ids.join(' or ')}`;
    case 'word':
      return value.word;
    case 'id':
      return value.id;
    case 'amount':
      return formatAmount(value.amount);
    case 'amounts':
      return value.amounts.map(formatAmount).join(', ');
    case 'text':
      return value.text;
  }
}

export type Stricter = 'narrower' | 'more' | 'neither';

export function judgedAmount(before: Amount, now: Amount, stricter: Stricter): Effect | undefined {
  if (same(before, now)) return formatAmount(before) === formatAmount(now) ? undefined : 'reworded';
  if (dimensionOf(before) !== dimensionOf(now) || stricter === 'neither') return 'changed';
  const [one, other] = [limitsOf(before), limitsOf(now)];
  if (stricter === 'more')
    return other.low < one.low ? 'weakened' : other.low > one.low ? 'strengthened' : 'changed';
  if (before.form === 'single' || now.form === 'single') return 'changed';
  if (within(one, other)) return 'weakened';
  return within(other, one) ? 'strengthened' : 'changed';
}

/** In one unit only the same figures are the same; in two, those that one figure can stand for. */
function same(before: Amount, now: Amount): boolean {
  if (dimensionOf(before) !== dimensionOf(now)) return false;
  if (unitOf(before).symbol !== unitOf(now).symbol) return amountsAgree(before, now);
  if ((before.form === 'single') !== (now.form === 'single')) return false;
  return equal(lowOf(before), lowOf(now)) && equal(highOf(before), highOf(now));
}

function equal(a: Quantity | undefined, b: Quantity | undefined): boolean {
  if (a === undefined || b === undefined) return a === b;
  return compare(a, b) === 0;
}

/** Passes: fewer of them are a weakening, more a strengthening. */
export function judgedAmounts(before: readonly Amount[], now: readonly Amount[]): Effect | undefined {
  if (now.length < before.length) return 'weakened';
  if (now.length > before.length) return 'strengthened';
  const effects = before.map((one, index) => {
    const other = now[index];
    return other === undefined ? 'changed' : judgedAmount(one, other, 'neither');
  });
  return effects.find((effect) => effect === 'changed') ?? effects.find((effect) => effect !== undefined);
}

/** More to choose from is a weakening. */
function judgedChoice(before: readonly string[], now: readonly string[]): Effect | undefined {
  const [fewer, more] = [subset(now, before), subset(before, now)];
  if (fewer && more) return undefined;
  if (more) return 'weakened';
  return fewer ? 'strengthened' : 'changed';
}

/** Fewer engines that have it are a weakening; no option named is every engine. */
function judgedOptions(before: readonly string[], now: readonly string[]): Effect | undefined {
  const [fewer, more] = [subset(now, before), subset(before, now)];
  if (fewer && more) return undefined;
  if (before.length === 0) return 'weakened';
  if (now.length === 0) return 'strengthened';
  if (fewer) return 'weakened';
  return more ? 'strengthened' : 'changed';
}

interface Word {
  readonly word: string;
  readonly grade?: number;
}

function judgedWord(before: Word, now: Word): Effect | undefined {
  if (before.word === now.word) return undefined;
  if (before.grade === undefined || now.grade === undefined || before.grade === now.grade) return 'changed';
  return now.grade < before.grade ? 'weakened' : 'strengthened';
}

function subset(some: readonly string[], all: readonly string[]): boolean {
  return some.every((one) => all.includes(one));
}
