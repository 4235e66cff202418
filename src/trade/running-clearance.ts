/** Clearance of a plain bearing by rule of thumb, for a shop that has no figure of the maker's. */
import {si} from '../quantity/convert.js';
import type {Quantity} from '../quantity/model.js';
import type {Range} from './iso-limits.js';
import {lengthLike} from './result.js';
import {ESTIMATE, notOf, type Worked} from './worked.js';

/** Inch of clearance per inch of journal. */
const LOW = 0.00075;
const HIGH = 0.0015;

/**
 * 0.00075 to 0.0015 in per inch of journal (a length over 0). Source: trade practice, from memory; published rules
 * disagree, from 0.001 in + 0.001 in per inch to 0.002 in per inch (Yung, Plant Engineering, June 2016).
 */
export function runningClearance(journal: Quantity): Worked<Range> {
  const refusal = notOf('length', {'the journal': journal});
  if (refusal) return refusal;
  const size = si(journal);
  const low = lengthLike(size * LOW, [journal]);
  const high = lengthLike(size * HIGH, [journal]);
  return {
    ok: true,
    result: {form: 'range', low, high},
    formula: 'clearance = d × 0.00075 to d × 0.0015',
    inputs: [{name: 'journal, d', value: journal}],
    band: {
      name: 'by the rules in use',
      value: {
        form: 'range',
        low,
        high: lengthLike(Math.max(2 * MIL + size * 0.001, size * 0.002), [journal]),
      },
    },
    source: 'trade practice, from memory; the spread of rules: C. Yung, Plant Engineering, June 2016',
    advisory: ESTIMATE,
  };
}

/** A thousandth of an inch in metres. The two rules that allow most are 2 thou + 1 per inch, and 2 per inch. */
const MIL = 25.4e-6;
