/** ISO 286 letters where one rule of the standard ends and the next begins; values by its tables, or by Δ as named. */
import {expect, test} from 'vitest';
import {formatAmount} from '../../src/quantity/format.js';
import {limitsOfSize} from '../../src/trade/iso-limits.js';
import {q} from '../help/amount.js';
import {asked, refused, working} from './ask.js';
import {result} from './unwrap.js';

test.each([
  // k and K: ISO 286-1, Tables 2 and 5 (from memory): k is above nought from grade 4 to 7 alone.
  ['25 mm', 'k3', '25.000–25.004 mm'],
  ['25 mm', 'k4', '25.002–25.008 mm'],
  ['25 mm', 'k7', '25.002–25.023 mm'],
  ['25 mm', 'k8', '25.000–25.033 mm'],
  // Δ is added over 3 mm: ISO 286-2 (from memory) has K6 0/−6, M7 −2/−12, N7 −4/−14, P7 −6/−16 up to there.
  ['3 mm', 'K6', '2.994–3.000 mm'],
  ['3 mm', 'M7', '2.988–2.998 mm'],
  ['3 mm', 'N7', '2.986–2.996 mm'],
  ['3 mm', 'P7', '2.984–2.994 mm'],
  ['2 mm', 'K9', '1.975–2.000 mm'],
  // K, M and N take Δ to grade 8: M8 is +4/−29 over 18 to 30 mm in ISO 286-2 (from memory), M9 −8/−60.
  ['25 mm', 'M8', '24.971–25.004 mm'],
  ['25 mm', 'M9', '24.940–24.992 mm'],
  // To 1 mm N of the coarse grades alone is left out.
  ['2 mm', 'N9', '1.971–1.996 mm'],
  ['0.5 mm', 'N6', '0.490–0.496 mm'],
  ['0.5 mm', 'P9', '0.469–0.494 mm'],
  // M6 is −9 over 250 to 315 mm, and follows the rule on both sides: −17 + 9 and −21 + 11.
  ['200 mm', 'M6', '199.963–199.992 mm'],
  ['250 mm', 'M6', '249.963–249.992 mm'],
  ['315 mm', 'M6', '314.959–314.991 mm'],
  ['320 mm', 'M6', '319.954–319.990 mm'],
])('%s %s is %s', (size, zone, limits) => {
  expect(formatAmount(result(limitsOfSize(q(size), zone)).limits)).toBe(limits);
});

test.each([
  ['25 mm', 'j9'],
  ['25 mm', 'J9'],
  ['25 mm', 'CD7'],
  ['20 mm', 'T7'],
  // Δ is tabled from grade 3.
  ['25 mm', 'K2'],
  ['25 mm', 'P1'],
  ['1 mm', 'N9'],
  ['1 mm', 'a9'],
  ['1 mm', 'A9'],
  ['1 mm', 'b9'],
  ['0.5 mm', 'B9'],
])('there is none for %s %s', (size, zone) => {
  expect(refused(limitsOfSize(q(size), zone))).toBe(
    `ISO 286 has no ${zone} at ${size}; choose a class that it has for this size`,
  );
});

test.each([
  ['zd7', 'ISO 286 has no letter zd; did you mean cd7?'],
  ['ZD7', 'ISO 286 has no letter ZD; did you mean CD7?'],
  ['WW7', 'ISO 286 has no letter WW; its letters are a to zc without i, l, o, q and w'],
  ['Hg7', '"Hg7" is no tolerance class; write capitals for a hole, H7, small letters for a shaft, g6'],
  ['hG7', '"hG7" is no tolerance class; write capitals for a hole, H7, small letters for a shaft, g6'],
])('the letters of %s', (zone, says) => expect(refused(limitsOfSize(q('25 mm'), zone))).toBe(says));

test('the width of the grade stands in the working, whatever the letter', () => {
  expect(working(asked('limits', {size: '25 mm', class: 'f7'}))).toEqual([
    'low = d + ei, high = d + es',
    'nominal size: 25 mm',
    'class: f7',
    'IT7: 21 µm',
    'ISO 286-1:2010, Tables 1 to 5',
    '',
  ]);
});
