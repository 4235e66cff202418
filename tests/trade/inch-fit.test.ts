/** ANSI B4.1 fits: every row of the table against the clearances and interferences printed beside it. */
import fc from 'fast-check';
import {describe, expect, test} from 'vitest';
import {quantity} from '../../src/quantity/convert.js';
import {fitOfInchClass} from '../../src/trade/inch-fit.js';
import {INCH_CLASSES} from '../../src/trade/inch-fits.js';
import {q} from '../help/amount.js';
import {refusal, result, valueIn} from './unwrap.js';

/**
 * Fits printed in Machinery's Handbook in thousandths of an inch, first least and then most clearance (of RC), or most
 * interference and clearance (of LT), or least and most interference (of LN and FN); read. RC1 to RC4, 31st ed., Table
 * 8a; RC5 to RC7, Table 8b; LT, Table 10; LN, Table 12; FN, 27th ed., Table 11, over 3.94 in 31st ed., Table 11. In
 * brackets: from memory, the page that was read breaks off.
 */
const PRINTED: Readonly<Record<string, string>> = {
  RC1: '.1 .45|.15 .5|.2 .6|.25 .75|.3 .95|.4 1.1|.4 1.2|.5 1.5|.6 1.8',
  RC2: '.1 .55|.15 .65|.2 .85|.25 .95|.3 1.2|.4 1.4|.4 1.6|.5 2|.6 2.3',
  RC3: '.3 .95|.4 1.2|.5 1.5|.6 1.7|.8 2.1|1 2.6|1.2 3.1|1.4 3.7|1.6 4.2',
  RC4: '.3 1.3|.4 1.6|.5 2|.6 2.3|.8 2.8|1 3.6|1.2 4.2|1.4 5|1.6 5.7',
  RC5: '.6 1.6|.8 2|1 2.5|1.2 2.9|1.6 3.6|2 4.6|2.5 5.5|3 6.6|3.5 7.6',
  RC6: '.6 2.2|.8 2.7|1 3.3|1.2 3.8|1.6 4.8|2 6.1|2.5 7.3|3 8.7|3.5 (10)',
  RC7: '1 2.6|1.2 3.1|1.6 3.9|2 4.6|2.5 5.7|3 7.1|4 8.8|5 10.7|6 (12.5)',
  LT1: '.12 .52|.15 .65|.2 .8|.2 .9|.25 1.05|.3 1.3|.3 1.5',
  LT2: '.2 .8|.25 .95|.3 1.2|.35 1.35|.4 1.6|.5 2.1|.6 2.4',
  LT3: '-|-|.5 .5|.5 .6|.6 .7|.7 .9|.8 1.1',
  LT4: '-|-|.7 .8|.8 .9|.9 1.1|1.1 1.5|1.3 1.7',
  LT5: '.5 .15|.6 .2|.8 .2|.9 .2|1.1 .2|1.3 .3|1.5 .4',
  LT6: '.65 .15|.8 .2|1 .2|1.2 .2|1.4 .2|1.7 .3|2 .4',
  LN1: '0 .45|0 .5|0 .65|0 .8|0 1|0 1.1|.1 1.3|.1 1.6|.2 1.9',
  LN2: '0 .65|0 .8|0 1|0 1.1|0 1.3|0 1.6|.2 2.1|.2 2.5|.2 2.8',
  LN3: '.1 .75|.1 .9|.2 1.2|.3 1.4|.4 1.7|.4 2|.4 2.3|.6 2.9|.9 3.5',
  FN1: '.05 .5|.1 .6|.1 .75|.1 .8|.2 .9|.2 1.1|.3 1.2|.3 1.3|.4 1.4|.6 1.8|.7 1.9|.9 2.4|(1.1 2.6)|1.2 2.9|1.5 3.2|1.8 3.5',
  FN2: '.2 .85|.2 1|.4 1.4|.5 1.6|.5 1.6|.6 1.9|.6 1.9|.8 2.4|.8 2.4|.8 2.7|1 2.9|1.4 3.7|(1.6 3.9)|1.9 4.5|2.4 5|2.9 5.5',
  FN3: '-|-|-|-|-|-|.8 2.1|1 2.6|1.2 2.8|1.3 3.2|1.8 3.7|2.1 4.4|(2.6 4.9)|3.4 6|3.4 6|4.4 7',
  FN4: '.3 .95|.4 1.2|.6 1.6|.7 1.8|.7 1.8|.8 2.1|1 2.3|1.5 3.1|1.8 3.4|2.3 4.2|2.8 4.7|3.6 5.9|(4.6 6.9)|5.4 8|5.4 8|6.4 9',
  FN5: '.3 1.3|.5 1.7|.5 2|.6 2.3|.8 2.5|1 3|1.3 3.3|1.4 4|2.4 5|3.2 6.2|4.2 7.2|4.8 8.4|(5.8 9.4)|7.5 11.6|9.5 13.6|9.5 13.6',
};

describe('the table', () => {
  test('every class is checked', () => {
    expect(INCH_CLASSES.map(({name}) => name)).toEqual(Object.keys(PRINTED));
  });

  test.each(INCH_CLASSES)('$name', ({name, ends}) => {
    const rows = (PRINTED[name] ?? '').replace(/[()]/g, '').split('|');
    expect(rows).toHaveLength(ends.length);
    for (const [step, row] of rows.entries()) {
      const worked = fitOfInchClass(quantity(ends[step] ?? Number.NaN, 'in'), name);
      if (row === '-') {
        expect(refusal(worked).says).toContain('leaves out');
        continue;
      }
      const [first = Number.NaN, second = Number.NaN] = row.split(' ').map(Number);
      const fit = result(worked);
      const got = [valueIn(fit.least, 'thou'), valueIn(fit.most, 'thou')];
      const due = {
        RC: [first, second],
        LT: [0 - first, second],
        LN: [0 - second, 0 - first],
        FN: [0 - second, 0 - first],
      };
      const [least, most] = Object.entries(due).find(([letters]) => name.startsWith(letters))?.[1] ?? [];
      expect(got[0]).toBeCloseTo(least ?? Number.NaN, 6);
      expect(got[1]).toBeCloseTo(most ?? Number.NaN, 6);
    }
  });
});

// References, 6.4, read there in Machinery's Handbook, 31st ed., p. 718, and 27th ed., p. 663: limits of single rows.
test.each([
  [1, 'RC3', 1.0008, 0.9992, 0.9987],
  [2.5, 'RC4', 2.5018, 2.4988, 2.4976],
  [4, 'RC4', 4.0022, 3.9986, 3.9972],
  [2.5, 'RC3', 2.5012, 2.4988, 2.4981],
  [0.5, 'FN2', 0.5007, 0.5016, 0.5012],
  [1, 'FN3', 1.0008, 1.0021, 1.0016],
  [1.25, 'FN4', 1.251, 1.2531, 1.2525],
  [1.75, 'FN1', 1.7506, 1.7514, 1.751],
  [2, 'FN2', 2.0012, 2.0027, 2.002],
  [1, 'LN2', 1.0008, 1.0013, 1.0008],
  [1.5, 'LN2', 1.501, 1.5016, 1.501],
  [2.5, 'LN2', 2.5012, 2.5021, 2.5014],
])('%d in %s: hole to %d, shaft %d/%d', (size, name, hole, high, low) => {
  const fit = result(fitOfInchClass(quantity(size, 'in'), name));
  expect(valueIn(fit.hole.low, 'in')).toBe(size);
  expect([fit.hole.high, fit.shaft.high, fit.shaft.low].map((end) => valueIn(end, 'in'))).toEqual([
    hole,
    high,
    low,
  ]);
});

test('a boundary belongs to the smaller step, also when it is stated in mm', () => {
  const inches = result(fitOfInchClass(q('1.19 in'), 'RC4'));
  expect(valueIn(inches.most, 'thou')).toBe(2.8);
  expect(valueIn(result(fitOfInchClass(q('30.226 mm'), 'rc 4')).most, 'thou')).toBe(2.8);
  expect(valueIn(result(fitOfInchClass(q('1.191 in'), 'RC4')).most, 'thou')).toBe(3.6);
});

test('within a class a larger size never has less clearance', () => {
  const running = INCH_CLASSES.filter(({name}) => name.startsWith('RC'));
  const size = fc.integer({min: 10, max: 7090});
  fc.assert(
    fc.property(fc.constantFrom(...running), size, size, ({name}, a, b) => {
      const [small, large] = [Math.min(a, b), Math.max(a, b)].map((thou) =>
        result(fitOfInchClass(quantity(thou / 1000, 'in'), name)),
      );
      expect(valueIn(small?.least, 'thou')).toBeLessThanOrEqual(valueIn(large?.least, 'thou'));
    }),
  );
});

test.each([
  ['8 in', 'RC4', 'beyond the table'],
  ['4 in', 'LT1', 'beyond the table'],
  ['1 in', 'RC44', 'no class'],
  ['1 in', 'H7/g6', 'no class'],
  ['1 lb', 'RC4', 'a mass'],
])('%s %s is refused', (size, name, says) => {
  const refused = refusal(fitOfInchClass(q(size), name));
  expect(refused.says).toContain(says);
  expect(refused.hint).not.toBe('');
});
