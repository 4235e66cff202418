/** Designations at the edge of what is read: each gives its thread, or the whole refusal with its hint. */
import {expect, test} from 'vitest';
import {isForeignThread, isLeftHand, readThread} from '../../src/trade/thread.js';
import {q} from '../help/amount.js';

function told(given: string): string {
  const read = readThread(given);
  if (!read.ok) return `${read.says}; ${read.hint}`;
  const {name, series, leftHand} = read.thread;
  return `${name}, ${series}${leftHand ? ', left hand' : ''}`;
}

const NO_THREAD = 'does not name a thread; write 1/2-13 UNC, 7/16-20 UNF-2A, #10-32 or M10×1.5';

test.each([
  [`1/2-13${' '.repeat(51)}UNC`, '1/2-13 UNC, UNC'],
  [
    `1/2-13${' '.repeat(52)}UNC`,
    '"1/2-13                       …" is too long for a thread; write 1/2-13 UNC, or M10×1.5',
  ],
  ['a M10', `"a M10" ${NO_THREAD}`],
  ['M10 fine', '"M10 fine" is not a metric thread; write M10×1.5, or M10 for the coarse pitch'],
  ['M13', 'M13 is not a standard size; the nearest are M12 and M14'],
  ['M10×2', 'M10 has no pitch of 2 mm; it has M10×1.5, M10×1.25, M10×1, M10×0.75'],
  ['M10 LH', 'M10×1.5, coarse, left hand'],
])('metric, and how long any may be: "%s"', (given, says) => expect(told(given)).toBe(says));

test.each([
  // With a number sign, or the word for it, a bare number is a number size; without one an inch where both are.
  ['No. 10-32', '10-32 UNF, UNF'],
  ['No.10-32', '10-32 UNF, UNF'],
  ['No 10-32', '10-32 UNF, UNF'],
  ['#1-72', '1-72 UNF, UNF'],
  ['1-12', '1-12 UNF, UNF'],
  ['#1/4-20', `"#1/4-20" ${NO_THREAD}`],
  ['10 #-32', `"10 #-32" ${NO_THREAD}`],
  ['1/4-20 No. 2', `"1/4-20 No. 2" ${NO_THREAD}`],
  ['1 1/8-12', '1-1/8-12 UNF, UNF'],
  ['1-1/8-12', '1-1/8-12 UNF, UNF'],
  ['.25-20', '1/4-20 UNC, UNC'],
  ['.190-32', '10-32 UNF, UNF'],
  [
    '7/16',
    '"7/16" does not name a thread: 7/16 has several; write 7/16-14 UNC or 7/16-20 UNF or 7/16-28 UNEF',
  ],
  ['#10', '"#10" does not name a thread: 10 has several; write 10-24 UNC or 10-32 UNF'],
])('sizes in inches: "%s"', (given, says) => expect(told(given)).toBe(says));

test.each([
  ['1-14 UN', '1-14 UN, UN'],
  ['1/2-4 UNS', '1/2-4 UNS, UNS'],
  ['1/2-80 UNS', '1/2-80 UNS, UNS'],
  ['1/2-3 UNS', '3 threads per inch is not a thread; it has 1/2-13 UNC, 1/2-20 UNF, 1/2-28 UNEF'],
  ['1/2-81 UNS', '81 threads per inch is not a thread; it has 1/2-13 UNC, 1/2-20 UNF, 1/2-28 UNEF'],
  ['1/2 UNS', 'UNS alone does not say the pitch; write 1-14 UNS'],
  ['1/2-14 UNC', '1/2 UNC has 13 threads per inch, not 14; it has 1/2-13 UNC, 1/2-20 UNF, 1/2-28 UNEF'],
  [
    '1/2-14',
    '1/2-14 is not a standard thread; it has 1/2-13 UNC, 1/2-20 UNF, 1/2-28 UNEF; write UNS behind it if it is a special one',
  ],
])('series: "%s"', (given, says) => expect(told(given)).toBe(says));

test.each([
  [
    'M10',
    {
      name: 'M10×1.5',
      family: 'metric',
      diameter: q('10 mm'),
      pitch: {...q('1.5 mm'), step: 0},
      series: 'coarse',
      leftHand: false,
    },
  ],
  // Number sizes are tabled to a thousandth; a fraction of an inch is exact.
  [
    '#10-32',
    {
      name: '10-32 UNF',
      family: 'unified',
      diameter: q('0.190 in'),
      pitch: {...q('0.03125 in'), step: 0},
      threadsPerInch: 32,
      series: 'UNF',
      leftHand: false,
    },
  ],
  [
    '1/2-20 UNF-2A LH',
    {
      name: '1/2-20 UNF',
      family: 'unified',
      diameter: {...q('0.5 in'), step: 0},
      pitch: {...q('0.05 in'), step: 0},
      threadsPerInch: 20,
      series: 'UNF',
      toleranceClass: '2A',
      leftHand: true,
    },
  ],
])('all of %s', (given, thread) => expect(readThread(given)).toStrictEqual({ok: true, thread}));

test.each([
  ['M10 LH', true],
  [' M10-lh ', true],
  ['M10 LH, old stock', false],
  ['M10LH', false],
])('"%s" is left-handed: %s', (given, is) => expect(isLeftHand(given)).toBe(is));

test('a thread of another family is one wherever a long text says so', () => {
  expect(isForeignThread('1/2 BSW')).toBe(true);
  expect(isForeignThread(`${'special, as the drawing has it; '.repeat(3)}Whitworth form`)).toBe(true);
  expect(isForeignThread('1/2-13 UNC')).toBe(false);
});
