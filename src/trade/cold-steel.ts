/** How cold steel must get to shrink by a given part, by a coefficient that falls with the temperature. */
import {convert, si} from '../quantity/convert.js';
import {unit} from '../quantity/units.js';
import {COLD_STEEL, type Material} from './expansion.js';

/**
 * Walks down the table until the steel has shrunk by `strain` (a part of its length) from `room`; both temperatures in
 * kelvin, undefined beyond the table's −340 °F. A steel other than the table's is taken to fall in proportion.
 */
export function coldOfSteel(strain: number, room: number, {perKelvin}: Material): number | undefined {
  const [warmest] = COLD_STEEL;
  if (warmest === undefined) return undefined;
  const scale = ((perKelvin * 5) / 9 / (warmest[1] * 1e-6)) * 1e-6;
  let left = strain / scale;
  let at = convert({value: room, unit: unit('K'), step: 1}, unit('°F')).value;
  for (const [cold, low] of COLD_STEEL) {
    if (cold >= at) continue;
    const high = coefficientAt(at);
    const part = ((high + low) / 2) * (at - cold);
    if (part >= left) return kelvinOf(at - fall(left, high, low, at - cold));
    left -= part;
    at = cold;
  }
  return undefined;
}

/** In °F: how far down a stretch, over which the coefficient falls evenly, the steel has shrunk by `left`. */
function fall(left: number, high: number, low: number, length: number): number {
  const slope = (high - low) / length;
  if (slope === 0) return left / high;
  return (high - Math.sqrt(high * high - 2 * slope * left)) / slope;
}

/** Of the table, between its rows; above it the first holds. */
function coefficientAt(fahrenheit: number): number {
  const [warmest] = COLD_STEEL;
  const below = COLD_STEEL.findIndex(([cold]) => cold <= fahrenheit);
  const [one, two] = [COLD_STEEL[below - 1], COLD_STEEL[below]];
  if (one === undefined || two === undefined) return warmest?.[1] ?? 0;
  return two[1] + ((one[1] - two[1]) * (fahrenheit - two[0])) / (one[0] - two[0]);
}

function kelvinOf(fahrenheit: number): number {
  return si({value: fahrenheit, unit: unit('°F'), step: 1});
}
