/** Quantities in the coherent SI unit of their dimension, the common ground on which they are compared. */
import type {Quantity} from './model.js';

/** The value in the dimension's SI unit: N·m, m, rad, s, K, Pa, N, kg, m³, rad/s, Hz, V, A, Ω, F, 1. */
export function si(q: Quantity): number {
  return q.value * q.unit.factor + q.unit.offset;
}

/** The same of a difference, such as a tolerance: a difference of 1 °F is 5/9 K, whatever nought °F is. */
export function difference(q: Quantity): number {
  return q.value * q.unit.factor;
}
