/** How strong the metal is that a thread is tapped in, by the word that a shop has for it or by a given strength. */
import {quantity} from '../quantity/convert.js';
import type {Quantity} from '../quantity/model.js';
import {readAmount} from '../quantity/parse.js';
import {clipped} from '../text/clipped.js';
import {nearest} from '../text/nearest.js';
import {notOf, type Refused, refused} from './worked.js';

export interface TappedMetal {
  /** `cast iron`, `cast iron class 30`, `tensile 30 ksi given`. */
  readonly name: string;
  /** What counts as its tensile strength where it is compared with a steel bolt: see `TAPPED_METALS`. */
  readonly strength: Quantity;
  readonly source: string;
}

export type MetalReading = {readonly ok: true; readonly metal: TappedMetal} | Refused;

/** Steel shears at 0.75 of its tensile strength (Machinery's Handbook, strength data for iron and steel). */
export const STEEL_SHEAR = 0.75;

interface Row {
  readonly name: string;
  /** Other ways to say it. */
  readonly also: readonly string[];
  /** Shear strength, ksi. */
  readonly shear: number;
  readonly source: string;
}

const HANDBOOK =
  "Machinery's Handbook, strength data for iron and steel (tubingchina.com/Iron-Steel-Modulus-of-Elasticity.htm)";
const FOUNDRY = 'typical values of sand castings, 356-T6 (barrcasting.com/typical.html)';

/**
 * Threads strip by shear, and the formula of engagement takes tensile strengths as measures of it. Grey iron shears at
 * 1.3 to 1.6 times its tensile strength, steel at 0.75: a metal counts with its shear strength over 0.75. The weakest
 * common kind stands for a word that does not say which.
 */
export const TAPPED_METALS: readonly Row[] = [
  {name: 'steel', also: [], shear: 45, source: `${HANDBOOK}: SAE 1025, 60 ksi`},
  {name: 'cast iron class 20', also: [], shear: 26, source: 'makeitfrom.com, ASTM grade 20: 179 MPa'},
  {
    name: 'cast iron',
    also: ['iron', 'cast iron class 25'],
    shear: 35,
    source: `${HANDBOOK}: class 25, 1.4 T`,
  },
  {name: 'cast iron class 30', also: [], shear: 42, source: `${HANDBOOK}: class 30, 1.4 T`},
  {name: 'cast iron class 35', also: [], shear: 49, source: `${HANDBOOK}: class 35, 1.4 T`},
  {name: 'cast iron class 40', also: [], shear: 52, source: `${HANDBOOK}: class 40, 1.3 T`},
  {name: 'aluminium', also: ['aluminum'], shear: 26, source: FOUNDRY},
  {name: 'brass', also: [], shear: 30, source: 'C36000, annealed, from memory'},
  {
    name: 'bronze',
    also: [],
    shear: 26,
    source: 'C93200 as cast, 35 ksi by ASTM B505; shear taken as of steel',
  },
];

/**
 * Reads what a thread is tapped in: `cast iron` (taken as ASTM A48 class 25), `cast iron class 30`, `aluminium` (356-T6), `steel` (SAE
 * 1025), `brass`, `bronze`, or a given strength: `tensile 30 ksi`. Any other word is refused.
 */
export function readTappedMetal(text: string): MetalReading {
  const given = /^tensile\s+(\S.*)$/i.exec(text.trim());
  if (given !== null) return givenStrength(given[1] ?? '');
  const said = plain(text);
  const row = TAPPED_METALS.find(({name, also}) => [name, ...also].includes(said));
  if (row === undefined) return unknown(text, said);
  const strength = quantity(Number((row.shear / STEEL_SHEAR).toPrecision(3)), 'ksi');
  return {ok: true, metal: {name: row.name, strength, source: row.source}};
}

/** `Grey-iron, class 30` is `cast iron class 30`. */
function plain(text: string): string {
  const words = text
    .trim()
    .toLowerCase()
    .replace(/[\s,_-]+/g, ' ');
  return words.replace(/^gr[ae]y (?:cast )?iron/, 'cast iron');
}

function givenStrength(text: string): MetalReading {
  const reading = readAmount(text, 'pressure');
  if (!reading.ok) return refused(reading.fault.says, reading.fault.hint ?? 'write tensile 30 ksi');
  if (reading.amount.form !== 'single') return refused(`${text} is not one strength`, 'give the least value');
  const strength = reading.amount.value;
  const refusal = notOf('pressure', {'the tensile strength': strength});
  if (refusal) return refusal;
  return {ok: true, metal: {name: `metal of ${text.trim()}`, strength, source: 'strength as given'}};
}

function unknown(text: string, said: string): Refused {
  const names = TAPPED_METALS.map(({name}) => name);
  const shown = clipped(text, 30);
  const meant = nearest(said, names);
  const hint = meant
    ? `did you mean ${meant}?`
    : `the table has ${names.join(', ')}; or write tensile 30 ksi`;
  return refused(`"${shown}" is not a metal in the table`, hint);
}
