/**
 * Limits of a size by its ISO 286 letters: `H7`, `g6`, `js9`. The tables are in `iso-grades.ts` and
 * `iso-deviations.ts`.
 */
import {convert, decimalStep} from '../quantity/convert.js';
import type {Amount, Quantity} from '../quantity/model.js';
import {unit} from '../quantity/units.js';
import {nearest} from '../text/nearest.js';
import {ABOVE, BELOW, DEVIATION_STEPS, J_HOLE, J_SHAFT, K_SHAFT} from './iso-deviations.js';
import {GRADES, gradeAt, stepOf} from './iso-grades.js';
import {notOf, type Refused, refused, type Worked} from './worked.js';

export type Range = Extract<Amount, {form: 'range'}>;

/** A tolerance class of ISO 286: capital letters are holes, small ones shafts. */
export interface Zone {
  readonly kind: 'hole' | 'shaft';
  readonly letters: string;
  /** `01`, `0`, `1` … `18`. */
  readonly grade: string;
}

export interface LimitedSize {
  readonly zone: Zone;
  /** In µm from the nominal size. */
  readonly upper: Quantity;
  readonly lower: Quantity;
  /** In mm: ISO 286 is a metric standard. */
  readonly limits: Range;
}

const SOURCE = 'ISO 286-1:2010, Tables 1 to 5';

/**
 * The limits of a nominal size (a length over 0, to 500 mm) by a tolerance class. A size stated in inches is converted
 * and takes the step that it then falls in. Source: ISO 286-1:2010, Tables 1 to 5 and 4.3.2.5 (the special rule for
 * holes K to ZC).
 */
export function limitsOfSize(nominal: Quantity, text: string): Worked<LimitedSize> {
  const zone = readZone(text);
  if ('ok' in zone) return zone;
  const refusal = notOf('length', {'the nominal size': nominal});
  if (refusal) return refusal;
  const size = convert(nominal, unit('mm')).value;
  const found = deviations(zone, size);
  if ('ok' in found) return found;
  return {
    ok: true,
    result: {
      zone,
      upper: micrometres(found.upper),
      lower: micrometres(found.lower),
      limits: {form: 'range', low: inMm(size, found.lower), high: inMm(size, found.upper)},
    },
    formula: zone.kind === 'hole' ? 'low = D + EI, high = D + ES' : 'low = d + ei, high = d + es',
    inputs: [
      {name: 'nominal size', value: nominal},
      {name: 'class', value: shown(zone)},
      {name: `IT${zone.grade}`, value: micrometres(found.upper - found.lower)},
    ],
    source: SOURCE,
    ...(nominal.unit.system === 'inch' ? {advisory: INCHES} : {}),
  };
}

/** Shigley's inch tables, for one, round the same steps to 0.0001 in and put 2 in below the boundary at 50 mm. */
const INCHES =
  'ISO 286 is a metric standard: the size was converted, and its step taken, in mm. Inch tables made from it round otherwise.';

/** Reads `H7`, `g6`, `js9`; whether it is a hole or a shaft is in its capitals. */
export function readZone(text: string): Zone | Refused {
  const trimmed = text.trim();
  const parts = /^([A-Z]{1,2}|[a-z]{1,2})\s?(\d{1,2})$/.exec(trimmed);
  if (parts === null)
    return refused(
      `"${trimmed}" is no tolerance class`,
      'write capitals for a hole, H7, small letters for a shaft, g6',
    );
  const [, letters = '', grade = ''] = parts;
  const kind = letters === letters.toUpperCase() ? 'hole' : 'shaft';
  if (!LETTERS.includes(letters.toLowerCase())) {
    const meant = nearest(letters.toLowerCase(), LETTERS);
    const hint = meant && `did you mean ${kind === 'hole' ? meant.toUpperCase() : meant}${grade}?`;
    return refused(
      `ISO 286 has no letter ${letters}`,
      hint ?? 'its letters are a to zc without i, l, o, q and w',
    );
  }
  if (!GRADES.has(grade)) return refused(`ISO 286 has no grade ${grade}`, 'its grades are 01, 0 and 1 to 18');
  return {kind, letters: letters.toLowerCase(), grade};
}

const LETTERS = [...Object.keys(BELOW), 'js', 'j', 'k', ...Object.keys(ABOVE)];

function shown({kind, letters, grade}: Zone): string {
  return (kind === 'hole' ? letters.toUpperCase() : letters) + grade;
}

interface Deviations {
  readonly lower: number;
  readonly upper: number;
}

/** In µm, for a size in mm. */
function deviations(zone: Zone, size: number): Deviations | Refused {
  const width = gradeAt(zone.grade, size);
  if (width === undefined)
    return refused(
      `${size} mm is over the 500 mm that the tables reach`,
      'take the limits from the standard itself',
    );
  const half = {lower: -width / 2, upper: width / 2};
  if (zone.letters === 'js') return half;
  const found = zone.kind === 'shaft' ? ofShaft(zone, size, width) : ofHole(zone, size, width);
  if (found !== undefined) return found;
  return refused(`ISO 286 has no ${shown(zone)} at ${size} mm`, 'choose a class that it has for this size');
}

function ofShaft({letters, grade}: Zone, size: number, width: number): Deviations | undefined {
  const step = stepOf(size, DEVIATION_STEPS);
  const below = BELOW[letters]?.[step];
  if (below !== undefined)
    return tooSmall(letters, size) ? undefined : {lower: -below - width, upper: -below};
  const lower = letters === 'j' ? minus(J_SHAFT[grade]?.[step]) : above(letters, grade, step);
  return lower === undefined ? undefined : {lower, upper: lower + width};
}

/** Shafts k to zc: the lower deviation. */
function above(letters: string, grade: string, step: number): number | undefined {
  if (letters !== 'k') return ABOVE[letters]?.[step];
  return Number(grade) >= 4 && Number(grade) <= 7 ? K_SHAFT[step] : 0;
}

/** A to H mirror the shaft of their letter; K to ZC do too, shifted by Δ in the finer grades. */
function ofHole(zone: Zone, size: number, width: number): Deviations | undefined {
  const {letters, grade} = zone;
  const step = stepOf(size, DEVIATION_STEPS);
  const below = BELOW[letters]?.[step];
  if (below !== undefined) return tooSmall(letters, size) ? undefined : {lower: below, upper: below + width};
  const upper = letters === 'j' ? J_HOLE[grade]?.[step] : upperOfHole(letters, Number(grade), size, width);
  return upper === undefined ? undefined : {lower: upper - width, upper};
}

/**
 * Holes K to ZC: the upper deviation. K, M and N to IT8 and P to ZC to IT7 are those of the shaft with Δ added, the
 * difference between the grade and the next finer one, over 3 mm.
 */
function upperOfHole(letters: string, grade: number, size: number, width: number): number | undefined {
  const step = stepOf(size, DEVIATION_STEPS);
  const small = size <= 3;
  const fine = grade <= (letters === 'k' || letters === 'm' || letters === 'n' ? 8 : 7);
  if (letters === 'k' && !fine) return small ? 0 : undefined;
  if (letters === 'n' && !fine && !small) return 0;
  if (letters === 'n' && !fine && size <= 1) return undefined;
  if (letters === 'm' && grade === 6 && size > 250 && size <= 315) return -9;
  const mirrored = minus(letters === 'k' ? K_SHAFT[step] : ABOVE[letters]?.[step]);
  if (mirrored === undefined || small || !fine) return mirrored;
  if (grade < 3) return undefined;
  // A size that has a width of this grade has one of the next finer, too.
  return mirrored + width - (gradeAt(String(grade - 1), size) ?? 0);
}

function minus(value: number | undefined): number | undefined {
  return value === undefined ? undefined : 0 - value;
}

/** Neither a and b nor A and B are provided to 1 mm. */
function tooSmall(letters: string, size: number): boolean {
  return size <= 1 && (letters === 'a' || letters === 'b');
}

function micrometres(value: number): Quantity {
  const plain = Number(value.toPrecision(12));
  return {value: plain, unit: unit('µm'), step: decimalStep(plain)};
}

function inMm(size: number, deviation: number): Quantity {
  const value = Number((size + deviation / 1000).toPrecision(12));
  return {value, unit: unit('mm'), step: Math.min(0.001, Math.max(1e-5, decimalStep(value)))};
}
