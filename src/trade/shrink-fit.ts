/** Heating the outer or cooling the inner part until an interference fit goes together by hand. */
import {compare, quantity, si} from '../quantity/convert.js';
import {formatQuantity} from '../quantity/format.js';
import type {Amount, Quantity} from '../quantity/model.js';
import {coldOfSteel} from './cold-steel.js';
import {coefficientText, EXPANSION_SOURCE, type Material} from './expansion.js';
import {fromSi} from './result.js';
import {ESTIMATE, notOf, type Refused, refused, type Worked} from './worked.js';

export interface ShrinkInputs {
  /** Of the fit. */
  readonly diameter: Quantity;
  /** The most that the fit can have. */
  readonly interference: Quantity;
  /** Room to slide it together before it seizes. */
  readonly clearance: Quantity;
  /** Of the part that is heated or cooled. */
  readonly material: Material;
  /** Of the other part and of the shop. */
  readonly room: Quantity;
}

export interface Shrink {
  /** What the part must be brought to. */
  readonly temperature: Quantity;
  /** How far that is from the room, in kelvin. */
  readonly kelvin: number;
  /** By how much the diameter changes. */
  readonly change: Quantity;
}

/**
 * The temperature to heat the outer part to, from a room of −40 to 50 °C: lengths, the diameter over 0. Valid to 300
 * °C, beyond which hardened parts soften (common practice, from memory); the coefficient grows with heat, so the
 * answer is on the safe side. Source: formula, Machinery's Handbook, shrink fits (from memory); coefficients,
 * Callister, Table B.6.
 */
export function heatToAssemble(given: ShrinkInputs): Worked<Shrink> {
  const refusal = unfit(given);
  if (refusal) return refusal;
  const end = straight(1)(given);
  if (end > HOTTEST)
    return refused(
      `the part would need ${formatQuantity(pointAt(end, given.room))}, over 300 °C`,
      'cool the inner part as well, or press it',
    );
  return worked(given, end, straight(1), {formula: CONSTANT, advisory: `${HOT} ${ESTIMATE}`});
}

const CONSTANT = 'ΔT = (interference + clearance) / (α · D)';
const HOTTEST = 573.15;
const HOT = 'Heat evenly, and no hotter than the part, its seals and its temper bear: ask its maker.';

/**
 * The temperature to cool the inner part to. Of steel the coefficient falls in the cold, and is taken from a table
 * down to −340 °F; of other materials it is held constant, and refused below −80 °C. Inputs as for heating. Source:
 * A. Kaw, Numerical Methods, trunnion problem (a constant coefficient over-predicts the contraction); coefficients,
 * Callister, Table B.6.
 */
export function coolToAssemble(given: ShrinkInputs): Worked<Shrink> {
  const refusal = unfit(given);
  if (refusal) return refusal;
  const {steel} = given.material;
  const way = steel ? bySteelTable : straight(-1);
  const end = way(given);
  if (end === undefined || (!steel && end < COLDEST)) {
    const reach = steel ? '−340 °F' : '−80 °C, below which its coefficient is not known here';
    return refused(`the part would have to go below ${reach}`, 'heat the outer part as well');
  }
  const formula = steel ? 'interference + clearance = D · ∫α dT' : CONSTANT;
  const source = steel ? '; steel in the cold: A. Kaw, Numerical Methods, trunnion problem' : '';
  return worked(given, end, way, {formula, source, advisory: `${COLD} ${ESTIMATE}`});
}

/** About what dry ice reaches. */
const COLDEST = 193.15;
const COLD =
  'Cold burns and steals the air: gloves, face shield and an open door. Dry the part, frost takes up the clearance.';

function unfit({diameter, interference, clearance, room}: ShrinkInputs): Refused | undefined {
  const lengths = {'the interference': interference, 'the clearance': clearance};
  const refusal =
    notOf('length', {'the diameter': diameter}) ??
    notOf('length', lengths, 'not-negative') ??
    notOf('temperature', {'the room': room}, 'any');
  if (refusal) return refusal;
  if (compare(room, COLDEST_ROOM) < 0 || compare(room, HOTTEST_ROOM) > 0)
    return refused(
      `a room of ${formatQuantity(room)} is outside −40 °C to 50 °C`,
      'give the temperature of the shop',
    );
  if (needed({interference, clearance}) > 0) return undefined;
  return refused('nothing has to change for this fit', 'give its interference, or the clearance wanted');
}

/** In metres. */
const COLDEST_ROOM = quantity(-40, '°C');
const HOTTEST_ROOM = quantity(50, '°C');

function needed({interference, clearance}: Pick<ShrinkInputs, 'interference' | 'clearance'>): number {
  return si(interference) + si(clearance);
}

/** The temperature in kelvin that a part must be brought to; undefined where its coefficient is not known so far. */
type Way = (given: ShrinkInputs) => number | undefined;

/** Up or down at a constant coefficient. */
function straight(sign: 1 | -1): (given: ShrinkInputs) => number {
  return (given) => si(given.room) + (sign * needed(given)) / (given.material.perKelvin * si(given.diameter));
}

function bySteelTable(given: ShrinkInputs): number | undefined {
  return coldOfSteel(needed(given) / si(given.diameter), si(given.room), given.material);
}

interface Words {
  readonly formula: string;
  readonly source?: string;
  readonly advisory: string;
}

function worked(given: ShrinkInputs, end: number, way: Way, words: Words): Worked<Shrink> {
  const {diameter, interference, clearance, material, room} = given;
  const change = fromSi(needed(given), diameter.unit, 1e-4);
  return {
    ok: true,
    result: {temperature: pointAt(end, room), kelvin: end - si(room), change},
    formula: words.formula,
    inputs: [
      {name: 'diameter, D', value: diameter},
      {name: 'interference', value: interference},
      {name: 'clearance to assemble', value: clearance},
      {name: 'α', value: coefficientText(material)},
      {name: 'room', value: room},
    ],
    band: {name: 'with α a tenth more or less', value: bandOf(given, way)},
    source: `${EXPANSION_SOURCE}${words.source ?? ''}`,
    advisory: words.advisory,
  };
}

/** Coefficients in print differ by 5 to 10 %. Where less of one is out of the table's reach, there is no lower end. */
function bandOf(given: ShrinkInputs, way: Way): Amount {
  const {material, room} = given;
  const ends = [0.9, 1.1].flatMap((factor) => {
    const end = way({...given, material: {...material, perKelvin: material.perKelvin * factor}});
    return end === undefined ? [] : [pointAt(end, room)];
  });
  const [high = room, low] = [...ends].sort((a, b) => b.value - a.value);
  return low === undefined ? {form: 'most', high} : {form: 'range', low, high};
}

/** A point of temperature, in the room's unit, to a whole degree. */
function pointAt(kelvin: number, room: Quantity): Quantity {
  return fromSi(kelvin, room.unit, 1);
}
