/** What ISO 6789 lets a hand torque tool be off by, by type and class. */

export interface WrenchClass {
  /** I indicates, II is set and clicks or slips. */
  readonly type: 'I' | 'II';
  readonly letter: string;
  readonly says: string;
  /** Fractions of the reading, for tools with a maximum to 10 N·m and above. */
  readonly small: number;
  readonly large: number;
}

/**
 * ISO 6789:2003 and 6789-1:2017. Class II A was read in a maker's manual that sums the standard up (manuzoid.com, "Review of ISO 6789");
 * the other classes are from memory.
 */
export const WRENCH_CLASSES: readonly WrenchClass[] = [
  {type: 'I', letter: 'A', says: 'beam', small: 0.06, large: 0.06},
  {type: 'I', letter: 'B', says: 'rigid housing with scale or dial', small: 0.06, large: 0.04},
  {type: 'I', letter: 'C', says: 'rigid housing, electronic', small: 0.06, large: 0.04},
  {type: 'I', letter: 'D', says: 'screwdriver with scale or dial', small: 0.06, large: 0.06},
  {type: 'I', letter: 'E', says: 'screwdriver, electronic', small: 0.06, large: 0.04},
  {type: 'II', letter: 'A', says: 'adjustable with scale', small: 0.06, large: 0.04},
  {type: 'II', letter: 'B', says: 'set at one torque', small: 0.06, large: 0.04},
  {type: 'II', letter: 'C', says: 'adjustable without scale', small: 0.06, large: 0.06},
  {type: 'II', letter: 'D', says: 'screwdriver, adjustable with scale', small: 0.06, large: 0.06},
  {type: 'II', letter: 'E', says: 'screwdriver set at one torque', small: 0.06, large: 0.06},
  {type: 'II', letter: 'F', says: 'screwdriver, adjustable without scale', small: 0.06, large: 0.06},
  {type: 'II', letter: 'G', says: 'flexion bar, adjustable with scale', small: 0.06, large: 0.06},
];

/** N·m of maximum torque up to which a tool counts as small. */
export const SMALL_TOOL = 10;

/** Without a marked lowest value a tool is tested, and to be used, from this fraction of its maximum. */
export const LOWEST_FRACTION = 0.2;
