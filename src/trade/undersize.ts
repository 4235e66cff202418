/** Undersizes of a journal: which grind a worn one needs, and which one a ground one has. */
import {compare, si} from '../quantity/convert.js';
import {formatQuantity} from '../quantity/format.js';
import type {Amount, Quantity} from '../quantity/model.js';
import {unit} from '../quantity/units.js';
import {rangeOf} from './fit.js';
import type {Range} from './iso-limits.js';
import {lengthLike} from './result.js';
import {ESTIMATE, notOf, type Refused, refused, type Worked} from './worked.js';

export interface Grind {
  readonly undersize: Quantity;
  /** What the ground journal must measure. */
  readonly journal: Range;
}

export interface GrindFound extends Grind {
  /** Whether the journal lies within the limits of this grind. */
  readonly fits: boolean;
  /** How far outside them it lies; nought where it fits. */
  readonly off: Quantity;
}

/** Undersizes in common use, inches. From memory; 0.25, 0.50, 0.75, 1.00 mm in TM 10-3930-653-14&P, p. 4-38. */
export const INCH_GRINDS: readonly Quantity[] = [0.001, 0.002, 0.01, 0.02, 0.03, 0.04].map((value) => ({
  value,
  unit: unit('in'),
  step: 0.001,
}));

export const METRIC_GRINDS: readonly Quantity[] = [0.25, 0.5, 0.75, 1].map((value) => ({
  value,
  unit: unit('mm'),
  step: 0.01,
}));

/**
 * The smallest undersize that a worn journal still cleans up to: its smallest reading, less what cleaning up takes,
 * must reach the upper limit of the grind, so that the grinder has the whole tolerance to work in. Lengths over 0.
 * Geometry.
 */
export function chooseUndersize(
  worn: Quantity,
  standard: Amount,
  grinds: readonly Quantity[],
  cleanUp?: Quantity,
): Worked<Grind> {
  const set = setOf(worn, standard, grinds);
  if ('ok' in set) return set;
  const refusal = notOf('length', {'the clean-up': cleanUp}, 'not-negative');
  if (refusal) return refusal;
  const left = si(worn) - (cleanUp ? si(cleanUp) : 0);
  const found = set.find(({journal}) => si(journal.high) <= left * (1 + 1e-12));
  if (found === undefined) {
    const says = `${formatQuantity(worn)} does not clean up to any undersize of the set`;
    return refused(says, 'renew the shaft, or ask the bearing maker for a larger undersize');
  }
  return {
    ok: true,
    result: found,
    formula: 'smallest u with worn − clean-up ≥ standard high − u',
    inputs: [
      {name: 'worn journal, smallest reading', value: worn},
      {name: 'standard journal', value: standard},
      ...(cleanUp ? [{name: 'clean-up', value: cleanUp}] : []),
      {name: 'undersizes', value: grinds.map(formatQuantity).join(', ')},
    ],
    source: 'geometry; undersizes as common in the trade (from memory) and in TM 10-3930-653-14&P, p. 4-38',
    advisory: ESTIMATE,
  };
}

/**
 * Which undersize a ground journal has: the one whose limits it lies within, or nearest to. Include 0 in the set for a
 * standard journal. Lengths over 0. Rule: journal + undersize = standard journal, within the tolerance of the grind.
 */
export function matchUndersize(
  journal: Quantity,
  standard: Amount,
  grinds: readonly Quantity[],
): Worked<GrindFound> {
  const set = setOf(journal, standard, grinds);
  if ('ok' in set) return set;
  const found = set.map((grind): GrindFound => {
    const size = si(journal);
    const outside = Math.max(si(grind.journal.low) - size, size - si(grind.journal.high), 0);
    const off = lengthLike(outside, [journal, grind.journal.low]);
    return {...grind, fits: off.value === 0, off};
  });
  return {
    ok: true,
    result: found.reduce((best, one) => (si(one.off) < si(best.off) ? one : best)),
    formula: 'standard low − u ≤ journal ≤ standard high − u',
    inputs: [
      {name: 'journal', value: journal},
      {name: 'standard journal', value: standard},
      {name: 'undersizes', value: grinds.map(formatQuantity).join(', ')},
    ],
    source: 'geometry',
  };
}

/** The grinds with their limits, smallest undersize first. */
function setOf(journal: Quantity, standard: Amount, grinds: readonly Quantity[]): readonly Grind[] | Refused {
  const limits = rangeOf(standard);
  if (limits === undefined)
    return refused('the standard journal has only one limit', 'give both, such as 2.4990–2.5000 in');
  const lengths = {'the journal': journal, 'the lower limit': limits.low, 'the upper limit': limits.high};
  const refusal = notOf('length', lengths) ?? firstWrong(grinds);
  if (refusal) return refusal;
  const sorted = [...grinds].sort(compare);
  const [largest] = sorted.slice(-1);
  if (largest && si(largest) >= si(limits.low))
    return refused(`an undersize of ${formatQuantity(largest)} leaves no journal`, 'check its unit');
  return sorted.map((undersize) => ({undersize, journal: less(limits, undersize)}));
}

function firstWrong(grinds: readonly Quantity[]): Refused | undefined {
  if (grinds.length === 0) return refused('the set has no undersize', 'give one at least, such as 0.010 in');
  for (const undersize of grinds) {
    const refusal = notOf('length', {'an undersize': undersize}, 'not-negative');
    if (refusal) return refusal;
  }
  return undefined;
}

function less({low, high}: Range, undersize: Quantity): Range {
  const by = si(undersize);
  return {
    form: 'range',
    low: lengthLike(si(low) - by, [low, high, undersize]),
    high: lengthLike(si(high) - by, [high, low, undersize]),
  };
}
