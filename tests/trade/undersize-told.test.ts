/** Undersizes, washers and wear limits: which of several is taken, what stands in the working, and refusals whole. Invented sizes. */
import {describe, expect, test} from 'vitest';
import {formatQuantity} from '../../src/quantity/format.js';
import type {Quantity} from '../../src/quantity/model.js';
import {endPlay, thrustWasher} from '../../src/trade/end-play.js';
import {chooseUndersize, INCH_GRINDS, matchUndersize} from '../../src/trade/undersize.js';
import {wearLimit} from '../../src/trade/wear-limit.js';
import {amount, q} from '../help/amount.js';
import {answer, askedAlone, inputsOf, refused, type Texts} from './ask.js';
import {out, refusal, result} from './unwrap.js';

const STANDARD = amount('2.4990–2.5000 in');

function list(...texts: readonly string[]): readonly Quantity[] {
  return texts.map(q);
}

describe('the grind of a worn journal', () => {
  test.each([
    // In whichever order the set is written the smallest is taken.
    ['2.4950 in', list('0.030 in', '0.010 in', '0.020 in'), '0.010 in'],
    ['2.4899 in', list('0.030 in', '0.010 in', '0.020 in'), '0.020 in'],
    ['2.4900 in', list('0.010 in'), '0.010 in'],
  ])('%s', (worn, grinds, undersize) => {
    expect(formatQuantity(result(chooseUndersize(q(worn), STANDARD, grinds)).undersize)).toBe(undersize);
  });

  test('a reading that the doubles put a hair below the limit reaches it', () => {
    // A millionth of a millionth is the margin, and its end belongs to it.
    const worn = {...q('2.4900 in'), value: 2.489_999_999_997_509_8};
    expect(formatQuantity(result(chooseUndersize(worn, STANDARD, INCH_GRINDS)).undersize)).toBe('0.010 in');
    const less = {...worn, value: 2.489_999_99};
    expect(formatQuantity(result(chooseUndersize(less, STANDARD, INCH_GRINDS)).undersize)).toBe('0.020 in');
  });

  test('the working', () => {
    const [grinds, worn] = [list('0.010 in', '0.020 in'), q('2.4950 in')];
    expect(inputsOf(chooseUndersize(worn, STANDARD, grinds))).toEqual([
      'worn journal, smallest reading: 2.4950 in',
      'standard journal: 2.4990–2.5000 in',
      'undersizes: 0.010 in, 0.020 in',
    ]);
    expect(inputsOf(chooseUndersize(worn, STANDARD, grinds, q('0.002 in')))).toEqual([
      'worn journal, smallest reading: 2.4950 in',
      'standard journal: 2.4990–2.5000 in',
      'clean-up: 0.002 in',
      'undersizes: 0.010 in, 0.020 in',
    ]);
    expect(inputsOf(matchUndersize(worn, STANDARD, grinds))).toEqual([
      'journal: 2.4950 in',
      'standard journal: 2.4990–2.5000 in',
      'undersizes: 0.010 in, 0.020 in',
    ]);
  });

  test.each([
    [list('0.010 in', '3 in'), 'an undersize of 3 in leaves no journal; check its unit'],
    [list('3 in', '0.010 in'), 'an undersize of 3 in leaves no journal; check its unit'],
    [list('2.4990 in'), 'an undersize of 2.4990 in leaves no journal; check its unit'],
    [list('0.010 in', '3 kg'), 'an undersize is a mass (kg) where a length is due; write it in in or mm'],
    [[], 'the set has no undersize; give one at least, such as 0.010 in'],
  ])('%j is refused', (grinds, due) => {
    for (const work of [chooseUndersize, matchUndersize]) {
      expect(refused(work(q('2.4950 in'), STANDARD, grinds))).toBe(due);
    }
  });
});

test.each([
  // Within the limits of both, or as far from the one as from the other: the smaller.
  ['2.4870 in', '2.490–2.500 in', '0.005 in'],
  ['2.4975 in', '2.500–2.500 in', '0.000 in'],
  ['2.4974 in', '2.500–2.500 in', '0.005 in'],
])('a journal of %s, standard %s, is %s under', (journal, standard, undersize) => {
  const grinds = list('0.010 in', '0.005 in', '0.000 in');
  expect(formatQuantity(result(matchUndersize(q(journal), amount(standard), grinds)).undersize)).toBe(
    undersize,
  );
});

test('the figure takes the undersizes of the unit', () => {
  expect(answer(askedAlone('undersize', {worn: '49.6 mm', standard: '49.98–50.00 mm'}))).toEqual([
    'undersize: 0.50 mm',
    'journal as ground: 49.480–49.500 mm',
  ]);
  expect(answer(askedAlone('undersize', {worn: '1.9980 in', standard: '1.9990–2.0000 in'}))).toEqual([
    'undersize: 0.002 in',
    'journal as ground: 1.9970–1.9980 in',
  ]);
});

describe('end play', () => {
  test.each([
    ['1.6250–1.6270 in', undefined],
    ['1.6249–1.6270 in', 'By these limits some pairs would have no end play at all.'],
  ])('between faces at %s over one of 1.6250 in at most', (between, advisory) => {
    expect(out(endPlay(amount(between), amount('1.6240–1.6250 in'))).advisory).toBe(advisory);
  });

  const LIMITS = amount('0.003–0.009 in');
  const [PLAY, PRESENT] = [q('0.002 in'), q('0.100 in')];

  test('of washers as near to the middle the first is taken', () => {
    // One thickness, written in two ways.
    for (const [first, second] of [
      ['0.097 in', '0.0970 in'],
      ['0.0970 in', '0.097 in'],
    ] as const)
      expect(result(thrustWasher(PLAY, LIMITS, PRESENT, list('0.098 in', first, second))).washer).toEqual(
        q(first),
      );
  });

  test.each([
    ['min 0.003 in', list('0.097 in'), 'the limits have one end only; give both, such as 0.003–0.009 in'],
    ['max 0.009 in', list('0.097 in'), 'the limits have one end only; give both, such as 0.003–0.009 in'],
    ['0.003–0.009 in', [], 'the set has no washer; give the thicknesses that can be had'],
    [
      '0.003–0.009 in',
      list('0.097 in', '3 kg'),
      'a washer of the set is a mass (kg) where a length is due; write it in in or mm',
    ],
    [
      '0.003–0.009 in',
      list('0.102 in', '0.092 in'),
      'no washer of the set brings the end play within 0.003–0.009 in; look for wear of the thrust faces, or get other washers',
    ],
  ])('limits of %s, washers %j', (limits, set, due) => {
    expect(refused(thrustWasher(PLAY, amount(limits), PRESENT, set))).toBe(due);
  });
});

describe('wear limits', () => {
  test.each<readonly [Texts, readonly string[]]>([
    // A total is told in the unit of the limit, and has no use for a size.
    [{rule: 'piston-pin', size: '1 in'}, ['allowance: 0.0010 in']],
    [{rule: 'piston-pin'}, ['allowance: 0.0010 in']],
    [{rule: 'piston-pin', 'new-limit': '25 mm'}, ['allowance: 0.025 mm']],
    [{rule: 'camshaft-end-play', 'new-limit': '0.10 mm'}, ['allowance: 0.254 mm', 'wear limit: 0.354 mm']],
    [
      {rule: 'bearing-clearance', size: '2 in', 'new-limit': '0.08 mm'},
      ['allowance: 0.0010 in', 'wear limit: 0.105 mm'],
    ],
    // What is counted from the nominal makes no limit of a limit.
    [{rule: 'pin-bore', size: '1 in', 'new-limit': '1.001 in'}, ['allowance: 0.0005 in']],
    [
      {rule: 'pin-bore'},
      ['the rule for wear of a pin bore in piston or rod is per inch of diameter', 'give the diameter'],
    ],
    [
      {rule: 'pin-bore', size: '0 in'},
      ['the diameter must be above nought', 'check the reading and its sign'],
    ],
    [
      {rule: 'sleeve-taper', size: '0 in'},
      ['the piston travel must be above nought', 'check the reading and its sign'],
    ],
  ])('%j', (texts, told) => expect(answer(askedAlone('wear-limit', texts))).toEqual(told));

  test('the working of a total does not name a size', () => {
    expect(inputsOf(wearLimit('camshaft-end-play', q('2 in'), q('0.006 in')))).toEqual([
      'rule: end play of the camshaft',
      'high limit when new: 0.006 in',
    ]);
    expect(inputsOf(wearLimit('pin-bore', q('2 in')))).toEqual([
      'rule: wear of a pin bore in piston or rod',
      'diameter: 2 in',
    ]);
  });

  test.each([
    [
      'xyzzyplugh',
      'there are sleeve-bore, sleeve-taper, piston, piston-pin, pin-bore, bearing-clearance, journal-out-of-round, crankshaft-end-play, camshaft-journal, camshaft-end-play, valve-stem, valve-guide',
    ],
    ['valve-stam', 'did you mean valve-stem?'],
  ])('there is no rule %s', (name, hint) => {
    expect(refusal(wearLimit(name))).toMatchObject({says: `there is no wear rule "${name}"`, hint});
  });
});
