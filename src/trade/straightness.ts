/** A bent shaft by its dial reading, and a twisted or bent rod by its feeler. */
import {compare, si} from '../quantity/convert.js';
import {formatQuantity} from '../quantity/format.js';
import type {Quantity} from '../quantity/model.js';
import {unit} from '../quantity/units.js';
import {lengthLike} from './result.js';
import {notOf, refused, type Worked} from './worked.js';

/**
 * The bend of a shaft is half of the dial's full-turn reading at the middle journal (a length of 0 or more), since a
 * turn shows it once on either side. Out-of-round of that journal is in the reading too. Source: TM 10-3930-653-14&P,
 * p. 4-37.
 */
export function bentShaft(reading: Quantity): Worked<Quantity> {
  const refusal = notOf('length', {'the reading': reading}, 'not-negative');
  if (refusal) return refusal;
  return {
    ok: true,
    result: lengthLike(si(reading) / 2, [reading]),
    formula: 'bend = full-turn reading / 2',
    inputs: [{name: 'full-turn dial reading', value: reading}],
    source: 'TM 10-3930-653-14&P, p. 4-37',
    advisory:
      'Take the out-of-round of the journal off first. A nitrided shaft is not straightened (FAA-H-8083-32).',
  };
}

/**
 * Twist of a connecting rod on parallel blocks, over a length of it: feeler clearance (0 or more) over the separation
 * of the blocks, times that length (an inch where none is given). Source: FAA-H-8083-32, ch. 10.
 */
export function rodTwist(feeler: Quantity, separation: Quantity, over: Quantity = INCH): Worked<Quantity> {
  const refusal =
    notOf('length', {'the feeler': feeler}, 'not-negative') ??
    notOf('length', {'the separation': separation, 'the length': over});
  if (refusal) return refusal;
  if (compare(feeler, {...separation, value: separation.value / 10}) > 0)
    return refused(
      `a feeler of ${formatQuantity(feeler)} is more than a tenth of the separation`,
      'check both units',
    );
  return {
    ok: true,
    result: lengthLike((si(feeler) / si(separation)) * si(over), [feeler, TENTH]),
    formula: 'twist = feeler / separation of the blocks × length',
    inputs: [
      {name: 'feeler clearance', value: feeler},
      {name: 'separation of the blocks', value: separation},
      {name: 'over a length of', value: over},
    ],
    source: 'FAA-H-8083-32, ch. 10 (dimensional inspection)',
    advisory: 'For scale: TM 10-3930-671-24 allows 0.002 in over about 4 in.',
  };
}

const INCH: Quantity = {value: 1, unit: unit('in'), step: 1};
/** Twist in an inch is a fraction of a reading, so it is told ten times finer. */
const TENTH: Quantity = {value: 1e-5, unit: unit('in'), step: 1e-5};
