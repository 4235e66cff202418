/** Which unit a shop of the other system would state a value in: the second figure in brackets on every sheet. */
import {dimensionOf, si, unitOf, upperOf} from './convert.js';
import type {Amount, Unit} from './model.js';
import {type UnitSymbol, unit} from './units.js';

/** N·m below which a shop sets its wrench in lbf·in: about 10 lbf·ft. */
const SMALL_TORQUE = 14;

/** The unit that a shop of the other system would state this amount in; undefined where one unit serves both. */
export function otherUnit(amount: Amount): Unit | undefined {
  const from = unitOf(amount);
  const symbol = from.system === 'inch' ? METRIC[from.symbol] : INCH[from.symbol];
  if (symbol === undefined) return undefined;
  const small = dimensionOf(amount) === 'torque' && Math.abs(si(upperOf(amount))) < SMALL_TORQUE;
  return unit(small && symbol === 'lbf·ft' ? 'lbf·in' : symbol);
}

const METRIC: Readonly<Partial<Record<string, UnitSymbol>>> = {
  in: 'mm',
  ft: 'm',
  thou: 'mm',
  mil: 'mm',
  µin: 'µm',
  '°F': '°C',
  psi: 'kPa',
  ksi: 'MPa',
  inHg: 'kPa',
  lbf: 'N',
  ozf: 'N',
  kip: 'kN',
  lb: 'kg',
  oz: 'g',
  'in³': 'cc',
  'US fl oz': 'mL',
  'imp fl oz': 'mL',
  lbf·ft: 'N·m',
  lbf·in: 'N·m',
  ozf·in: 'N·m',
  'US gal': 'L',
  'US qt': 'L',
  'US pt': 'L',
  'imp gal': 'L',
  'imp qt': 'L',
  'imp pt': 'L',
};

const INCH: Readonly<Partial<Record<string, UnitSymbol>>> = {
  mm: 'in',
  µm: 'in',
  cm: 'in',
  m: 'ft',
  '°C': '°F',
  K: '°F',
  bar: 'psi',
  mbar: 'inHg',
  Pa: 'psi',
  kPa: 'psi',
  MPa: 'psi',
  GPa: 'ksi',
  'kgf/cm²': 'psi',
  N: 'lbf',
  kN: 'lbf',
  kgf: 'lbf',
  kg: 'lb',
  g: 'oz',
  L: 'US qt',
  mL: 'US fl oz',
  cc: 'in³',
  N·m: 'lbf·ft',
  N·cm: 'lbf·in',
  kgf·m: 'lbf·ft',
  kgf·cm: 'lbf·in',
};
