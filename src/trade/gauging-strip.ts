/** Plastic gauging strip: which colour reads a clearance, and the taper that its two ends show. */
import {compare, highOf, lowOf, si} from '../quantity/convert.js';
import {formatAmount, formatQuantity} from '../quantity/format.js';
import type {Amount, Quantity} from '../quantity/model.js';
import {unit} from '../quantity/units.js';
import type {Range} from './iso-limits.js';
import {lengthLike} from './result.js';
import {notOf, refused, type Worked} from './worked.js';

export interface Strip {
  readonly colour: string;
  readonly reads: Range;
}

/** TM 5-2420-222-34, §1-16. */
export const STRIPS: readonly Strip[] = [
  {colour: 'green', reads: inches(0.001, 0.003)},
  {colour: 'red', reads: inches(0.002, 0.006)},
  {colour: 'blue', reads: inches(0.004, 0.009)},
];

/**
 * The finest strip that spans the whole of a clearance's limits. Lengths; refused where none does. Source: TM
 * 5-2420-222-34, §1-16.
 */
export function stripFor(limits: Amount): Worked<Strip> {
  const [low, high] = [lowOf(limits), highOf(limits)];
  if (low === undefined || high === undefined)
    return refused('a strip is chosen by both limits of the clearance', 'write them as 0.0015–0.0045 in');
  const refusal = notOf('length', {'the lower limit': low, 'the upper limit': high});
  if (refusal) return refusal;
  const found = STRIPS.find(({reads}) => compare(reads.low, low) <= 0 && compare(high, reads.high) <= 0);
  if (found === undefined) {
    const all = STRIPS.map(({colour, reads}) => `${colour} ${formatAmount(reads)}`).join(', ');
    return refused(
      `no strip spans ${formatAmount(limits)} (${all})`,
      'measure with micrometer and bore gauge',
    );
  }
  return {
    ok: true,
    result: found,
    formula: 'strip low ≤ limit low and limit high ≤ strip high',
    inputs: [{name: 'clearance limits', value: limits}],
    source: 'TM 5-2420-222-34, §1-16',
    advisory:
      "The ranges are one maker's: read the strip's own wrapper. Lay it dry, and do not turn the shaft on it.",
  };
}

/**
 * The difference between the widths read at the two ends is close to the taper. Lengths over 0. Source: TM
 * 10-3930-659-34, §2-24.
 */
export function stripTaper(one: Quantity, other: Quantity): Worked<Quantity> {
  const refusal = notOf('length', {'one end': one, 'the other end': other});
  if (refusal) return refusal;
  return {
    ok: true,
    result: lengthLike(Math.abs(si(one) - si(other)), [one, other]),
    formula: 'taper ≈ difference of the two ends',
    inputs: [
      {name: 'one end', value: one},
      {name: 'other end', value: other},
    ],
    source: 'TM 10-3930-659-34, §2-24; TM 5-3895-383-24, p. 8-59',
    advisory: `Read the widest point for the clearance: ${formatQuantity(compare(one, other) < 0 ? one : other)} is the least.`,
  };
}

function inches(low: number, high: number): Range {
  const of = (value: number): Quantity => ({value, unit: unit('in'), step: 0.001});
  return {form: 'range', low: of(low), high: of(high)};
}
