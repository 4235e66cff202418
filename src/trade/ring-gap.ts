/** End gap of plain piston rings, by rule of thumb and as the bore changes. */
import {si} from '../quantity/convert.js';
import {formatQuantity} from '../quantity/format.js';
import type {Quantity} from '../quantity/model.js';
import type {Range} from './iso-limits.js';
import {lengthLike} from './result.js';
import {ESTIMATE, notOf, refused, type Worked} from './worked.js';

/** Inch of gap per inch of bore. */
const LOW = 0.003;
const HIGH = 0.004;

/**
 * The least end gap of a plain compression ring: 0.003 to 0.004 in per inch of bore (a length over 0). Source: rule of
 * thumb, from memory.
 */
export function ringGap(bore: Quantity): Worked<Range> {
  const refusal = notOf('length', {'the bore': bore});
  if (refusal) return refusal;
  const gap = (perInch: number) => lengthLike(si(bore) * perInch, [bore]);
  return {
    ok: true,
    result: {form: 'range', low: gap(LOW), high: gap(HIGH)},
    formula: 'least gap = bore × 0.003 to bore × 0.004',
    inputs: [{name: 'bore', value: bore}],
    source: 'rule of thumb of the trade, from memory',
    advisory: `${ESTIMATE} Boosted or hard-worked engines want more. Measure with the ring square in the bore, at its bottom where it is worn.`,
  };
}

/**
 * The gap of the same ring in another bore: it opens by π for each unit of diameter. Lengths over 0; refused where the
 * ring would butt. Geometry; TM 5-3805-261-34 gives 0.003 in for 0.001 in.
 */
export function gapInBore(gap: Quantity, from: Quantity, to: Quantity): Worked<Quantity> {
  const refusal =
    notOf('length', {'the gap': gap}, 'not-negative') ??
    notOf('length', {'one bore': from, 'the other bore': to});
  if (refusal) return refusal;
  const opened = lengthLike(si(gap) + Math.PI * (si(to) - si(from)), [gap, from, to]);
  if (opened.value < 0)
    return refused(
      `the ends would butt before the ring fits a bore of ${formatQuantity(to)}`,
      'use a ring made for that bore',
    );
  return {
    ok: true,
    result: opened,
    formula: 'gap = gap before + π · (bore − bore before)',
    inputs: [
      {name: 'gap before', value: gap},
      {name: 'bore before', value: from},
      {name: 'bore', value: to},
    ],
    source: 'geometry; TM 5-3805-261-34 (0.003 in of gap for 0.001 in of bore)',
  };
}
