/**
 * Published nut factors K of T = K·F·d by what is on the threads, and published scatter of preload by how the bolt is
 * tightened. The sources disagree by up to half for the same words: a shop that knows its own K should state it.
 */

export type ThreadCondition =
  | 'dry'
  | 'oiled'
  | 'zinc-plated'
  | 'cadmium-plated'
  | 'anti-seize'
  | 'not stated';

export interface PublishedFactor {
  readonly condition: ThreadCondition;
  readonly low: number;
  readonly high: number;
  readonly source: string;
}

/** One row a source; a single value has low and high alike. The first of a condition is the one taken where none is stated. */
export const NUT_FACTORS: readonly PublishedFactor[] = [
  {
    condition: 'dry',
    low: 0.2,
    high: 0.2,
    source:
      'Mott, Machine Elements in Mechanical Design (clean and dry); Bickford & Nassar 1998, ch. 2 (bare steel)',
  },
  {condition: 'dry', low: 0.3, high: 0.3, source: 'Shigley 9th ed., Table 8-15 (nonplated, black finish)'},
  {condition: 'oiled', low: 0.18, high: 0.18, source: 'Shigley 9th ed., Table 8-15 (lubricated)'},
  {
    condition: 'oiled',
    low: 0.15,
    high: 0.15,
    source: 'Mott, Machine Elements in Mechanical Design (any lubrication)',
  },
  {
    condition: 'oiled',
    low: 0.11,
    high: 0.15,
    source: 'NASA TM-106943 (1995), NSTS 08307 (1998), from memory',
  },
  {condition: 'zinc-plated', low: 0.2, high: 0.2, source: 'Shigley 9th ed., Table 8-15'},
  {
    condition: 'zinc-plated',
    low: 0.295,
    high: 0.295,
    source: 'Bickford & Nassar 1998, ch. 2 Table 1 (zinc plate, dry)',
  },
  {condition: 'cadmium-plated', low: 0.16, high: 0.16, source: 'Shigley 9th ed., Table 8-15'},
  {
    condition: 'cadmium-plated',
    low: 0.2,
    high: 0.2,
    source: 'Bickford & Nassar 1998, ch. 2 Table 1 (cadmium plate, dry)',
  },
  {condition: 'anti-seize', low: 0.12, high: 0.12, source: 'Shigley 9th ed., Table 8-15'},
  {condition: 'not stated', low: 0.2, high: 0.2, source: 'Shigley 9th ed., text with Eq. 8-27, from memory'},
];

export type TighteningMethod =
  | 'feel'
  | 'torque wrench'
  | 'turn of nut'
  | 'indicating washer'
  | 'bolt stretch'
  | 'ultrasonic';

/** Preload may lie this fraction above and below. Machinery's Handbook and the NSTS 08307 family, as reproduced at docsbay.net/methods-of-applying-and-measuring-preload. */
export const SCATTER: Readonly<
  Record<TighteningMethod, {readonly fraction: number; readonly source: string}>
> = {
  feel: {fraction: 0.35, source: "Machinery's Handbook"},
  'torque wrench': {fraction: 0.25, source: "Machinery's Handbook; NSTS 08307 where lubricated"},
  'turn of nut': {fraction: 0.15, source: "Machinery's Handbook"},
  'indicating washer': {fraction: 0.1, source: "Machinery's Handbook; NSTS 08307"},
  'bolt stretch': {fraction: 0.05, source: "Machinery's Handbook (3 to 5 %); NSTS 08307"},
  ultrasonic: {fraction: 0.1, source: "NSTS 08307 (Machinery's Handbook: 1 %)"},
};

/** A torque wrench on threads that are not lubricated scatters more (NSTS 08307 family, same page). */
export const WRENCH_SCATTER: Readonly<
  Partial<Record<ThreadCondition, {readonly fraction: number; readonly source: string}>>
> = {
  dry: {fraction: 0.35, source: 'NSTS 08307, unlubricated'},
  'zinc-plated': {fraction: 0.35, source: 'NSTS 08307, unlubricated'},
  'not stated': {fraction: 0.35, source: 'NSTS 08307, unlubricated'},
  'cadmium-plated': {fraction: 0.3, source: 'NSTS 08307, cadmium-plated'},
};

/** A nut factor outside this is more likely a slip than a thread: all published values and AC 43.13-1B Table 7-1 lie inside. */
export const NUT_FACTOR_RANGE = {low: 0.09, high: 0.35} as const;
