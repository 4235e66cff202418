/** What two parts have between them: clearance, interference, or either as it falls out. */
import {highOf, lowOf, si} from '../quantity/convert.js';
import type {Amount, Quantity} from '../quantity/model.js';
import {limitsOfSize, type Range} from './iso-limits.js';
import {lengthLike} from './result.js';
import {type Named, notOf, type Refused, refused, type Worked} from './worked.js';

export interface Fit {
  readonly kind: 'clearance' | 'transition' | 'interference';
  readonly hole: Range;
  readonly shaft: Range;
  /** Clearance of the smallest hole on the largest shaft; negative is interference. */
  readonly least: Quantity;
  /** Clearance of the largest hole on the smallest shaft, likewise. */
  readonly most: Quantity;
}

/**
 * The fit of a hole on a shaft, each given by its limits (lengths over 0 in any unit). Exact. Source: definitions of
 * ISO 286-1:2010, 3.3; the same as the basic-hole example of NAVEDTRA 14276, p. 3-44.
 */
export function fitOfLimits(hole: Amount, shaft: Amount): Worked<Fit> {
  const sizes = {hole: rangeOf(hole), shaft: rangeOf(shaft)};
  if (sizes.hole === undefined || sizes.shaft === undefined)
    return refused('a fit needs both limits of the hole and of the shaft', 'write them as 1.500–1.502 in');
  const refusal = notLengths(sizes.hole, 'the hole') ?? notLengths(sizes.shaft, 'the shaft');
  if (refusal) return refusal;
  return {
    ok: true,
    result: between(sizes.hole, sizes.shaft),
    formula: FORMULA,
    inputs: [
      {name: 'hole', value: sizes.hole},
      {name: 'shaft', value: sizes.shaft},
    ],
    source: 'ISO 286-1:2010, 3.3 (definitions of clearance and interference)',
  };
}

/**
 * The fit of a nominal size by its classes, `H7/g6`. Validity and source as for `limitsOfSize`.
 */
export function fitOfClasses(nominal: Quantity, text: string): Worked<Fit> {
  const [first = '', second, ...more] = text.split('/');
  if (second === undefined || more.length > 0)
    return refused(
      `"${text}" is no fit`,
      'write the class of the hole, a slash, and that of the shaft: H7/g6',
    );
  const [one, two] = [limitsOfSize(nominal, first), limitsOfSize(nominal, second)];
  if (!one.ok) return one;
  if (!two.ok) return two;
  const [hole, shaft] = one.result.zone.kind === 'hole' ? [one, two] : [two, one];
  if (hole.result.zone.kind !== 'hole' || shaft.result.zone.kind !== 'shaft')
    return refused(
      `${text} has no hole and shaft`,
      'write one class in capitals and one in small letters: H7/g6',
    );
  return {
    ...one,
    result: between(hole.result.limits, shaft.result.limits),
    formula: FORMULA,
    inputs: [
      {name: 'nominal size', value: nominal},
      {name: 'fit', value: text},
      {name: 'hole', value: hole.result.limits},
      {name: 'shaft', value: shaft.result.limits},
    ],
  };
}

const FORMULA = 'least = hole low − shaft high, most = hole high − shaft low; below nought is interference';

/** The fit as a shop says it: "clearance 0.010–0.059 mm", or the most of either way. */
export function fitNamed({kind, least, most}: Fit): readonly (Named & {readonly value: Quantity | Amount})[] {
  if (kind === 'clearance') return [{name: 'clearance', value: {form: 'range', low: least, high: most}}];
  if (kind === 'interference')
    return [{name: 'interference', value: {form: 'range', low: opposite(most), high: opposite(least)}}];
  return [
    {name: 'most interference', value: opposite(least)},
    {name: 'most clearance', value: most},
  ];
}

/** Both limits of an amount as a range; undefined where it has only one. */
export function rangeOf(amount: Amount): Range | undefined {
  const [low, high] = [lowOf(amount), highOf(amount)];
  return low && high && {form: 'range', low, high};
}

function between(hole: Range, shaft: Range): Fit {
  const [tight, loose] = [si(hole.low) - si(shaft.high), si(hole.high) - si(shaft.low)];
  const all: [Quantity, ...Quantity[]] = [hole.low, hole.high, shaft.low, shaft.high];
  const [least, most] = [lengthLike(tight, all), lengthLike(loose, all)];
  const kind = least.value >= 0 ? 'clearance' : most.value <= 0 ? 'interference' : 'transition';
  return {kind, hole, shaft, least, most};
}

function notLengths({low, high}: Range, name: string): Refused | undefined {
  const refusal = notOf('length', {[name]: low}) ?? notOf('length', {[name]: high});
  if (refusal || si(low) <= si(high)) return refusal;
  return refused(`the lower limit of ${name} stands above the upper one`, 'write the lower limit first');
}

function opposite(q: Quantity): Quantity {
  return {...q, value: 0 - q.value};
}
