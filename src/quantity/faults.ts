/** The wording of what can be wrong with an amount's unit, with the hint that gets the writer on. */
import {clipped} from '../text/clipped.js';
import {nearest} from '../text/nearest.js';
import type {Span} from '../text/source.js';
import type {AmountFault, Dimension, Unit} from './model.js';
import {allSpellings, findUnit, unitKey} from './units.js';

const ARTICLE: Readonly<Record<Dimension, string>> = {
  torque: 'a torque',
  length: 'a length',
  angle: 'an angle',
  time: 'a time',
  temperature: 'a temperature',
  pressure: 'a pressure',
  force: 'a force',
  mass: 'a mass',
  volume: 'a volume',
  'speed of rotation': 'a speed of rotation',
  frequency: 'a frequency',
  voltage: 'a voltage',
  current: 'a current',
  resistance: 'a resistance',
  capacitance: 'a capacitance',
  share: 'a share',
};

/** The units that a shop would reach for first, for hints. */
const USUAL: Readonly<Record<Dimension, string>> = {
  torque: 'lbf·ft, lbf·in or N·m',
  length: 'in or mm',
  angle: '°',
  time: 'min or h',
  temperature: '°F or °C',
  pressure: 'psi, kPa or bar',
  force: 'lbf or N',
  mass: 'lb or kg',
  volume: 'US qt or L',
  'speed of rotation': 'rpm',
  frequency: 'Hz',
  voltage: 'V',
  current: 'A',
  resistance: 'Ω',
  capacitance: 'µF',
  share: '%',
};

/** What a unit of another kind was most likely meant for, by the dimension that is due. */
const MEANT: Readonly<Partial<Record<Dimension, Readonly<Record<string, string>>>>> = {
  torque: {
    lb: 'lbf·ft or lbf·in',
    lbf: 'lbf·ft or lbf·in',
    ft: 'lbf·ft',
    in: 'lbf·in',
    kg: 'kgf·m',
    kgf: 'kgf·m',
    oz: 'ozf·in',
    ozf: 'ozf·in',
    N: 'N·m',
    m: 'N·m',
  },
  force: {lb: 'lbf', oz: 'ozf', kg: 'kgf', lbf·ft: 'lbf', N·m: 'N'},
  pressure: {lb: 'psi', lbf: 'psi', kg: 'kgf/cm²', kgf: 'kgf/cm²', in: 'inHg'},
  volume: {oz: 'US fl oz'},
  mass: {lbf: 'lb', kgf: 'kg', ozf: 'oz'},
};

/** "a torque", "an angle". */
export function withArticle(dimension: Dimension): string {
  return ARTICLE[dimension];
}

/** The units that a shop would use first for a dimension: "lbf·ft, lbf·in or N·m". */
export function usualUnits(dimension: Dimension): string {
  return USUAL[dimension];
}

/** Of a number alone; `text` is the whole amount as it was written, `due` the dimension that is asked for, if one is. */
export function missingUnit(text: string, span: Span, due: Dimension | undefined): AmountFault {
  const shown = clip(text);
  if (due === undefined) {
    const says = `${shown} has no unit`;
    return {name: 'unit-missing', span, says, hint: 'write the unit after the number'};
  }
  const says = `${shown} has no unit where ${ARTICLE[due]} is due`;
  return {name: 'unit-missing', span, says, hint: `write it in ${USUAL[due]}`};
}

/** Of a known unit of another dimension than the one that is due. */
export function wrongKind(text: string, unit: Unit, span: Span, due: Dimension): AmountFault {
  const says = `${clip(text)} is ${ARTICLE[unit.dimension]} where ${ARTICLE[due]} is due`;
  const meant = MEANT[due]?.[unit.symbol];
  // Behind a number `min` reads as minutes, which is right in every place but this.
  const limit = unit.symbol === 'min' ? 'put min before the number if it is a lower limit' : undefined;
  const hint = limit ?? `write ${meant ?? USUAL[due]}`;
  return {name: 'unit-wrong-kind', span, says, hint};
}

/** Of words that stand where a unit would and are none; the nearest spelling of a fitting unit is the hint. */
export function unknownUnit(text: string, span: Span, due: Dimension | undefined): AmountFault {
  const keys = [...allSpellings()].filter(([, unit]) => due === undefined || unit.dimension === due);
  const key = unitKey(text);
  // Of spellings that lie as near, the one with the same first letter: `mn` is a slip of mm, and of nothing else.
  const begins = (other: string) => (other.charAt(0) === key.charAt(0) ? 0 : 1);
  const near = nearest(
    key,
    keys.map(([one]) => one).sort((one, other) => begins(one) - begins(other)),
  );
  const meant = near === undefined ? undefined : findUnit(near)?.symbol;
  const usual = due === undefined ? 'write a unit such as lbf·ft, in, mm, °, h, psi' : `write ${USUAL[due]}`;
  const says = due === undefined ? `${clip(text)} is not a unit` : `${clip(text)} is no unit of ${due}`;
  return {name: 'unit-wrong-kind', span, says, hint: meant === undefined ? usual : `did you mean ${meant}?`};
}

function clip(text: string): string {
  return clipped(text, 24);
}
