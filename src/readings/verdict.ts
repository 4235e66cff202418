/** What a reading says of its limits when the gauge itself may be out. */

/** `near`: inside the limits, but nearer to one than its guard (`guardOf`). `out`: outside, by however little. */
export type Verdict = 'in' | 'near' | 'out';

/** Of a box of a sheet or a line of a report, all in its unit. */
export interface Limits {
  readonly least?: number | undefined;
  readonly most?: number | undefined;
  /** Figures behind the point with which they are stated, where the numbers alone have fewer. */
  readonly figures?: number | undefined;
  /** How far the gauge may be out, plus or minus; undefined where it is not known. */
  readonly doubt?: number | undefined;
}

/**
 * The verdict on a reading; undefined where the box has no limits. Limits are inclusive; the guard is drawn in from
 * each. Source: ISO 14253-1, rule for proving conformity, with g = U (from memory; `guardBand` of `src/trade` draws
 * the same band for limits with two ends).
 */
export function verdictOf(value: number, limits: Limits): Verdict | undefined {
  const {least, most} = limits;
  if (least === undefined && most === undefined) return undefined;
  if (sideOf(value, limits) !== undefined) return 'out';
  const guard = guardOf(limits);
  const low = least ?? Number.NEGATIVE_INFINITY;
  const high = most ?? Number.POSITIVE_INFINITY;
  return under(value, low + guard) || under(high - guard, value) ? 'near' : 'in';
}

/** On which side of its limits a reading lies; undefined where it lies within them. */
export function sideOf(value: number, {least, most}: Limits): 'over' | 'under' | undefined {
  if (most !== undefined && under(most, value)) return 'over';
  return least !== undefined && under(value, least) ? 'under' : undefined;
}

/**
 * How close to a limit a reading is near it: by less than the gauge may be out, so that it proves nothing; where that
 * is not known, in the last tenth of the tolerance (the shop's habit; no source), which limits with one end have not.
 */
export function guardOf({least, most, doubt}: Limits): number {
  if (doubt !== undefined) return doubt;
  return least === undefined || most === undefined ? 0 : (most - least) / 10;
}

/** By more than the noise of adding and converting decimals. */
function under(a: number, b: number): boolean {
  return b - a > 1e-9 * Math.max(Math.abs(a), Number.isFinite(b) ? Math.abs(b) : 0);
}
