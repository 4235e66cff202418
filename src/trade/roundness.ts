/** Taper and out-of-round of a journal or a bore, from diameters read across it at several places along it. */
import {si} from '../quantity/convert.js';
import type {Quantity} from '../quantity/model.js';
import {lengthLike} from './result.js';
import {notOf, type Refused, refused} from './worked.js';

/**
 * One row for each place along the length, front first; in a row the diameters across it, always in the same
 * directions.
 */
export type Diameters = readonly (readonly Quantity[])[];

export interface Form {
  readonly smallest: Quantity;
  readonly largest: Quantity;
  /** Largest difference along the length in one direction; undefined where there is one row only. */
  readonly taper: Quantity | undefined;
  /** Largest difference between directions in one row; undefined where a row has one reading only. */
  readonly outOfRound: Quantity | undefined;
}

/**
 * Differences of diameters (lengths over 0), as the manuals state their limits; a roundness tester that gives radii
 * shows half of them. Source: common practice; TM 9-6115-604-34, p. 9-62, states its limits in this way.
 */
export function formOf(diameters: Diameters, name: string): Form | Refused {
  const [row] = diameters;
  const [first, ...rest] = diameters.flat();
  if (first === undefined || row === undefined)
    return refused(`${name} has no reading`, 'give at least one diameter');
  const ragged = diameters.find((other) => other.length !== row.length);
  if (ragged) {
    const says = `${name} has ${row.length} readings in one row and ${ragged.length} in another`;
    return refused(says, 'read the same directions at every place along it');
  }
  const all: [Quantity, ...Quantity[]] = [first, ...rest];
  for (const reading of all) {
    const refusal = notOf('length', {[`a reading of ${name}`]: reading});
    if (refusal) return refusal;
  }
  const columns = row.map((_, column) => diameters.flatMap((each) => each.slice(column, column + 1)));
  const values = all.map(si);
  return {
    smallest: lengthLike(Math.min(...values), all),
    largest: lengthLike(Math.max(...values), all),
    taper: diameters.length > 1 ? widest(columns, all) : undefined,
    outOfRound: row.length > 1 ? widest(diameters, all) : undefined,
  };
}

function widest(groups: Diameters, all: readonly [Quantity, ...Quantity[]]): Quantity {
  const spreads = groups.map((group) => {
    const values = group.map(si);
    return Math.max(...values) - Math.min(...values);
  });
  return lengthLike(Math.max(...spreads), all);
}
