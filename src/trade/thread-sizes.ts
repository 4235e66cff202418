/** Standard screw threads: Unified inch sizes (ASME B1.1) and metric ones (ISO 261), with the pitches of their series. */

export type UnifiedSeries = 'UNC' | 'UNF' | 'UNEF';

export interface UnifiedSize {
  /** As designated: `10` for No. 10, `7/16`, `1-1/8`. */
  readonly name: string;
  /** Basic major diameter in inches; number n is 0.060 + 0.013·n. */
  readonly inches: number;
  /** Threads per inch. */
  readonly threads: Readonly<Partial<Record<UnifiedSeries, number>>>;
}

/** ASME B1.1-2003, tables 1 and 2 (from memory; the sizes in Shigley 9th ed., Table 8-2 were read there). */
export const UNIFIED_SIZES: readonly UnifiedSize[] = [
  {name: '0', inches: 0.06, threads: {UNF: 80}},
  {name: '1', inches: 0.073, threads: {UNC: 64, UNF: 72}},
  {name: '2', inches: 0.086, threads: {UNC: 56, UNF: 64}},
  {name: '3', inches: 0.099, threads: {UNC: 48, UNF: 56}},
  {name: '4', inches: 0.112, threads: {UNC: 40, UNF: 48}},
  {name: '5', inches: 0.125, threads: {UNC: 40, UNF: 44}},
  {name: '6', inches: 0.138, threads: {UNC: 32, UNF: 40}},
  {name: '8', inches: 0.164, threads: {UNC: 32, UNF: 36}},
  {name: '10', inches: 0.19, threads: {UNC: 24, UNF: 32}},
  {name: '12', inches: 0.216, threads: {UNC: 24, UNF: 28, UNEF: 32}},
  {name: '1/4', inches: 0.25, threads: {UNC: 20, UNF: 28, UNEF: 32}},
  {name: '5/16', inches: 0.3125, threads: {UNC: 18, UNF: 24, UNEF: 32}},
  {name: '3/8', inches: 0.375, threads: {UNC: 16, UNF: 24, UNEF: 32}},
  {name: '7/16', inches: 0.4375, threads: {UNC: 14, UNF: 20, UNEF: 28}},
  {name: '1/2', inches: 0.5, threads: {UNC: 13, UNF: 20, UNEF: 28}},
  {name: '9/16', inches: 0.5625, threads: {UNC: 12, UNF: 18, UNEF: 24}},
  {name: '5/8', inches: 0.625, threads: {UNC: 11, UNF: 18, UNEF: 24}},
  {name: '11/16', inches: 0.6875, threads: {UNEF: 24}},
  {name: '3/4', inches: 0.75, threads: {UNC: 10, UNF: 16, UNEF: 20}},
  {name: '13/16', inches: 0.8125, threads: {UNEF: 20}},
  {name: '7/8', inches: 0.875, threads: {UNC: 9, UNF: 14, UNEF: 20}},
  {name: '15/16', inches: 0.9375, threads: {UNEF: 20}},
  {name: '1', inches: 1, threads: {UNC: 8, UNF: 12, UNEF: 20}},
  {name: '1-1/8', inches: 1.125, threads: {UNC: 7, UNF: 12, UNEF: 18}},
  {name: '1-1/4', inches: 1.25, threads: {UNC: 7, UNF: 12, UNEF: 18}},
  {name: '1-3/8', inches: 1.375, threads: {UNC: 6, UNF: 12, UNEF: 18}},
  {name: '1-1/2', inches: 1.5, threads: {UNC: 6, UNF: 12, UNEF: 18}},
];

export interface MetricSize {
  /** Basic major diameter in mm. */
  readonly millimetres: number;
  /** Pitches in mm, the coarse one first. */
  readonly pitches: readonly number[];
}

/** ISO 261:1998, from memory, sizes to M39, the range of ISO 898-1. */
export const METRIC_SIZES: readonly MetricSize[] = [
  {millimetres: 1.6, pitches: [0.35, 0.2]},
  {millimetres: 2, pitches: [0.4, 0.25]},
  {millimetres: 2.5, pitches: [0.45, 0.35]},
  {millimetres: 3, pitches: [0.5, 0.35]},
  {millimetres: 3.5, pitches: [0.6, 0.35]},
  {millimetres: 4, pitches: [0.7, 0.5]},
  {millimetres: 5, pitches: [0.8, 0.5]},
  {millimetres: 6, pitches: [1, 0.75]},
  {millimetres: 7, pitches: [1, 0.75]},
  {millimetres: 8, pitches: [1.25, 1, 0.75]},
  {millimetres: 9, pitches: [1.25, 1, 0.75]},
  {millimetres: 10, pitches: [1.5, 1.25, 1, 0.75]},
  {millimetres: 11, pitches: [1.5, 1, 0.75]},
  {millimetres: 12, pitches: [1.75, 1.5, 1.25, 1]},
  {millimetres: 14, pitches: [2, 1.5, 1.25, 1]},
  {millimetres: 16, pitches: [2, 1.5, 1]},
  {millimetres: 18, pitches: [2.5, 2, 1.5, 1]},
  {millimetres: 20, pitches: [2.5, 2, 1.5, 1]},
  {millimetres: 22, pitches: [2.5, 2, 1.5, 1]},
  {millimetres: 24, pitches: [3, 2, 1.5, 1]},
  {millimetres: 27, pitches: [3, 2, 1.5, 1]},
  {millimetres: 30, pitches: [3.5, 3, 2, 1.5, 1]},
  {millimetres: 33, pitches: [3.5, 3, 2, 1.5]},
  {millimetres: 36, pitches: [4, 3, 2, 1.5]},
  {millimetres: 39, pitches: [4, 3, 2, 1.5]},
];
