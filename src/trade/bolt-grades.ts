/** Strengths of bolts by grade, as the standards table them. */

export interface GradeRow {
  readonly grade: string;
  /** Sizes over … up to and including, in inches (J429) or mm (ISO 898-1). */
  readonly over: number;
  readonly upTo: number;
  /** ksi (J429) or MPa (ISO 898-1). */
  readonly proof: number;
  readonly yield: number;
  readonly tensile: number;
}

/**
 * SAE J429, ksi. Shigley & Mischke, 5th ed. 1989, p. 341, as transcribed at
 * mst.edu/~jthomas/classes/2211/lessons/fasteners/property_reference. "Over" is just under 1/4 in for the smallest sizes.
 */
export const SAE_J429: readonly GradeRow[] = [
  {grade: '1', over: 0.2499, upTo: 1.5, proof: 33, yield: 36, tensile: 60},
  {grade: '2', over: 0.2499, upTo: 0.75, proof: 55, yield: 57, tensile: 74},
  {grade: '2', over: 0.75, upTo: 1.5, proof: 33, yield: 36, tensile: 60},
  {grade: '4', over: 0.2499, upTo: 1.5, proof: 65, yield: 100, tensile: 115},
  {grade: '5', over: 0.2499, upTo: 1, proof: 85, yield: 92, tensile: 120},
  {grade: '5', over: 1, upTo: 1.5, proof: 74, yield: 81, tensile: 105},
  {grade: '5.2', over: 0.2499, upTo: 1, proof: 85, yield: 92, tensile: 120},
  {grade: '7', over: 0.2499, upTo: 1.5, proof: 105, yield: 115, tensile: 133},
  {grade: '8', over: 0.2499, upTo: 1.5, proof: 120, yield: 130, tensile: 150},
  {grade: '8.2', over: 0.2499, upTo: 1, proof: 120, yield: 130, tensile: 150},
];

/** Grade 2 falls to grade 1 in bolts longer than this, inches (J429, as quoted by a maker's table). */
export const GRADE_2_LENGTH = 6;

/** ISO 898-1:2013 Table 3, MPa, read at nfgab.se (EN ISO 898-1:2013) and usefastener.com/knowledge/403. */
export const ISO_898_1: readonly GradeRow[] = [
  {grade: '4.6', over: 0, upTo: 39, proof: 225, yield: 240, tensile: 400},
  {grade: '4.8', over: 0, upTo: 39, proof: 310, yield: 340, tensile: 420},
  {grade: '5.6', over: 0, upTo: 39, proof: 280, yield: 300, tensile: 500},
  {grade: '5.8', over: 0, upTo: 39, proof: 380, yield: 420, tensile: 520},
  {grade: '6.8', over: 0, upTo: 39, proof: 440, yield: 480, tensile: 600},
  {grade: '8.8', over: 0, upTo: 16, proof: 580, yield: 640, tensile: 800},
  {grade: '8.8', over: 16, upTo: 39, proof: 600, yield: 660, tensile: 830},
  {grade: '9.8', over: 0, upTo: 16, proof: 650, yield: 720, tensile: 900},
  {grade: '10.9', over: 0, upTo: 39, proof: 830, yield: 940, tensile: 1040},
  {grade: '12.9', over: 0, upTo: 39, proof: 970, yield: 1100, tensile: 1220},
];
