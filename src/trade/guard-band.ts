/** What a reading proves when the gauge has an uncertainty of its own: limits for accepting and for rejecting. */
import {compare, si} from '../quantity/convert.js';
import type {Amount, Quantity} from '../quantity/model.js';
import {rangeOf} from './fit.js';
import type {Range} from './iso-limits.js';
import {fromSi} from './result.js';
import {notOf, refused, type Worked} from './worked.js';

export interface GuardBand {
  /** A reading inside proves that the part keeps its limits. */
  readonly accept: Range;
  /** A reading outside proves that it does not. Between the two it proves neither. */
  readonly reject: Range;
}

export type Proof = 'conforms' | 'not proved' | 'does not conform';

/**
 * Limits drawn in, and drawn out, by the guard band: the expanded uncertainty (k = 2, the 1998 edition) as given.
 * Quantities of one dimension, the uncertainty 0 or more and less than half of the tolerance. Source: ISO 14253-1,
 * rules of proving conformity and nonconformity (from memory); general rule in ILAC-G8.
 */
export function guardBand(limits: Amount, uncertainty: Quantity): Worked<GuardBand> {
  const range = rangeOf(limits);
  if (range === undefined)
    return refused('the limits have one end only', 'give both, such as 2.4990–2.5000 in');
  const {dimension} = range.low.unit;
  const refusal =
    notOf(dimension, {'the lower limit': range.low, 'the upper limit': range.high}, 'any') ??
    notOf(dimension, {'the uncertainty': uncertainty}, 'not-negative');
  if (refusal) return refusal;
  const guard = uncertainty.value * uncertainty.unit.factor;
  const width = si(range.high) - si(range.low);
  // What is left of it by the last figures of a sum is nothing.
  if (2 * guard >= width * (1 - 1e-9))
    return refused('the uncertainty takes up the whole tolerance', 'measure with a finer gauge');
  return {
    ok: true,
    result: {accept: moved(range, guard, uncertainty), reject: moved(range, -guard, uncertainty)},
    formula: 'accept from low + U to high − U; reject below low − U and above high + U',
    inputs: [
      {name: 'limits', value: limits},
      {name: 'expanded uncertainty (k = 2), U', value: uncertainty},
    ],
    source: 'ISO 14253-1 (g = U, k = 2, as in the 1998 edition; from memory)',
    advisory: 'The 2017 edition lets a smaller band do, 1.65 u, where 95 % confidence is enough.',
  };
}

/** What one reading proves. */
export function proves(reading: Quantity, {accept, reject}: GuardBand): Proof {
  const outside = (range: Range) => compare(reading, range.low) < 0 || compare(reading, range.high) > 0;
  if (outside(reject)) return 'does not conform';
  return outside(accept) ? 'not proved' : 'conforms';
}

/** The step that a fraction is told to, which has no last place of its own and may fall between those of the limits. */
const FRACTION = 1e-4;

function moved({low, high}: Range, inwards: number, uncertainty: Quantity): Range {
  const at = (end: Quantity, by: number): Quantity => {
    const step = (uncertainty.step * uncertainty.unit.factor) / end.unit.factor;
    const finest = Math.min(end.step || FRACTION, step || FRACTION);
    return fromSi(si(end) + by, end.unit, Number(finest.toPrecision(6)));
  };
  return {form: 'range', low: at(low, inwards), high: at(high, -inwards)};
}
