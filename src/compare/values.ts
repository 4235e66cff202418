/** How a demanded or stated value stands to the one before it: weaker, stricter, other, or the same in other words. */
import {dimensionOf, limitsOf} from '../quantity/convert.js';
import {formatAmount} from '../quantity/format.js';
import type {Amount} from '../quantity/model.js';
import type {Demanded, GradedWord, Stricter} from './demand.js';
import {type Judgement, judgedLimits} from './limits.js';
import type {Effect} from './model.js';
import {judgedPasses} from './passes.js';
import {sameAmount} from './same-amount.js';

/** Empty where nothing at all has changed; a limit may be weaker and stricter at once. Ids of `before` are those of the new side. */
export function judged(before: Demanded, now: Demanded): readonly Judgement[] {
  if (before.type === 'amount' && now.type === 'amount')
    return judgedAmount(before.amount, now.amount, now.stricter);
  const effect = judgedOther(before, now);
  return effect === undefined ? [] : [{effect}];
}

function judgedOther(before: Demanded, now: Demanded): Effect | undefined {
  if (before.type === 'amounts' && now.type === 'amounts') return judgedPasses(before.amounts, now.amounts);
  if (before.type === 'any-of' && now.type === 'any-of') return judgedChoice(before.ids, now.ids);
  if (before.type === 'all-of' && now.type === 'all-of') return judgedChoice(now.ids, before.ids);
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
    case 'all-of':
      return value.ids.join(' and ');
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

function judgedAmount(before: Amount, now: Amount, stricter: Stricter): readonly Judgement[] {
  if (sameAmount(before, now))
    return formatAmount(before) === formatAmount(now) ? [] : [{effect: 'reworded'}];
  if (dimensionOf(before) !== dimensionOf(now) || stricter === 'neither') return [{effect: 'changed'}];
  const bothSingle = before.form === 'single' && now.form === 'single';
  if (stricter === 'narrower') return bothSingle ? [{effect: 'changed'}] : judgedLimits(before, now);
  const rise = limitsOf(now).low - limitsOf(before).low;
  // Two that are bounded above alone have no lower end to rise, and the difference is no number.
  if (rise === 0 || Number.isNaN(rise)) return [{effect: 'changed'}];
  return [{effect: rise > 0 === (stricter === 'more') ? 'strengthened' : 'weakened'}];
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

function judgedWord(before: GradedWord, now: GradedWord): Effect | undefined {
  if (before.word === now.word) return undefined;
  if (before.scale !== now.scale || before.grade === undefined || now.grade === undefined) return 'changed';
  if (before.grade === now.grade) return 'changed';
  return now.grade < before.grade ? 'weakened' : 'strengthened';
}

function subset(some: readonly string[], all: readonly string[]): boolean {
  return some.every((one) => all.includes(one));
}
