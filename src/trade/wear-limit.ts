/** How much wear a published rule allows for a part of a given size. The rules are in `wear-rules.ts`. */
import {si} from '../quantity/convert.js';
import type {Quantity} from '../quantity/model.js';
import {unit} from '../quantity/units.js';
import {nearest} from '../text/nearest.js';
import {lengthLike} from './result.js';
import {WEAR_RULES, type WearRule} from './wear-rules.js';
import {ESTIMATE, type Named, notOf, refused, type Worked} from './worked.js';

export interface WearLimit {
  readonly rule: WearRule;
  readonly allowance: Quantity;
  /**
   * The allowance added to the high limit, or taken from the low one, where the rule counts from a limit that was
   * given.
   */
  readonly limit?: Quantity;
}

/**
 * The allowance of a rule for a size (the diameter or the piston travel, a length over 0; not needed where the rule
 * is a total), and the wear limit that it makes with the limit of a new part. Source: TM 10-3930-647-14&P.
 */
export function wearLimit(name: string, size?: Quantity, newLimit?: Quantity): Worked<WearLimit> {
  const rule = WEAR_RULES.find((one) => one.name === name);
  if (rule === undefined) {
    const names = WEAR_RULES.map((one) => one.name);
    const meant = nearest(name, names);
    return refused(
      `there is no wear rule "${name}"`,
      meant ? `did you mean ${meant}?` : `there are ${names.join(', ')}`,
    );
  }
  const refusal = notOf('length', {[`the ${rule.of}`]: size, 'the limit when new': newLimit});
  if (refusal) return refusal;
  if (rule.of !== 'total' && size === undefined)
    return refused(`the rule for ${rule.says} is per inch of ${rule.of}`, `give the ${rule.of}`);
  const like = size ?? newLimit ?? INCH;
  const allowed = rule.of === 'total' ? rule.allowance * METRES : rule.allowance * (size ? si(size) : 0);
  const allowance = lengthLike(allowed, [like, newLimit]);
  const limit = newLimit && limitFrom(rule, allowed, newLimit);
  return {
    ok: true,
    result: {rule, allowance, ...(limit ? {limit} : {})},
    formula: formulaOf(rule),
    inputs: stated(rule, size, newLimit),
    source: 'TM 10-3930-647-14&P, wear limits (scan with interleaved columns, pairing checked by sense)',
    advisory: ESTIMATE,
  };
}

/** An inch in metres, and a unit to tell a total in where no reading shows which one the shop uses. */
const METRES = 0.0254;
const INCH: Quantity = {value: 1, unit: unit('in'), step: 0.0001};

function limitFrom({from}: WearRule, allowed: number, limit: Quantity): Quantity | undefined {
  if (from === 'nominal') return undefined;
  return lengthLike(si(limit) + (from === 'high limit' ? allowed : -allowed), [limit]);
}

function formulaOf({allowance, of, from}: WearRule): string {
  const amount = of === 'total' ? `${allowance} in` : `${allowance} in × ${of} in inches`;
  if (from === 'nominal') return `allowed = ${amount}`;
  return from === 'high limit' ? `limit = high limit + ${amount}` : `limit = low limit − ${amount}`;
}

function stated(rule: WearRule, size: Quantity | undefined, newLimit: Quantity | undefined): Named[] {
  return [
    {name: 'rule', value: rule.says},
    ...(size && rule.of !== 'total' ? [{name: rule.of, value: size}] : []),
    ...(newLimit
      ? [{name: `${rule.from === 'low limit' ? 'low' : 'high'} limit when new`, value: newLimit}]
      : []),
  ];
}
