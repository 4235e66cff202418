/** Whether a wire or a pin at hand is near enough to the sizes that will do. */
import {si} from '../quantity/convert.js';
import type {Quantity} from '../quantity/model.js';

export type Suits = 'too thin' | 'too thick' | 'suits';

/** `slack` thousandths of an inch are let pass at either end: nominal sizes and their metric counterparts differ by that. */
export function suits(
  size: Quantity,
  {least, most}: {readonly least?: Quantity; readonly most?: Quantity},
  slack: number,
): Suits {
  if (least && nanometresOver(size, least) < -slack * THOUSANDTH) return 'too thin';
  return most && nanometresOver(size, most) > slack * THOUSANDTH ? 'too thick' : 'suits';
}

/** In nanometres. */
const THOUSANDTH = 25_400;

/** A whole number of them, which the last bits of a conversion do not reach. */
function nanometresOver(one: Quantity, other: Quantity): number {
  return Math.round((si(one) - si(other)) * 1e9);
}
