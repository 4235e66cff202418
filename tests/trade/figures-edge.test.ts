/** What figures tell at the edge of their rules: nought, equality, and what is told only where it was given. */
import {describe, expect, test} from 'vitest';
import {quantity} from '../../src/quantity/convert.js';
import {chamberFor} from '../../src/trade/compression-ratio.js';
import {crushFromGap} from '../../src/trade/crush.js';
import {frictionOf} from '../../src/trade/friction.js';
import {fitOfInchClass} from '../../src/trade/inch-fit.js';
import {passesTo} from '../../src/trade/passes.js';
import {gapInBore} from '../../src/trade/ring-gap.js';
import type {Worked} from '../../src/trade/worked.js';
import {q} from '../help/amount.js';
import {answer, askedAlone, inputsOf, refused, type Texts} from './ask.js';
import {result} from './unwrap.js';

const BUSH = {diameter: '2.000 in', inner: 'steel', outer: 'aluminium-6061', room: '70 °F', at: '270 °F'};
const CYLINDER = {bore: '4.000 in', stroke: '4.000 in'};
const GAUGE = {limits: '2.4990–2.5000 in', uncertainty: '0.0001 in'};

test.each<readonly [string, Texts, readonly string[], string]>([
  [
    'hot-fit',
    {...BUSH, interference: '0.0020 in'},
    ['interference (negative: clearance): −0.0006 in'],
    '0.0020 − 2 · 111.1 K · (23.6 − 12)e-6',
  ],
  ['hot-fit', {...BUSH, interference: '0.0030 in'}, ['interference: 0.0004 in'], 'the same'],
  [
    'hot-fit',
    {...BUSH, outer: 'steel', interference: '0.0000 in'},
    ['interference: 0.0000 in'],
    'one metal keeps its fit',
  ],
  [
    'compression',
    {...CYLINDER, chamber: '5 in³'},
    ['ratio: 11.05:1', 'swept volume: 50.27 in³', 'volume at top dead centre: 5.00 in³'],
    'π · 16 / 4 · 4 = 50.27',
  ],
  [
    'compression',
    {...CYLINDER, chamber: '80 cc', dish: '-80 cc'},
    ['no volume is left at top dead centre', 'check the signs: a dish is positive, a dome negative'],
    'subtraction',
  ],
  [
    'chamber',
    {...CYLINDER, ratio: '9', deck: '0.500 in'},
    ['9:1 leaves no room for a chamber', 'a lower ratio, or more dish'],
    'an eighth of the stroke is all that a ratio of nine leaves',
  ],
  ['chamber', {...CYLINDER, ratio: '30'}, ['chamber: 28.4 cc'], '823.7 cc / 29'],
  [
    'cotter-pin',
    {thread: '7/16-20 UNF'},
    ['take: 3/32 in', 'least for the bolt: 3/32 in', 'largest that goes in: 7/64 in'],
    'ASME B18.8.1',
  ],
  // No slot is tabled for that bolt, so nothing is known to end what goes in.
  ['cotter-pin', {thread: '#10-32'}, ['take: 1/16 in', 'least for the bolt: 1/16 in'], 'AN310 and AN380'],
  ['cotter-pin', {hole: '0.109 in'}, ['take: 3/32 in', 'largest that goes in: 3/32 in'], 'ASME B18.8.1'],
  [
    'guard-band',
    GAUGE,
    ['accept: 2.4991–2.4999 in', 'reject below: 2.4989 in', 'reject above: 2.5001 in'],
    'ISO 14253-1',
  ],
  [
    'wire-run',
    {count: '7', spacing: '5 in', wire: '0.032 in', twist: 'single'},
    ['single wire is for fasteners to 2 in apart', 'twist the wire double'],
    'AC 43.13-1B',
  ],
  [
    'running-clearance',
    {journal: '2.000 in'},
    ['clearance: 0.0015–0.0030 in'],
    '0.00075 and 0.0015 per inch',
  ],
])('%s %j', (subject, texts, told) => expect(answer(askedAlone(subject, texts))).toEqual(told));

test.each<readonly [string, Texts, readonly string[]]>([
  ['guard-band', GAUGE, ['limits: 2.4990–2.5000 in', 'expanded uncertainty (k = 2), U: 0.0001 in']],
  [
    'cotter-pin',
    {hole: '0.109 in', slot: '0.12 in'},
    ['thread: not stated', 'hole: 0.109 in', 'slot: 0.12 in'],
  ],
])('the working of %s %j', (subject, texts, told) => {
  expect(inputsOf(askedAlone(subject, texts))).toEqual(told);
});

describe('fits of ANSI B4.1', () => {
  const told = (nominal: string, named: string) => answer(askedAlone('fit', {size: nominal, fit: named}));

  test.each([
    ['1.5 in', ' ln 2 ', ['hole: 1.5000–1.5010 in', 'shaft: 1.5010–1.5016 in']],
    // Hundredths of a thousandth stand in the small steps (Machinery's Handbook, 31st ed., Table 10).
    ['0.1 in', 'LT1', ['hole: 0.1000–0.1004 in', 'shaft: 0.09988–0.10012 in']],
  ])('%s %s', (nominal, named, limits) => expect(told(nominal, named).slice(0, 2)).toEqual(limits));

  const CLASSES =
    'the table has RC1, RC2, RC3, RC4, RC5, RC6, RC7, LT1, LT2, LT3, LT4, LT5, LT6, LN1, LN2, LN3, FN1, FN2, FN3, FN4, FN5';

  test('a size belongs to the step that it ends, also where the doubles put it a hair beyond', () => {
    const limitsOf = (inches: number) => {
      const {hole} = result(fitOfInchClass(quantity(inches, 'in'), 'RC4'));
      return (hole.high.value - hole.low.value).toFixed(4);
    };
    expect([0.71, 0.71 * (1 + 1e-12), 0.7101].map(limitsOf)).toEqual(['0.0010', '0.0010', '0.0012']);
  });

  test.each([
    [' RC99 ', '2 in', `ANSI B4.1 has no class "RC99"; ${CLASSES}`],
    ['RC', '2 in', 'ANSI B4.1 has no class "RC"; did you mean RC1?'],
    ['RC7', '0.001 in', 'the shaft must be above nought; check the reading and its sign'],
    [
      'RC7',
      '8 in',
      '8 in is beyond the table of RC7; take the limits from the standard, or use ISO 286 letters',
    ],
  ])('%s of %s', (named, nominal, due) => {
    expect(refused(fitOfInchClass(q(nominal), named))).toBe(due);
  });
});

describe('friction as a shop states it', () => {
  test.each([0.09, 0.2, 0.35])('a nut factor of %d', (nutFactor) => {
    expect(frictionOf(nutFactor)).toStrictEqual({
      nutFactor,
      published: {low: nutFactor, high: nutFactor},
      says: 'as stated',
      source: 'nut factor as stated',
    });
  });
});

test('the passes go by the largest mark that is no more than a fifteenth, but for what the doubles lose', () => {
  const told = (value: number) =>
    result(passesTo(quantity(value, 'N·m', 0.1))).map((pass) => pass.value.toFixed(1).replace('.0', ''));
  // The last one is less than 75 by just the margin.
  expect([75, 74.9, 74.999_999_925].map(told)).toEqual([
    ['25', '45', '75'],
    ['22', '44', '74.9'],
    ['20', '45', '75'],
  ]);
});

test('a ring whose ends just meet goes in', () => {
  expect(result(gapInBore(q('0.000 in'), q('3.500 in'), q('3.500 in')))).toMatchObject({value: 0});
});

test.each<readonly [string, () => Worked<unknown>, string]>([
  [
    'a gap of nought',
    () => crushFromGap(q('0 in'), q('2.7 in')),
    'the gap must be above nought; check the reading and its sign',
  ],
  [
    'a gap in kg',
    () => crushFromGap(q('3 kg'), q('2.7 in')),
    'the gap is a mass (kg) where a length is due; write it in in or mm',
  ],
  [
    'a ratio just under three by the margin',
    () => chamberFor(3 - 1e-6, {bore: q('4 in'), stroke: q('4 in')}),
    'a ratio of 2.999999:1 cannot be right; give one from 3 to 30',
  ],
  [
    'a ratio just over thirty by the margin',
    () => chamberFor(30 + 1e-6, {bore: q('4 in'), stroke: q('4 in')}),
    'a ratio of 30.000001:1 cannot be right; give one from 3 to 30',
  ],
  [
    'a dome beside which the cylinder is lost in the doubles',
    () => chamberFor(9, {bore: q('4 in'), stroke: q('4 in'), dish: quantity(-1e18, 'cc')}),
    'no volume is left at top dead centre; check the signs: a dish is positive, a dome negative',
  ],
])('%s is refused', (_, work, due) => {
  expect(refused(work())).toBe(due);
});
