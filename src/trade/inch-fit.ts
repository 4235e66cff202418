/** Limits and fit of a nominal size by its class of ANSI B4.1: `RC4`, `LN2`, `FN2`. The table is in `inch-fits.ts`. */
import {convert} from '../quantity/convert.js';
import type {Quantity} from '../quantity/model.js';
import {unit} from '../quantity/units.js';
import {nearest} from '../text/nearest.js';
import {type Fit, fitOfLimits} from './fit.js';
import {INCH_CLASSES, type InchClass} from './inch-fits.js';
import type {Range} from './iso-limits.js';
import {notOf, refused, type Worked} from './worked.js';

/**
 * The fit of a nominal size (a length over 0, to 7.09 in; LT classes to 3.15 in) by a class of ANSI B4.1, hole basis.
 * A size in mm is converted. Source: ANSI B4.1-1967, as in Machinery's Handbook.
 */
export function fitOfInchClass(nominal: Quantity, text: string): Worked<Fit> {
  const refusal = notOf('length', {'the nominal size': nominal});
  if (refusal) return refusal;
  const named = classNamed(text);
  if (named === undefined) return refused(`ANSI B4.1 has no class "${text.trim()}"`, hintFor(text));
  const size = convert(nominal, unit('in')).value;
  const step = named.ends.findIndex((end) => size <= end * (1 + 1e-12));
  const row = named.rows[step];
  if (row === undefined) {
    const says =
      step < 0 ? `${size} in is beyond the table of ${named.name}` : `${named.name} leaves out ${size} in`;
    return refused(says, 'take the limits from the standard, or use ISO 286 letters');
  }
  const [hole, upper, lower] = row;
  const fit = fitOfLimits(limits(size, 0, hole), limits(size, lower, upper));
  if (!fit.ok) return fit;
  const stated = [
    {name: 'nominal size', value: nominal},
    {name: 'class', value: `${named.name}, ${named.says}`},
  ];
  const source = "ANSI B4.1-1967, as in Machinery's Handbook (27th ed., Table 11; 31st ed., Tables 8 to 12)";
  return {...fit, inputs: [...stated, ...fit.inputs], source};
}

/** `RC 4`, `rc4` and `RC4` are one. */
function classNamed(text: string): InchClass | undefined {
  const key = keyOf(text);
  return INCH_CLASSES.find(({name}) => name === key);
}

function hintFor(text: string): string {
  const names = INCH_CLASSES.map(({name}) => name);
  const meant = nearest(keyOf(text), names);
  return meant ? `did you mean ${meant}?` : `the table has ${names.join(', ')}`;
}

function keyOf(text: string): string {
  return text.replace(/\s/g, '').toUpperCase();
}

/** From the nominal size in inches, deviations in thousandths. */
function limits(size: number, low: number, high: number): Range {
  return {form: 'range', low: inches(size + low / 1000), high: inches(size + high / 1000)};
}

function inches(value: number): Quantity {
  const plain = Number(value.toPrecision(12));
  // Half tenths of a thousandth stand in the smallest steps.
  const fine = Number(plain.toFixed(4)) !== plain;
  return {value: plain, unit: unit('in'), step: fine ? 1e-5 : 1e-4};
}
