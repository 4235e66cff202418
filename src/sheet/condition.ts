/** The case in which the sub-steps of an `if:` step are followed, in words, and what is struck where they are not. */
import type {Step} from '../procedure/model.js';
import {branchState} from '../procedure/values.js';
import {highOf, lowOf, unitOf} from '../quantity/convert.js';
import {otherUnit} from '../quantity/counterpart.js';
import {formatQuantity, restated} from '../quantity/format.js';
import type {Amount} from '../quantity/model.js';
import {type Context, subjectOf, type Use} from './context.js';
import {judgingLimits} from './looked-back.js';
import type {Row} from './model.js';
import {inWords, readingUnit} from './value.js';
import {fill, type Words} from './words.js';

/** "Only if the clearance is under 0.90 mm (0.0355 in)". */
export function conditionOf(use: Use, step: Step, context: Context): string {
  const {words} = context;
  const is = branchState(use.tag);
  const says = {out: words.out, over: words.isOver, under: words.isUnder, in: words.in};
  // What has no limits can't be out of them.
  const judged = use.item?.kind !== 'check' || use.item.limits !== undefined;
  const state = judged ? says[is] : is === 'in' ? words.asExpected : words.notAsExpected;
  const limits = is === 'over' || is === 'under' ? judgingLimits(use, step, context) : undefined;
  const beyond = limits && beyondLimit(limits, is === 'over', context);
  return fill(words.onlyIf, {item: subjectOf(use, context), state: beyond ?? state});
}

/** Whether a row does nothing but say when its sub-steps are followed. */
export function isHeading({branch, entries, holds, rows}: Row): boolean {
  return branch !== undefined && rows.length > 0 && entries.length === 0 && holds.length === 0;
}

/** What to strike where a branch is not followed: its heading too, unless that has work of its own. */
export function ifNotOf(row: Row, words: Words): string {
  return isHeading(row) ? fill(words.ifNotThis, {number: row.number}) : words.ifNot;
}

/** "under 0.90 mm (0.0355 in)", with the figures of the limits as they stand at the blanks, which are rounded inwards. */
function beyondLimit(limits: Amount, isOver: boolean, context: Context): string | undefined {
  if (limits.form === 'single') return undefined;
  const {words} = context;
  const to = otherUnit(limits);
  const isStatedFirst = readingUnit(limits, context).symbol === unitOf(limits).symbol;
  const both = [limits, ...(to === undefined ? [] : [restated(limits, to)])];
  const [first, second] = (isStatedFirst ? both : both.reverse())
    .flatMap((amount) => (isOver ? highOf(amount) : lowOf(amount)) ?? [])
    .map((end) => inWords(formatQuantity(end), words));
  if (first === undefined) return undefined;
  const value = second === undefined ? first : `${first} (${second})`;
  return fill(isOver ? words.overValue : words.underValue, {value});
}
