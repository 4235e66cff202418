/** The strength of a bolt from its grade as shops write it, or from given strengths where it has none (brass, studs). */
import {convert, quantity} from '../quantity/convert.js';
import {formatQuantity} from '../quantity/format.js';
import type {Quantity} from '../quantity/model.js';
import {readAmount} from '../quantity/parse.js';
import {unit} from '../quantity/units.js';
import {clipped} from '../text/clipped.js';
import {GRADE_2_LENGTH, type GradeRow, ISO_898_1, SAE_J429} from './bolt-grades.js';
import type {Thread} from './thread.js';
import {notOf, type Refused, refused} from './worked.js';

export interface Grade {
  /** `SAE J429 grade 5`, `ISO 898-1 class 8.8`, `yield 36 ksi given`. */
  readonly name: string;
  /** What the bolt bears without taking a set. */
  readonly proof: Quantity;
  readonly yield: Quantity;
  readonly tensile?: Quantity;
  readonly source: string;
}

/** What may stand before the number of a grade. */
const GRADE_WORDS = /SAE|J\s?429|ISO|898-1|property|class|grade|gr\b/gi;

/** A refusal of a grade of another family, which may well be right and is not in the tables, says so. */
export type GradeReading =
  | {readonly ok: true; readonly grade: Grade}
  | (Refused & {readonly foreign?: boolean});

/**
 * The grade of a bolt of this thread: `SAE 5`, `grade 8`, `J429 5`, `8.8`, `class 10.9`, or given strengths: `yield 36 ksi`, `proof 55 ksi`.
 * Strength falls with size in grades 2, 5 and 8.8; a grade 2 bolt longer than 6 in is a grade 1. Source: SAE J429, ISO 898-1:2013.
 */
export function gradeOf(text: string, thread: Thread, length?: Quantity): GradeReading {
  const trimmed = text.trim();
  const strength = trimmed.replace(/^(?:proof|yield)\s+/i, '');
  if (strength !== trimmed) return givenText(trimmed, strength);
  const refusal = notOf('length', {"the bolt's length": length});
  if (refusal) return refusal;
  const at = trimmed.search(/\d{1,2}(?:\.\d)?$/);
  const name = trimmed.slice(at);
  // Of "brass 8" the number is none of a grade.
  if (/[\p{L}\d]/u.test(trimmed.slice(0, at).replace(GRADE_WORDS, ''))) return unknownGrade(text);
  const sae = saeRows(name);
  if (sae.length > 0) return inchGrade(name, sae, thread, length);
  const iso = ISO_898_1.filter(({grade}) => grade === name);
  if (iso.length === 0) return unknownGrade(text);
  if (/SAE|J\s?429/i.test(text))
    return refused(`${name} is not a grade of SAE J429`, 'it is a class of ISO 898-1; write 8.8 alone');
  return metricGrade(name, iso, thread);
}

function saeRows(name: string): GradeRow[] {
  return SAE_J429.filter(({grade}) => grade === name);
}

/** A bolt whose strength is known without a grade. Where no proof strength is known 0.85 of yield stands for it (Shigley, 9th ed., 8-9). */
export function gradeGiven(given: {
  readonly proof?: Quantity;
  readonly yield?: Quantity;
  readonly tensile?: Quantity;
}): GradeReading {
  const refusal = notOf('pressure', {
    'the proof strength': given.proof,
    'the yield strength': given.yield,
    'the tensile strength': given.tensile,
  });
  if (refusal) return refusal;
  const {proof, yield: yielding, tensile} = given;
  const yields = yielding ?? proof;
  if (yields === undefined)
    return refused(
      'neither proof nor yield strength is given',
      'a tensile strength alone does not say when the bolt takes a set',
    );
  const taken = proof ?? scaled(yields, 0.85);
  const stated = proof ? `proof ${formatQuantity(proof)}` : `yield ${formatQuantity(yields)}`;
  const source = proof
    ? 'strength as given'
    : 'yield as given; proof taken as 0.85 of it (Shigley 9th ed., section 8-9)';
  return {
    ok: true,
    grade: {name: `${stated} given`, proof: taken, yield: yields, ...(tensile ? {tensile} : {}), source},
  };
}

function scaled(q: Quantity, by: number): Quantity {
  return {...q, value: Number((q.value * by).toPrecision(12))};
}

/** `yield 36 ksi`, and the strength alone. */
function givenText(text: string, strength: string): GradeReading {
  const reading = readAmount(strength, 'pressure');
  if (!reading.ok) return refused(reading.fault.says, reading.fault.hint);
  if (reading.amount.form !== 'single')
    return refused(`${strength} is not one strength`, 'give the least value');
  const {value} = reading.amount;
  return gradeGiven(/proof/i.test(text) ? {proof: value} : {yield: value});
}

function inchGrade(
  name: string,
  rows: readonly GradeRow[],
  thread: Thread,
  length: Quantity | undefined,
): GradeReading {
  const size = convert(thread.diameter, unit('in')).value;
  const long = length !== undefined && convert(length, unit('in')).value > GRADE_2_LENGTH;
  const fallen = name === '2' && long ? saeRows('1') : rows;
  const row = rowOf(fallen, size);
  if (row === undefined)
    return refused(`SAE J429 grade ${name} does not go to ${thread.name}`, rangeOf(rows, 'in'));
  const note = fallen === rows ? '' : ', as grade 1 for its length';
  return {ok: true, grade: tabled(row, `SAE J429 grade ${name}${note}`, 'ksi', 'SAE J429')};
}

function metricGrade(name: string, rows: readonly GradeRow[], thread: Thread): GradeReading {
  const size = convert(thread.diameter, unit('mm')).value;
  const row = rowOf(rows, size);
  if (row === undefined)
    return refused(`ISO 898-1 class ${name} does not go to ${thread.name}`, rangeOf(rows, 'mm'));
  return {ok: true, grade: tabled(row, `ISO 898-1 class ${name}`, 'MPa', 'ISO 898-1:2013, Table 3')};
}

function rowOf(rows: readonly GradeRow[], size: number): GradeRow | undefined {
  return rows.find(({over, upTo}) => size > over && size <= upTo);
}

function tabled(row: GradeRow, name: string, symbol: 'ksi' | 'MPa', source: string): Grade {
  return {
    name,
    proof: quantity(row.proof, symbol),
    yield: quantity(row.yield, symbol),
    tensile: quantity(row.tensile, symbol),
    source,
  };
}

function rangeOf(rows: readonly GradeRow[], symbol: string): string {
  const low = Math.min(...rows.map(({over}) => over));
  const high = Math.max(...rows.map(({upTo}) => upTo));
  return `its sizes are ${low === 0 ? 'up to' : `${Number(low.toFixed(2))} to`} ${high} ${symbol}`;
}

function unknownGrade(text: string): Refused & {readonly foreign: boolean} {
  const shown = clipped(text, 30);
  const names = [...new Set([...SAE_J429, ...ISO_898_1].map(({grade}) => grade))];
  return {
    ...refused(
      `"${shown}" is not a grade in the tables`,
      `they have ${names.join(', ')}; or write yield 36 ksi`,
    ),
    foreign: !/^\d/.test(text.trim()) && text.search(GRADE_WORDS) < 0,
  };
}
