/** Crush of bearing shells: how far each half stands proud of its housing, and the grip that this gives. */
import {si} from '../quantity/convert.js';
import type {Quantity} from '../quantity/model.js';
import {lengthLike} from './result.js';
import {ESTIMATE, notOf, refused, type Worked} from './worked.js';

export interface Crush {
  /** What one half stands proud when its other end is flush. */
  readonly height: Quantity;
  /** By how much the free outside diameter of the pair exceeds the housing. */
  readonly interference: Quantity;
}

/**
 * Grip from the crush of one half (a length over 0, up to 1 % of the bore). Two halves add 2h to the circumference.
 * Exact for a round housing. Geometry; that each half stands slightly proud: TM 55-1905-220-14-4.
 */
export function crush(height: Quantity, bore: Quantity): Worked<Crush> {
  const refusal = notOf('length', {'the crush': height, 'the bore': bore});
  if (refusal) return refusal;
  if (si(height) > si(bore) / 100)
    return refused(
      'a crush of more than 1 % of the bore is a shell of another size',
      'check the reading and its unit',
    );
  return {
    ok: true,
    result: {height, interference: lengthLike((2 * si(height)) / Math.PI, [height, bore])},
    formula: 'interference = 2 · h / π',
    inputs: [
      {name: 'crush of one half, h', value: height},
      {name: 'housing bore', value: bore},
    ],
    source: 'geometry; TM 55-1905-220-14-4 (each half stands slightly proud)',
    advisory: `${ESTIMATE} 0.001 to 0.002 in a half is typical (from memory).`,
  };
}

/**
 * The same from the gap at one parting line while the cap is tight at the other: both halves' crush shows there (a
 * length over 0).
 */
export function crushFromGap(gap: Quantity, bore: Quantity): Worked<Crush> {
  const refusal = notOf('length', {'the gap': gap});
  if (refusal) return refusal;
  const worked = crush(lengthLike(si(gap) / 2, [gap]), bore);
  if (!worked.ok) return worked;
  const inputs = [{name: 'gap at the slack parting line', value: gap}, ...worked.inputs];
  return {...worked, formula: 'h = gap / 2, interference = 2 · h / π', inputs};
}
