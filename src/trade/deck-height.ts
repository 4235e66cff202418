/** Where a piston stands at top dead centre: below the deck, or proud of it. */
import {si} from '../quantity/convert.js';
import type {Quantity} from '../quantity/model.js';
import {lengthLike} from './result.js';
import {ESTIMATE, notOf, refused, type Worked} from './worked.js';

export interface Deck {
  /** From crown to deck; negative where the piston stands proud. */
  readonly clearance: Quantity;
  /** With the gasket: the gap at the flat of a head; undefined where no gasket was given. */
  readonly squish?: Quantity;
}

export interface DeckInputs {
  /** From the middle of the crankshaft to the deck. */
  readonly block: Quantity;
  readonly stroke: Quantity;
  /** Between centres. */
  readonly rod: Quantity;
  /** From the middle of the pin to the flat of the crown. */
  readonly piston: Quantity;
  /** Of the gasket, squeezed. */
  readonly gasket?: Quantity | undefined;
}

/**
 * Block height less half the stroke, rod and piston (lengths over 0). Exact for a bore whose axis meets that of the
 * crankshaft; refused where the piston would be out by more than a tenth of the block's height, which no engine has.
 * Geometry.
 */
export function deckHeight({block, stroke, rod, piston, gasket}: DeckInputs): Worked<Deck> {
  const lengths = {'the block': block, 'the stroke': stroke, 'the rod': rod, 'the piston': piston};
  const refusal = notOf('length', lengths) ?? notOf('length', {'the gasket': gasket}, 'not-negative');
  if (refusal) return refusal;
  // To a picometre: a piston that stands flush must not come out proud by the last bits of a sum.
  const left = Number((si(block) - si(stroke) / 2 - si(rod) - si(piston)).toFixed(12));
  if (Math.abs(left) > si(block) / 10)
    return refused('crank, rod and piston do not belong to this block', 'check the lengths and their units');
  const all: [Quantity, ...(Quantity | undefined)[]] = [block, stroke, rod, piston, gasket];
  const squish = gasket && lengthLike(left + si(gasket), all);
  // A nanometre is what sums of lengths are off by.
  if (squish && si(squish) < 1e-9)
    return refused('the piston would strike the head', 'a thicker gasket, or take it off the piston');
  return {
    ok: true,
    result: {clearance: lengthLike(left, all), ...(squish ? {squish} : {})},
    formula: 'deck clearance = block − stroke / 2 − rod − piston',
    inputs: [
      {name: 'block, crankshaft to deck', value: block},
      {name: 'stroke', value: stroke},
      {name: 'rod between centres', value: rod},
      {name: 'piston, pin to crown', value: piston},
      ...(gasket ? [{name: 'gasket', value: gasket}] : []),
    ],
    source: 'geometry',
    advisory: `${ESTIMATE} Measure it at every cylinder: rods and pistons differ, and clearances take up at speed.`,
  };
}
