/** Limits by ISO 286 letters against published tables and worked examples, and against the standard's own rules. */
import fc from 'fast-check';
import {describe, expect, test} from 'vitest';
import {quantity} from '../../src/quantity/convert.js';
import {DEVIATION_STEPS} from '../../src/trade/iso-deviations.js';
import {GRADES, gradeAt} from '../../src/trade/iso-grades.js';
import {limitsOfSize, readZone} from '../../src/trade/iso-limits.js';
import {q} from '../help/amount.js';
import {refusal, result, valueIn} from './unwrap.js';

/** Upper and lower deviation in µm. */
function deviations(size: number, zone: string): readonly [upper: number, lower: number] {
  const {upper, lower} = result(limitsOfSize(quantity(size, 'mm'), zone));
  return [valueIn(upper, 'µm'), valueIn(lower, 'µm')];
}

/** The deviation nearer to the nominal, with its sign, as the tables print it. */
function fundamental(size: number, zone: string): number {
  const [upper, lower] = deviations(size, zone);
  return Math.abs(upper) < Math.abs(lower) ? upper : lower;
}

interface Printed {
  readonly size: number;
  readonly zone: string;
  readonly value: number;
}

/** A table of lines `over–to: values`; a dash is a blank of the table. */
function printed(letters: string, grade: (letter: string) => string, lines: string): Printed[] {
  return lines
    .trim()
    .split('\n')
    .flatMap((line) => {
      const [to = '', values = ''] = line.split(':');
      return letters.split(' ').flatMap((letter, index) => {
        const value = values.trim().split(/\s+/)[index];
        return value === undefined || value === '-'
          ? []
          : [{size: Number(to), zone: letter + grade(letter), value: Number(value)}];
      });
    });
}

/**
 * Narayana et al., Machine Drawing, Table 15.2, p. 216 (m to zc, to 180 mm):
 * issuhub.com/view/index/5590?pageIndex=239, read. Lower deviations of all grades; a line holds for sizes to its
 * number.
 */
const NARAYANA_M_TO_ZC = printed(
  'm n p r s t u v x y z za zb zc',
  () => '6',
  `
3: 2 4 6 10 14 - 18 - 20 - 26 32 40 60
6: 4 8 12 15 19 - 23 - 28 - 35 42 50 80
10: 6 10 15 19 23 - 28 - 34 - 42 52 67 97
14: 7 12 18 23 28 - 33 - 40 - 50 64 90 130
18: 7 12 18 23 28 - 33 39 45 - 60 77 108 150
24: 8 15 22 28 35 - 41 47 54 63 73 98 136 188
30: 8 15 22 28 35 41 48 55 64 75 88 118 160 218
40: 9 17 26 34 43 48 60 68 80 94 112 148 200 274
50: 9 17 26 34 43 54 70 81 97 114 136 180 242 325
65: 11 20 32 41 53 66 87 102 122 144 172 226 300 405
80: 11 20 32 43 59 75 102 120 146 174 210 274 360 480
100: 13 23 37 51 71 91 124 146 178 214 258 335 445 585
120: 13 23 37 54 79 104 144 172 210 254 310 400 525 690
140: 15 27 43 63 92 122 170 202 248 300 365 470 620 800
160: 15 27 43 65 100 134 190 228 280 340 415 535 700 900
180: 15 27 43 68 108 146 210 252 310 380 465 600 780 1000`,
);

/** The same, p. 215 (a to h, over 180 mm): pageIndex=238, read. Upper deviations of all grades. */
const NARAYANA_A_TO_H = printed(
  'a b c d e f g h',
  () => '9',
  `
200: -660 -340 -240 -170 -100 -50 -15 0
225: -740 -380 -260 -170 -100 -50 -15 0
250: -820 -420 -280 -170 -100 -50 -15 0
280: -920 -480 -300 -190 -110 -56 -17 0
315: -1050 -540 -330 -190 -110 -56 -17 0
355: -1200 -600 -360 -210 -125 -62 -18 0
400: -1350 -680 -400 -210 -125 -62 -18 0
450: -1500 -760 -440 -230 -135 -68 -20 0
500: -1650 -840 -480 -230 -135 -68 -20 0`,
);

/**
 * The same, Table 15.3, p. 219 (A to J, over 120 mm): pageIndex=242, read; lower deviations, of J the upper ones of
 * grades 6, 7 and 8.
 */
const NARAYANA_HOLES = printed(
  'A B C D E F G H',
  () => '9',
  `
140: 460 260 200 145 85 43 14 0
160: 520 280 210 145 85 43 14 0
180: 580 310 230 145 85 43 14 0
200: 660 340 240 170 100 50 15 0
225: 740 380 260 170 100 50 15 0
250: 820 420 280 170 100 50 15 0
280: 920 480 300 190 110 56 17 0
315: 1050 540 330 190 110 56 17 0
355: 1200 600 360 210 125 62 18 0
400: 1350 680 400 210 125 62 18 0
450: 1500 760 440 230 135 68 20 0
500: 1650 840 480 230 135 68 20 0`,
);

/**
 * The same, p. 221 (P to ZC above grade 7, over 180 mm): pageIndex=244, read. Upper deviations. The book prints 256
 * for U over 200 mm and 650 for X over 355 mm; the rules IT7 + D and IT7 + 1.6 D ask for 258 (so read in
 * usefastener.com's table of EN ISO 286-1) and 660 (from memory).
 */
const NARAYANA_P_TO_ZC = printed(
  'P R S T U V X Y Z ZA ZB ZC',
  () => '8',
  `
200: -50 -77 -122 -166 -236 -284 -350 -425 -520 -670 -880 -1150
225: -50 -80 -130 -180 -258 -310 -385 -470 -575 -740 -960 -1250
250: -50 -84 -140 -196 -284 -340 -425 -520 -640 -820 -1050 -1350
280: -56 -94 -158 -218 -315 -385 -475 -580 -710 -920 -1200 -1550
315: -56 -98 -170 -240 -350 -425 -525 -650 -790 -1000 -1300 -1700
355: -62 -108 -190 -268 -390 -475 -590 -730 -900 -1150 -1500 -1900
400: -62 -114 -208 -294 -435 -530 -660 -820 -1000 -1300 -1650 -2100
450: -68 -126 -232 -330 -490 -595 -740 -920 -1100 -1450 -1850 -2400
500: -68 -132 -252 -360 -540 -660 -820 -1000 -1250 -1600 -2100 -2600`,
);

/**
 * Machinery's Handbook, 31st ed., Table 6a (BS 4500:1969), holes A to H to 225 mm:
 * online.flippingbook.com/view/954192180/768, read. Its lines at 10–14 and 14–18 mm, and the like, are one.
 */
const HANDBOOK_HOLES = printed(
  'A B C CD D E EF F FG G H',
  () => '8',
  `
3: 270 140 60 34 20 14 10 6 4 2 0
6: 270 140 70 46 30 20 14 10 6 4 0
10: 280 150 80 56 40 25 18 13 8 5 0
14: 290 150 95 - 50 32 - 16 - 6 0
18: 290 150 95 - 50 32 - 16 - 6 0
24: 300 160 110 - 65 40 - 20 - 7 0
30: 300 160 110 - 65 40 - 20 - 7 0
40: 310 170 120 - 80 50 - 25 - 9 0
50: 320 180 130 - 80 50 - 25 - 9 0
65: 340 190 140 - 100 60 - 30 - 10 0
80: 360 200 150 - 100 60 - 30 - 10 0
100: 380 220 170 - 120 72 - 36 - 12 0
120: 410 240 180 - 120 72 - 36 - 12 0
140: 460 260 200 - 145 85 - 43 - 14 0
160: 520 280 210 - 145 85 - 43 - 14 0
180: 580 310 230 - 145 85 - 43 - 14 0
200: 660 340 240 - 170 100 - 50 - 15 0
225: 740 380 260 - 170 100 - 50 - 15 0`,
);

/** References, 6.2: e, f, g and k to 180 mm, from memory there. */
const E_F_G = printed(
  'e f g',
  () => '7',
  `
3: -14 -6 -2
6: -20 -10 -4
10: -25 -13 -5
18: -32 -16 -6
24: -40 -20 -7
30: -40 -20 -7
40: -50 -25 -9
50: -50 -25 -9
65: -60 -30 -10
80: -60 -30 -10
100: -72 -36 -12
120: -72 -36 -12
140: -85 -43 -14
160: -85 -43 -14
180: -85 -43 -14`,
);

/**
 * mechguru.com, DIN ISO 286 fundamental deviations of shafts, to 250 mm (read; its g for 6–10 mm, −8, is a misprint of
 * −5, and its j5 and j6 for 50–65 mm, −5, of −7). Upper deviations of d, lower ones of j6, j7 and k.
 */
const MECHGURU: readonly (readonly [size: number, d: number, j6: number, j7: number, k: number])[] = [
  [3, -20, -2, -4, 0],
  [6, -30, -2, -4, 1],
  [10, -40, -2, -5, 1],
  [14, -50, -3, -6, 1],
  [18, -50, -3, -6, 1],
  [24, -65, -4, -8, 2],
  [30, -65, -4, -8, 2],
  [40, -80, -5, -10, 2],
  [50, -80, -5, -10, 2],
  [80, -100, -7, -12, 2],
  [100, -120, -9, -15, 3],
  [120, -120, -9, -15, 3],
  [140, -145, -11, -18, 3],
  [160, -145, -11, -18, 3],
  [180, -145, -11, -18, 3],
  [200, -170, -13, -21, 4],
  [250, -170, -13, -21, 4],
];

describe('published fundamental deviations', () => {
  test.each([
    ['Narayana, Table 15.2, m to zc', NARAYANA_M_TO_ZC, 209],
    ['Narayana, Table 15.2, a to h', NARAYANA_A_TO_H, 72],
    ['Narayana, Table 15.3, A to H', NARAYANA_HOLES, 96],
    ['Narayana, Table 15.3, P to ZC', NARAYANA_P_TO_ZC, 108],
    ["Machinery's Handbook, Table 6a, A to H", HANDBOOK_HOLES, 153],
    ['references 6.2, e, f, g', E_F_G, 45],
  ])('%s', (_, rows, count) => {
    expect(rows).toHaveLength(count);
    const got = rows.map(({size, zone}) => ({size, zone, value: fundamental(size, zone)}));
    expect(got).toEqual(rows);
  });

  test('mechguru: d, j and k', () => {
    for (const [size, d, j6, j7, k] of MECHGURU) {
      const got = [deviations(size, 'd8')[0], ...['j6', 'j7', 'k6'].map((zone) => deviations(size, zone)[1])];
      expect([size, ...got]).toEqual([size, d, j6, j7, k]);
    }
  });

  // Narayana, Table 15.2, p. 215, read: j5/j6 and j7, k, over 180 mm. The scan prints −11 and −18 for 315–400 mm as here.
  test.each([
    [250, 13, 21, 4],
    [315, 16, 26, 4],
    [400, 18, 28, 4],
    [500, 20, 32, 5],
  ])('Narayana: to %d mm j6 is −%d, j7 −%d, k6 +%d', (size, j6, j7, k) => {
    expect(['j5', 'j6', 'j7', 'k6'].map((zone) => deviations(size, zone)[1])).toEqual([-j6, -j6, -j7, k]);
  });

  // Narayana, Table 15.3, p. 219, read (120 mm and over), and Machinery's Handbook, Table 6a, read (to 200 mm).
  test.each([
    [3, 2, 4, 6],
    [6, 5, 6, 10],
    [10, 5, 8, 12],
    [18, 6, 10, 15],
    [30, 8, 12, 20],
    [50, 10, 14, 24],
    [80, 13, 18, 28],
    [120, 16, 22, 34],
    [180, 18, 26, 41],
    [250, 22, 30, 47],
    [315, 25, 36, 55],
    [400, 29, 39, 60],
    [500, 33, 43, 66],
  ])('to %d mm J6, J7, J8 reach +%d, +%d, +%d', (size, j6, j7, j8) => {
    expect(['J6', 'J7', 'J8'].map((zone) => deviations(size, zone)[0])).toEqual([j6, j7, j8]);
  });

  // Narayana, Table 15.3, p. 219, read: M above grade 8, and N to it, which is −n + Δ.
  test.each([
    [180, 15, 27, 23],
    [250, 17, 31, 26],
    [315, 20, 34, 29],
    [400, 21, 37, 32],
    [500, 23, 40, 34],
  ])('to %d mm M is −%d, N8 −%d + %d', (size, m, n, delta) => {
    expect([deviations(size, 'M9')[0], deviations(size, 'N8')[0]]).toEqual([-m, delta - n]);
    expect([deviations(size, 'm6')[1], deviations(size, 'n6')[1]]).toEqual([m, n]);
  });

  // Narayana, Table 15.3, p. 221, read: Δ of grades 3 to 8.
  test.each([
    [250, [3, 4, 6, 9, 17, 26]],
    [315, [4, 4, 7, 9, 20, 29]],
    [400, [4, 5, 7, 11, 21, 32]],
    [500, [5, 5, 7, 13, 23, 34]],
  ])('to %d mm Δ is that of the table', (size, deltas) => {
    const base = deviations(size, 'N9')[0];
    expect(base).toBe(0);
    const k = deviations(size, 'k6')[1];
    const got = [3, 4, 5, 6, 7, 8].map((grade) => deviations(size, `K${grade}`)[0] + k);
    expect(got).toEqual(deltas);
  });

  // Narayana, p. 221, read: "For P7, from diameters 18 to 30 mm, Δ = 8; hence ES = −14".
  test('P7 at 25 mm', () => expect(deviations(25, 'P7')[0]).toBe(-14));

  // ISO 286-1, note to Table 3 (Narayana, p. 219, prints "9", misprinted for −9).
  test('M6 from 250 to 315 mm is −9 and not −11', () => {
    expect(deviations(300, 'M6')[0]).toBe(-9);
    expect(deviations(320, 'M6')[0]).toBe(-10);
  });

  // ISO 286-2:1988/Cor. 1:2006, read: 1library.net/document/y82v060y.
  test.each([
    [90, 'E8', 0, 126],
    [25, 'R10', 0, -28],
    [300, 'f9', 1, -186],
  ] as const)('corrigendum: %d %s', (size, zone, end, value) => {
    expect(deviations(size, zone)[end]).toBe(value);
  });
});

describe('worked examples', () => {
  test.each([
    // Shigley, 9th ed., Example 7-7, p. 398, read.
    [34, 'H11', 34.16, 34],
    [34, 'c11', 33.88, 33.72],
    // Narayana, pp. 222–225, read: fliphtml5.com/lnym/mzww/MACHINE_DRAWING/259.
    [25, 'H7', 25.021, 25],
    [10, 'H10', 10.058, 10],
    [40, 'C11', 40.28, 40.12],
    [10, 'h9', 10, 9.964],
    [25, 'h9', 25, 24.948],
    [40, 'h11', 40, 39.84],
    // Engineering fit, Wikipedia (wap.danielthefox.com), read: H8/f7 on 50 mm.
    [50, 'H8', 50.039, 50],
    [50, 'f7', 49.975, 49.95],
    // ISO 286-2, js and JS are half of the grade to either side (from memory).
    [25, 'js6', 25.0065, 24.9935],
    [25, 'JS7', 25.0105, 24.9895],
  ])('%d%s is %d/%d mm', (size, zone, high, low) => {
    const {limits} = result(limitsOfSize(quantity(size, 'mm'), zone));
    expect([valueIn(limits.high, 'mm'), valueIn(limits.low, 'mm')]).toEqual([high, low]);
  });

  // Shigley, 9th ed., Example 7-8: its inch tables give 2.0000–2.0010 in; ISO 286 gives IT7 = 30 µm at 50.8 mm.
  test('a size in inches takes its step in mm and says so', () => {
    const worked = limitsOfSize(q('2.000 in'), 'H7');
    const {limits} = result(worked);
    expect(valueIn(limits.high, 'mm')).toBe(50.83);
    expect(valueIn(limits.high, 'in')).toBeCloseTo(2.00118, 5);
    expect(worked.ok && worked.advisory).toContain('metric');
  });
});

/** Narayana, Table 15.4 (read): formulas in µm from the geometric mean D of the step in mm. */
const FORMULAS: readonly (readonly [string, (mean: number, it: (grade: string) => number) => number])[] = [
  ['d', (d) => -16 * d ** 0.44],
  ['e', (d) => -11 * d ** 0.41],
  ['f', (d) => -5.5 * d ** 0.41],
  ['g', (d) => -2.5 * d ** 0.34],
  ['n', (d) => 5 * d ** 0.34],
  ['t', (d, it) => it('7') + 0.63 * d],
  ['u', (d, it) => it('7') + d],
  ['v', (d, it) => it('7') + 1.25 * d],
  ['x', (d, it) => it('7') + 1.6 * d],
  ['y', (d, it) => it('7') + 2 * d],
  ['z', (d, it) => it('7') + 2.5 * d],
  ['za', (d, it) => it('8') + 3.15 * d],
  ['zb', (d, it) => it('9') + 4 * d],
  ['zc', (d, it) => it('10') + 5 * d],
];

describe('the rules of the standard', () => {
  // Up to 30 mm the standard departs from its formulas, by up to 80 % in the first steps.
  test.each(FORMULAS)('over 30 mm %s follows its formula but for the rounding', (letter, formula) => {
    for (const [step, end] of DEVIATION_STEPS.entries()) {
      const zone = `${letter}6`;
      if (end <= 30) continue;
      // Letters d to n are worked out over the wider steps of the grades, the others over these.
      const wide = 'defgn'.includes(letter);
      const [from, to] = wide ? wideStep(end) : [DEVIATION_STEPS[step - 1] ?? 1, end];
      const exact = formula(Math.sqrt(from * to), (grade) => gradeAt(grade, end) ?? Number.NaN);
      const off = Math.abs(fundamental(end, zone) - exact);
      // Rounded to 1, 5, 10 and more µm as they grow.
      expect(off).toBeLessThanOrEqual(Math.max(1.2, Math.abs(exact) * 0.025));
    }
  });

  const size = fc.integer({min: 1001, max: 500_000}).map((thousandths) => thousandths / 1000);
  const grade = fc.constantFrom('5', '6', '7', '8', '9', '10', '11');

  test('every class is as wide as its grade', () => {
    const letter = fc.constantFrom(...'a b c d e f g h js k m n p r s u x z za zb zc'.split(' '));
    fc.assert(
      fc.property(size, letter, grade, fc.boolean(), (d, small, it, hole) => {
        const zone = (hole ? small.toUpperCase() : small) + it;
        const worked = limitsOfSize(quantity(d, 'mm'), zone);
        fc.pre(worked.ok);
        const [upper, lower] = deviations(d, zone);
        expect(upper - lower).toBeCloseTo(gradeAt(it, d) ?? Number.NaN, 9);
      }),
    );
  });

  test('holes A to H mirror the shafts', () => {
    fc.assert(
      fc.property(size, fc.constantFrom('a', 'b', 'c', 'd', 'e', 'f', 'g', 'h'), grade, (d, letter, it) => {
        const [upper, lower] = deviations(d, letter + it);
        expect(deviations(d, letter.toUpperCase() + it)).toEqual([0 - lower, 0 - upper]);
      }),
    );
  });

  // ISO 286-1, special rule (from memory): K7/h6 has exactly the clearances of H7/k6, and so on for M, N, P to ZC.
  test('a hole K to ZC of one grade pairs with h as H pairs with the shaft of the next finer grade', () => {
    const letter = fc.constantFrom('k', 'm', 'n', 'p', 'r', 's', 'u');
    fc.assert(
      fc.property(size, letter, fc.constantFrom(6, 7), (d, small, it) => {
        fc.pre(d > 3 && !(small === 'm' && it === 6 && d > 250 && d <= 315));
        const [holeUp, holeLow] = deviations(d, small.toUpperCase() + it);
        const [shaftUp, shaftLow] = deviations(d, small + (it - 1));
        const width = gradeAt(String(it), d) ?? Number.NaN;
        const finer = gradeAt(String(it - 1), d) ?? Number.NaN;
        expect(holeLow).toBeCloseTo(0 - shaftUp, 9);
        expect(holeUp + finer).toBeCloseTo(width - shaftLow, 9);
      }),
    );
  });

  test('the size stated in inches and in mm gives the same limits', () => {
    fc.assert(
      fc.property(fc.integer({min: 60, max: 19_000}), grade, (thou, it) => {
        const inches = limitsOfSize(quantity(thou / 1000, 'in', 0.001), `H${it}`);
        const metric = limitsOfSize(quantity(Number((thou * 0.0254).toPrecision(12)), 'mm'), `H${it}`);
        expect(valueIn(result(inches).limits.high, 'mm')).toBeCloseTo(
          valueIn(result(metric).limits.high, 'mm'),
          6,
        );
      }),
    );
  });
});

function wideStep(end: number): readonly [number, number] {
  const ends = [1, 3, 6, 10, 18, 30, 50, 80, 120, 180, 250, 315, 400, 500];
  const at = ends.findIndex((one) => end <= one);
  return [ends[at - 1] ?? 1, ends[at] ?? 500];
}

describe('what cannot be worked out is refused', () => {
  test.each([
    ['600 mm', 'H7', '500 mm'],
    ['25 mm', 'H19', 'grade 19'],
    ['25 mm', 'L7', 'no letter L'],
    ['25 mm', 'hello', 'no tolerance class'],
    ['25 mm', 'Ra7', 'no tolerance class'],
    ['25 mm', '7H', 'no tolerance class'],
    ['20 mm', 't6', 'no t6 at 20 mm'],
    ['25 mm', 'j8', 'no j8 at 25 mm'],
    ['25 mm', 'K9', 'no K9 at 25 mm'],
    ['0.5 mm', 'a9', 'no a9'],
    ['0.5 mm', 'N9', 'no N9'],
    ['25 mm', 'cd7', 'no cd7'],
    ['12 kg', 'H7', 'a mass'],
    ['0 mm', 'H7', 'above nought'],
  ])('%s %s', (nominal, zone, says) => {
    const refused = refusal(limitsOfSize(q(nominal), zone));
    expect(refused.says).toContain(says);
    expect(refused.hint).not.toBe('');
  });

  test('a letter that is nearly one gets a hint', () => {
    const read = readZone('za77');
    expect('hint' in read && read.hint).toBe('its grades are 01, 0 and 1 to 18');
    const other = readZone('ZD7');
    expect('hint' in other && other.hint).toMatch(/^did you mean [A-Z]+7\?$/);
  });

  test('every grade of the table is read', () => {
    for (const grade of GRADES.keys())
      expect(readZone(`H${grade}`)).toEqual({kind: 'hole', letters: 'h', grade});
  });
});
