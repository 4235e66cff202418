/**
 * What a calculation of the trade gives: its result with all that a person needs to judge it, or the reason why
 * it can't be worked out. A calculation never throws on what it is given and never works outside its validity.
 */
import {usualUnits, withArticle} from '../quantity/faults.js';
import type {Amount, Dimension, Quantity} from '../quantity/model.js';

export type Worked<T> = WorkedOut<T> | Refused;

/** A value by the name that a shop calls it; plain numbers and words are text. */
export interface Named {
  readonly name: string;
  readonly value: Quantity | Amount | string;
}

export interface WorkedOut<T> {
  readonly ok: true;
  readonly result: T;
  /** In the letters of the trade: `S = T · L / (L + E)`. */
  readonly formula: string;
  /** As understood, in the order of the formula, with what was taken where nothing was stated. */
  readonly inputs: readonly Named[];
  /** Where the true value may lie, named for what makes it spread; none where the result is exact. */
  readonly band?: Named;
  /** Title and section of the publication, or that it is geometry, common practice, or from memory. */
  readonly source: string;
  /** What the reader has to be told before using the result. */
  readonly advisory?: string;
}

/** Both clauses without capital or full stop: "the bore is smaller than the journal", "check both readings". */
export interface Refused {
  readonly ok: false;
  readonly says: string;
  readonly hint: string;
}

/** The advisory of every result that could be taken for the maker's figure. */
export const ESTIMATE =
  "The maker's figure outranks this one. Where there is none, this is an estimate, which the shop lead must approve before it is used.";

export function refused(says: string, hint: string): Refused {
  return {ok: false, says, hint};
}

/** The same calculation with its result told in another way. */
export function mapped<T, U>(worked: Worked<T>, tell: (result: T) => U): Worked<U> {
  return worked.ok ? {...worked, result: tell(worked.result)} : worked;
}

/**
 * The refusal of the first quantity that is not of the dimension due, not finite, or not above nought where it must
 * be.
 */
export function notOf(
  dimension: Dimension,
  quantities: Readonly<Record<string, Quantity | undefined>>,
  range: 'positive' | 'not-negative' | 'any' = 'positive',
): Refused | undefined {
  for (const [name, q] of Object.entries(quantities)) {
    if (q === undefined) continue;
    const {unit, value} = q;
    if (unit.dimension !== dimension) {
      const says = `${name} is ${withArticle(unit.dimension)} (${unit.symbol}) where ${withArticle(dimension)} is due`;
      return refused(says, `write it in ${usualUnits(dimension)}`);
    }
    if (!Number.isFinite(value)) return refused(`${name} is not a number`, `give ${name} a value`);
    const low = range === 'positive' ? value <= 0 : range === 'not-negative' && value < 0;
    const due = range === 'positive' ? 'above nought' : 'nought or more';
    if (low) return refused(`${name} must be ${due}`, 'check the reading and its sign');
  }
  return undefined;
}
