/** The figures by which the readings of several builds are compared. */

/** All in the unit of the values. */
export interface Statistics {
  readonly count: number;
  readonly smallest: number;
  readonly mean: number;
  readonly largest: number;
  /** Sample standard deviation (n − 1); undefined for one value. */
  readonly deviation?: number;
}

/**
 * Of one value or more; undefined for none. The mean is corrected by the mean of what is left over, and the squares
 * are taken of differences from it (two passes), so that sizes of 2.5 in that differ in the fifth decimal lose
 * nothing. Source: T. Chan, G. Golub and R. LeVeque, American Statistician 37 (1983) 242 (from memory).
 */
export function statistics(values: readonly number[]): Statistics | undefined {
  const [first, ...rest] = values;
  if (first === undefined) return undefined;
  const count = values.length;
  const rough = sum(values) / count;
  const mean = rough + sum(values.map((value) => value - rough)) / count;
  const [smallest, largest] = rest.reduce<[number, number]>(
    ([low, high], value) => [Math.min(low, value), Math.max(high, value)],
    [first, first],
  );
  const shared = {count, smallest, mean, largest};
  if (count < 2) return shared;
  const off = values.map((value) => value - mean);
  return {...shared, deviation: Math.sqrt(sum(off.map((each) => each * each)) / (count - 1))};
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
