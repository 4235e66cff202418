/** Grades at the edge of a table, and the refusals of those that it does not have, whole. */
import {describe, expect, test} from 'vitest';
import {formatQuantity} from '../../src/quantity/format.js';
import {type GradeReading, gradeGiven, gradeOf} from '../../src/trade/grade.js';
import {q} from '../help/amount.js';
import {thread} from './fasteners.js';

const NO_GRADE =
  'is not a grade in the tables; they have 1, 2, 4, 5, 5.2, 7, 8, 8.2, 4.6, 4.8, 5.6, 5.8, 6.8, 8.8, 9.8, 10.9, 12.9; or write yield 36 ksi';

function told(read: GradeReading): string {
  if (!read.ok) return `${read.says}; ${read.hint}`;
  const {name, proof} = read.grade;
  return `${name}: ${formatQuantity(proof)}`;
}

describe('a grade of a bolt', () => {
  test.each([
    ['1/2-13 UNC', '2', '7 in', 'SAE J429 grade 2, as grade 1 for its length: 33 ksi'],
    // Grade 2 alone falls with length.
    ['1/2-13 UNC', '5', '7 in', 'SAE J429 grade 5: 85 ksi'],
    ['3/4-10 UNC', '2', undefined, 'SAE J429 grade 2: 55 ksi'],
    ['7/8-9 UNC', '2', undefined, 'SAE J429 grade 2: 33 ksi'],
    ['#10-32', '5', undefined, 'SAE J429 grade 5 does not go to 10-32 UNF; its sizes are 0.25 to 1.5 in'],
    ['M16', '8.8', undefined, 'ISO 898-1 class 8.8: 580 MPa'],
    ['M18', '8.8', undefined, 'ISO 898-1 class 8.8: 600 MPa'],
    ['M18', '9.8', undefined, 'ISO 898-1 class 9.8 does not go to M18×2.5; its sizes are up to 16 mm'],
    [
      'M10',
      'SAE 8.8',
      undefined,
      '8.8 is not a grade of SAE J429; it is a class of ISO 898-1; write 8.8 alone',
    ],
    [
      'M10',
      'J429 8.8',
      undefined,
      '8.8 is not a grade of SAE J429; it is a class of ISO 898-1; write 8.8 alone',
    ],
    [
      'M10',
      'J 429 8.8',
      undefined,
      '8.8 is not a grade of SAE J429; it is a class of ISO 898-1; write 8.8 alone',
    ],
    ['M10', 'ISO 8.8', undefined, 'ISO 898-1 class 8.8: 580 MPa'],
    ['M10', 'brass', undefined, `"brass" ${NO_GRADE}`],
    ['M10', 'brass 8', undefined, `"brass 8" ${NO_GRADE}`],
    ['M10', '18.8', undefined, `"18.8" ${NO_GRADE}`],
    ['M10', '110.9', undefined, `"110.9" ${NO_GRADE}`],
    ['M10', 'SAE', undefined, `"SAE" ${NO_GRADE}`],
    ['M10', '', undefined, `"" ${NO_GRADE}`],
    ['M10', 'some yield 36 ksi', undefined, `"some yield 36 ksi" ${NO_GRADE}`],
    ['M10', '8', '3 kg', "the bolt's length is a mass (kg) where a length is due; write it in in or mm"],
    ['M10', '8', '0 in', "the bolt's length must be above nought; check the reading and its sign"],
  ])('%s, "%s", %s', (of, text, length, says) => {
    expect(told(gradeOf(text, thread(of), length === undefined ? undefined : q(length)))).toBe(says);
  });
});

describe('a strength in place of a grade', () => {
  test.each([
    ['proof 55 ksi', 'proof 55 ksi given: 55 ksi'],
    ['PROOF 380 MPa', 'proof 380 MPa given: 380 MPa'],
    ['Yield   40 ksi', 'yield 40 ksi given: 34 ksi'],
    ['yield  36–40 ksi', '36–40 ksi is not one strength; give the least value'],
    ['yield 36', '36 has no unit where a pressure is due; write it in psi, kPa or bar'],
    ['yield 1/0 ksi', '1/0 divides by nought; write a fraction as 1/2, or 1-1/2'],
  ])('"%s"', (text, says) => expect(told(gradeOf(text, thread('M10')))).toBe(says));

  test.each([
    [
      {proof: q('3 in')},
      'the proof strength is a length (in) where a pressure is due; write it in psi, kPa or bar',
    ],
    [{yield: q('0 ksi')}, 'the yield strength must be above nought; check the reading and its sign'],
    [
      {proof: q('3 ksi'), tensile: q('-3 ksi')},
      'the tensile strength must be above nought; check the reading and its sign',
    ],
    [
      {tensile: q('60 ksi')},
      'neither proof nor yield strength is given; a tensile strength alone does not say when the bolt takes a set',
    ],
  ])('%j', (given, says) => expect(told(gradeGiven(given))).toBe(says));
});

test.each([
  // A number that the tables lack is a slip, with a blank before it too.
  [' 3', false],
  ['3', false],
  ['brass 3', true],
])('"%s" is of another family: %s', (text, foreign) => {
  expect(gradeOf(text, thread('M10'))).toMatchObject({ok: false, foreign});
});
