/** Points of a drawing on paper, in millimetres. */
import type {Drawing} from './model.js';

/** A point in millimetres from the top left corner. */
export type Placed = Drawing['points'][number];

/** Hundredths of a millimetre: the same drawing is the same text on every machine. */
export function round(value: number): number {
  return Math.round(value * 100) / 100;
}
