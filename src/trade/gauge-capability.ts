/** Whether a gauge is good enough for a tolerance: ten times finer is asked, four times the least. */
import {si} from '../quantity/convert.js';
import type {Amount, Quantity} from '../quantity/model.js';
import {rangeOf} from './fit.js';
import {type Named, notOf, refused, type Worked} from './worked.js';

export type Capability = 'good' | 'least' | 'too-coarse';

export interface GaugeCapability {
  /** Width of the limits over the smallest division that the gauge shows; undefined where that was not given. */
  readonly byResolution: number | undefined;
  /** Width of the limits over the width of the gauge's accuracy (twice its ±); undefined where that was not given. */
  readonly byAccuracy: number | undefined;
  /** By the worse of the two: 10:1 and more is good, 4:1 the least. */
  readonly verdict: Capability;
}

/**
 * The tolerance is the whole width between the limits; the accuracy is stated as ± and taken for the expanded
 * uncertainty (k = 2). Quantities of one dimension, over 0. Source: 10:1, MIL-STD-120 and AIAG MSA 4th ed. (from
 * memory); 4:1, MIL-STD-45662A, 5.2, and ANSI/NCSL Z540.3, 5.3 b and 3.11 for the test uncertainty ratio (from
 * memory).
 */
export function gaugeCapability(
  limits: Amount,
  gauge: {readonly resolution?: Quantity | undefined; readonly accuracy?: Quantity | undefined},
): Worked<GaugeCapability> {
  const range = rangeOf(limits);
  if (range === undefined)
    return refused('the limits have one end only', 'give both, such as 2.4990–2.5000 in');
  const {resolution, accuracy} = gauge;
  if (resolution === undefined && accuracy === undefined)
    return refused('nothing is said of the gauge', 'give its resolution, its accuracy, or both');
  const {dimension} = range.low.unit;
  const refusal =
    notOf(dimension, {'the lower limit': range.low, 'the upper limit': range.high}, 'any') ??
    notOf(dimension, {'the resolution': resolution, 'the accuracy': accuracy});
  if (refusal) return refusal;
  const width = si(range.high) - si(range.low);
  if (!(width > 0)) return refused('the limits are one value', 'give a tolerance or two limits');
  const byResolution = resolution && ratio(width, resolution.value * resolution.unit.factor);
  const byAccuracy = accuracy && ratio(width, 2 * accuracy.value * accuracy.unit.factor);
  return {
    ok: true,
    result: {
      byResolution,
      byAccuracy,
      verdict: verdictOf(Math.min(byResolution ?? Infinity, byAccuracy ?? Infinity)),
    },
    formula: 'tolerance / resolution; tolerance / (2 × accuracy); 10:1 asked, 4:1 least',
    inputs: stated(limits, resolution, accuracy),
    source: 'MIL-STD-120 and AIAG MSA 4th ed. (10:1); ANSI/NCSL Z540.3, 5.3 b and 3.11 (4:1); from memory',
  };
}

/** Conversion noise must not make 9.9999999 of ten. */
function ratio(width: number, by: number): number {
  return Number((width / by).toPrecision(9));
}

function verdictOf(times: number): Capability {
  if (times >= 10) return 'good';
  return times >= 4 ? 'least' : 'too-coarse';
}

function stated(limits: Amount, resolution: Quantity | undefined, accuracy: Quantity | undefined): Named[] {
  return [
    {name: 'limits', value: limits},
    ...(resolution ? [{name: 'resolution', value: resolution}] : []),
    ...(accuracy ? [{name: 'accuracy, ±', value: accuracy}] : []),
  ];
}
