/** Core plugs in their bores: the grip of a cup plug, and the counterbore of a domed one. */
import {convert, si} from '../quantity/convert.js';
import type {Amount, Quantity} from '../quantity/model.js';
import {unit} from '../quantity/units.js';
import {type Fit, fitOfLimits, rangeOf} from './fit.js';
import type {Range} from './iso-limits.js';
import {lengthLike} from './result.js';
import {ESTIMATE, notOf, refused, type Worked} from './worked.js';

const CUP = 'a general specification of cup plugs (held and sealed by interference only)';
const DOMED = "a plug maker's installation page";

/**
 * A cup plug holds by interference alone; a domed or dish plug goes in free and is spread. Limits or readings (lengths
 * over 0); refused where the pair is wrong for its kind. Source: a plug maker's installation page; no public standard
 * gives the interference, so the shop's specification must.
 */
export function plugFit(kind: 'cup' | 'domed', plug: Amount, bore: Amount): Worked<Fit> {
  const fit = fitOfLimits(bore, plug);
  if (!fit.ok) return fit;
  const {least, most} = fit.result;
  if (kind === 'cup' && most.value >= 0)
    return refused(
      'this cup plug can be as small as its bore, and nothing would hold it',
      'use the plug of the right nominal size',
    );
  if (kind === 'domed' && least.value < 0)
    return refused(
      'this domed plug can be larger than its bore',
      'it must go in free and be spread: check plug and counterbore',
    );
  const says = kind === 'cup' ? 'interference = plug − bore' : 'clearance before spreading = bore − plug';
  const inputs = [
    {name: 'plug', value: plug},
    {name: 'bore', value: bore},
  ];
  return {...fit, inputs, formula: says, source: kind === 'cup' ? CUP : DOMED, advisory: ESTIMATE};
}

export interface Counterbore {
  readonly diameter: Quantity;
  readonly depth: Range;
}

/**
 * Counterbore of a domed plug: its upper limit + 0.002 in, to 2.5 in (larger ones want more), and 1.5 to 2 times the
 * thickness deep. Lengths over 0. Source: a plug maker's installation page.
 */
export function counterbore(plug: Amount, thickness: Quantity): Worked<Counterbore> {
  const high = rangeOf(plug)?.high;
  if (high === undefined) return refused('the plug has no upper limit', 'give its diameter or its limits');
  const refusal = notOf('length', {'the plug': high, 'the thickness': thickness});
  if (refusal) return refusal;
  if (convert(high, unit('in')).value > 2.5)
    return refused(
      'the rule holds to 2.5 in; larger plugs want more',
      "take the counterbore from the plug maker's sheet",
    );
  const depth = (times: number) => lengthLike(si(thickness) * times, [thickness]);
  return {
    ok: true,
    result: {
      diameter: lengthLike(si(high) + 2 * MIL, [high]),
      depth: {form: 'range', low: depth(1.5), high: depth(2)},
    },
    formula: 'diameter = plug high + 0.002 in, depth = 1.5 to 2 × thickness',
    inputs: [
      {name: 'plug', value: plug},
      {name: 'thickness', value: thickness},
    ],
    source: DOMED,
    advisory: ESTIMATE,
  };
}

/** A thousandth of an inch in metres. */
const MIL = 25.4e-6;
