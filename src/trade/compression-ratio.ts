/** Compression ratio of a cylinder from its bore, stroke and the volumes left at top dead centre. */
import {si} from '../quantity/convert.js';
import type {Quantity} from '../quantity/model.js';
import {unit} from '../quantity/units.js';
import {fromSi} from './result.js';
import {ESTIMATE, notOf, type Refused, refused, type Worked} from './worked.js';

export interface Cylinder {
  readonly bore: Quantity;
  readonly stroke: Quantity;
  /** Of the chamber in the head, measured with fluid. */
  readonly chamber: Quantity;
  /** Dish and valve reliefs of the piston crown count as positive, a dome as negative. */
  readonly dish?: Quantity | undefined;
  /** From piston crown to deck at top dead centre; negative where the piston stands proud. */
  readonly deck?: Quantity | undefined;
  readonly gasket?: {readonly bore: Quantity; readonly thickness: Quantity} | undefined;
}

export interface Compression {
  /** To one: 9.5 is 9.5:1. */
  readonly ratio: number;
  readonly swept: Quantity;
  readonly clearance: Quantity;
}

/**
 * (Swept + clearance) / clearance, the static ratio. Bore, stroke and chamber over 0; refused outside 3:1 to 30:1,
 * where a reading or its unit must be wrong. Geometry; the volume above the top ring is left out.
 */
export function compressionRatio(cylinder: Cylinder): Worked<Compression> {
  const {bore, stroke, chamber, dish, deck, gasket} = cylinder;
  const refusal = notCylinder(cylinder) ?? notOf('volume', {'the chamber': chamber});
  if (refusal) return refusal;
  const swept = disc(bore, si(stroke));
  const clearance = si(chamber) + restOf(cylinder);
  if (clearance <= 0)
    return refused(
      'no volume is left at top dead centre',
      'check the signs: a dish is positive, a dome negative',
    );
  const ratio = (swept + clearance) / clearance;
  if (!isRatio(ratio))
    return refused(`a ratio of ${ratio.toFixed(1)}:1 cannot be right`, 'check the readings and their units');
  const volume = bore.unit.system === 'inch' ? unit('in³') : unit('cc');
  const told = (value: number) => fromSi(value, volume, volume.system === 'inch' ? 0.01 : 0.1);
  return {
    ok: true,
    result: {ratio, swept: told(swept), clearance: told(clearance)},
    formula:
      'CR = (V swept + V clearance) / V clearance; V clearance = chamber + dish + π/4 · (bore² · deck + gasket bore² · thickness)',
    inputs: [
      {name: 'bore', value: bore},
      {name: 'stroke', value: stroke},
      {name: 'chamber', value: chamber},
      {name: 'dish (+) or dome (−)', value: dish ?? 'none'},
      {name: 'deck clearance', value: deck ?? 'none'},
      {name: 'gasket bore', value: gasket?.bore ?? 'none'},
      {name: 'gasket thickness', value: gasket?.thickness ?? 'none'},
    ],
    source: 'geometry',
    advisory: ESTIMATE,
  };
}

/** The chamber volume that gives a ratio of 3 to 30, the rest as it is. Validity and source as above. */
export function chamberFor(ratio: number, cylinder: Omit<Cylinder, 'chamber'>): Worked<Quantity> {
  if (!isRatio(ratio)) return refused(`a ratio of ${ratio}:1 cannot be right`, 'give one from 3 to 30');
  const {bore, stroke} = cylinder;
  const refusal = notCylinder(cylinder);
  if (refusal) return refusal;
  const left = disc(bore, si(stroke)) / (ratio - 1) - restOf(cylinder);
  if (left <= 0) return refused(`${ratio}:1 leaves no room for a chamber`, 'a lower ratio, or more dish');
  const chamber = fromSi(left, unit('cc'), 0.1);
  const worked = compressionRatio({...cylinder, chamber});
  if (!worked.ok) return worked;
  const others = worked.inputs.filter(({name}) => name !== 'chamber');
  return {
    ...worked,
    result: chamber,
    formula: 'chamber = V swept / (CR − 1) − the rest of V clearance',
    inputs: [{name: 'ratio wanted', value: `${ratio}:1`}, ...others],
  };
}

/** From 3 to 30; a chamber worked out for either end gives it back but for its last figures. */
function isRatio(ratio: number): boolean {
  return ratio > 3 - 1e-6 && ratio < 30 + 1e-6;
}

function notCylinder({bore, stroke, dish, deck, gasket}: Omit<Cylinder, 'chamber'>): Refused | undefined {
  return (
    notOf('length', {'the bore': bore, 'the stroke': stroke, 'the gasket bore': gasket?.bore}) ??
    notOf('length', {'the gasket thickness': gasket?.thickness}, 'not-negative') ??
    notOf('length', {'the deck clearance': deck}, 'any') ??
    notOf('volume', {'the dish': dish}, 'any')
  );
}

/** Volume in m³ left at top dead centre outside the chamber: dish, deck and gasket. */
function restOf({bore, dish, deck, gasket}: Omit<Cylinder, 'chamber'>): number {
  const squeezed = gasket ? disc(gasket.bore, si(gasket.thickness)) : 0;
  return (dish ? si(dish) : 0) + (deck ? disc(bore, si(deck)) : 0) + squeezed;
}

/** Volume in m³ of a disc of this diameter. */
function disc(diameter: Quantity, height: number): number {
  return (Math.PI / 4) * si(diameter) ** 2 * height;
}
