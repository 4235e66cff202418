/** The safety wire that a hole takes. */
import {convert, quantity} from '../quantity/convert.js';
import {formatQuantity} from '../quantity/format.js';
import type {Quantity} from '../quantity/model.js';
import {unit} from '../quantity/units.js';
import {type Suits, suits} from './near-size.js';
import {CLOSE_SPACING, FINE_WIRE, LEAST_WIRE, MIDDLE_HOLE, SMALL_HOLE, WIRE_SIZES} from './wire-rules.js';
import {notOf, refused, type Worked} from './worked.js';

export type Twist = 'double' | 'single';

export interface WireChoice {
  /** Nominal wires that will do, thinnest and thickest. */
  readonly least: Quantity;
  readonly most: Quantity;
}

/**
 * The wires that a hole takes. Double twist: 0.032 in at least where the hole is above 0.045 in, or 0.020 in to 0.062 in holes less than
 * 2 in apart; single wire: the largest that goes in. Source: AC 43.13-1B 7-124; TM 1-1500-204-23-6 p. 2-77 and 2-79.
 */
export function wireFor(inputs: {
  readonly hole: Quantity;
  readonly spacing?: Quantity;
  readonly twist?: Twist;
}): Worked<WireChoice> {
  const {hole, spacing, twist = 'double'} = inputs;
  const refusal = notOf('length', {'the hole': hole, 'the spacing': spacing});
  if (refusal) return refusal;
  const size = inches(hole);
  const largest = WIRE_SIZES.findLast((wire) => wire < size - 1e-9);
  if (largest === undefined)
    return refused(
      `no safety wire goes through a hole of ${formatQuantity(hole)}`,
      'a hole for wire is 0.045 in or more',
    );
  const least = twist === 'single' ? largest : leastWire(size, spacing);
  if (least > largest)
    return refused(
      `${least} in wire does not go through a hole of ${formatQuantity(hole)}`,
      'drill the hole larger',
    );
  return {
    ok: true,
    result: {least: quantity(least, 'in', 0.001), most: quantity(largest, 'in', 0.001)},
    formula:
      twist === 'single'
        ? 'the largest wire that the hole takes'
        : `hole above ${SMALL_HOLE} in: ${LEAST_WIRE} in or more; up to ${MIDDLE_HOLE} in and under ${CLOSE_SPACING} in apart: ${FINE_WIRE} in`,
    inputs: [
      {name: 'hole', value: hole},
      {name: 'spacing', value: spacing ?? 'not stated'},
      {name: 'twist', value: twist},
    ],
    source: 'AC 43.13-1B 7-124; TM 1-1500-204-23-6 p. 2-77, 2-79; sizes MS20995 (from memory)',
    ...(size <= SMALL_HOLE && twist === 'double'
      ? {advisory: `For holes to ${SMALL_HOLE} in the manuals set no least size.`}
      : {}),
  };
}

function leastWire(hole: number, spacing: Quantity | undefined): number {
  const close = spacing !== undefined && inches(spacing) < CLOSE_SPACING;
  if (hole <= SMALL_HOLE + 1e-9) return FINE_WIRE;
  return close && hole <= MIDDLE_HOLE + 1e-9 ? FINE_WIRE : LEAST_WIRE;
}

/** Whether a wire is one of those that will do, by its nominal size to a thousandth of an inch. */
export function wireSuits(wire: Quantity, choice: WireChoice): Suits {
  // Metric wire is sold as 0.8 mm for 0.032 in.
  return suits(wire, choice, 1);
}

function inches(length: Quantity): number {
  return convert(length, unit('in')).value;
}
