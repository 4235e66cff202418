/** Safety wire: the sizes that are sold and the rules that the manuals give for them. */

/** Nominal diameters, inches (MS20995, from memory). */
export const WIRE_SIZES = [0.015, 0.02, 0.025, 0.032, 0.041, 0.047, 0.051, 0.06, 0.091] as const;

/** Twists an inch by diameter, inches. Second-hand and unsure (a forum quoting NASM33540); 6 to 8 for 0.032 in satisfies every source. */
export const TWISTS: readonly {readonly upTo: number; readonly low: number; readonly high: number}[] = [
  {upTo: 0.025, low: 8, high: 14},
  {upTo: 0.041, low: 6, high: 11},
  {upTo: 0.06, low: 4, high: 8},
];
export const TWISTS_SOURCE =
  'NASM33540 as quoted second-hand (wmrc.ca forum); check it against your copy. AC 43.13-1B gives 6 to 8 for 0.032 in';

/** Holes above this many inches take 0.032 in wire at least, twisted double (AC 43.13-1B 7-124; TM 1-1500-204-23-6 p. 2-77). */
export const SMALL_HOLE = 0.045;
export const LEAST_WIRE = 0.032;
/** A double strand of 0.020 in will do in holes up to here with less than 2 in between the fasteners (AC 43.13-1B 7-124). */
export const MIDDLE_HOLE = 0.062;
export const CLOSE_SPACING = 2;
export const FINE_WIRE = 0.02;

/** Fasteners 4 to 6 in apart: three in a run at most; beyond 6 in not wired together (TM 10-3930-659-34, 2-22). Inches. */
export const WIDE_SPACING = 4;
export const LONGEST_SPAN = 6;
export const WIDE_RUN = 3;
/** Closer ones: as many as this length of wire does, inches (same). */
export const LONGEST_WIRE = 24;
/** Single wire only up to this spacing, in closed patterns (TM 1-1500-204-23-6 p. 2-79). Inches. */
export const SINGLE_SPACING = 2;

/** Inches: 1/2 to 5/8 with 4 to 6 turns in AC 43.13-1B 7-125; 1/4 to 1/2 with 3 to 6 in the MS33540 family. The longer is cut for. */
export const PIGTAIL = 0.625;
