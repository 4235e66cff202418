/** What heat does to an interference when both parts have it: a bush in a warm block, a wheel on a warm shaft. */
import {compare, quantity, si} from '../quantity/convert.js';
import type {Quantity} from '../quantity/model.js';
import {coefficientText, EXPANSION_SOURCE, type Material} from './expansion.js';
import {lengthLike} from './result.js';
import {ESTIMATE, notOf, refused, type Worked} from './worked.js';

export interface WarmFit {
  readonly diameter: Quantity;
  /** At room temperature; negative is clearance. */
  readonly interference: Quantity;
  readonly inner: Material;
  readonly outer: Material;
  readonly room: Quantity;
}

/**
 * What the interference becomes at another temperature that both parts have; negative is clearance. Lengths, the
 * diameter over 0; valid from −40 to 300 °C. Geometry of free expansion; coefficients, Callister, Table B.6.
 */
export function interferenceAt(given: WarmFit, at: Quantity): Worked<Quantity> {
  const {diameter, interference, inner, outer, room} = given;
  const refusal =
    notOf('length', {'the diameter': diameter}) ?? notOf('length', {'the interference': interference}, 'any');
  const outside = refusal ?? notOf('temperature', {'the room': room, 'the temperature': at}, 'any');
  if (outside) return outside;
  if ([room, at].some((point) => compare(point, HOTTEST) > 0 || compare(point, COLDEST) < 0))
    return refused('the coefficients hold from −40 °C to 300 °C', 'give a temperature between them');
  const change = si(diameter) * (si(at) - si(room)) * (inner.perKelvin - outer.perKelvin);
  return {
    ok: true,
    result: lengthLike(si(interference) + change, [interference]),
    formula: 'I(T) = I + D · (T − room) · (α inner − α outer)',
    inputs: [
      {name: 'diameter, D', value: diameter},
      {name: 'interference at room temperature, I', value: interference},
      {name: 'α inner', value: coefficientText(inner)},
      {name: 'α outer', value: coefficientText(outer)},
      {name: 'room', value: room},
      {name: 'temperature, T', value: at},
    ],
    source: `${EXPANSION_SOURCE}; free expansion of both parts`,
    advisory: ESTIMATE,
  };
}

/** In kelvin: 300 °C and −40 °C. */
const HOTTEST = quantity(300, '°C');
const COLDEST = quantity(-40, '°C');
