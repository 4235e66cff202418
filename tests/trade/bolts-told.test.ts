/**
 * Figures of torque, preload and engagement, line for line, and what they say where they refuse. Worked by hand from the
 * formula beside the row.
 */

import {describe, expect, test} from 'vitest';
import {minimumEngagement} from '../../src/trade/engagement.js';
import {longFormTorque, torqueFor} from '../../src/trade/preload.js';
import {torqueThenAngle} from '../../src/trade/torque-angle.js';
import {ESTIMATE} from '../../src/trade/worked.js';
import {q} from '../help/amount.js';
import {asked, askedAlone, refused, type Texts, told, working} from './ask.js';
import {grade, thread} from './fasteners.js';
import {result, valueIn} from './unwrap.js';

const BOLT = {thread: '7/16-20 UNF', condition: 'oiled'};
const HALF = thread('1/2-13 UNC');
const METRIC = thread('M10×1.5');
const ANGLE = {...BOLT, torque: '30 lbf·ft', angle: '60°', grip: '3.5 in'};

const TOLD: readonly (readonly [subject: string, texts: Texts, lines: readonly string[], by: string])[] = [
  [
    'torque',
    {thread: '1/2-13 UNC', condition: 'K 0.2', preload: '10000 lbf'},
    ['torque: 83.3 lbf·ft'],
    '0.2 · 10000 · 0.5 / 12',
  ],
  [
    'stress-area',
    {thread: '1-1/2-18 UNEF'},
    ['stress area: 1.642 in² (1059 mm²)'],
    '0.7854 · (1.5 − 0.9743 / 18)²',
  ],
  [
    'engagement',
    {thread: 'M10', bolt: '800 MPa', hole: '400 MPa'},
    ['least engagement: 10.8 mm', 'in diameters: 1.08', 'strips first: the thread of the hole'],
    'FED-STD-H28/2B',
  ],
  [
    'torque-angle',
    ANGLE,
    ['preload: 12215 lbf', 'by the torque: 4571 lbf', 'by the angle: 7644 lbf'],
    '360 / (0.18 · 0.4375); nothing of a yield load without a grade',
  ],
  [
    'torque-angle',
    {...ANGLE, shank: '2.5 in', grade: 'SAE 5'},
    ['preload: 13412 lbf', 'by the torque: 4571 lbf', 'by the angle: 8841 lbf', 'of the yield load: 123 %'],
    'of 92 ksi on 0.1187 in²',
  ],
];

test.each(TOLD)('%s %j', (subject, texts, lines) => expect(told(askedAlone(subject, texts))).toEqual(lines));

describe('preloads', () => {
  test('what stands under a preload', () => {
    expect(working(asked('preload', {condition: 'K 0.2', prevailing: '5 lbf·ft', method: 'feel'}))).toEqual([
      'F = (T − prevailing) / (K · d)',
      'thread: 7/16-20 UNF',
      'torque: 55 lbf·ft',
      'prevailing torque: 5 lbf·ft',
      'nut factor K: 0.2 (as stated)',
      'grade: SAE J429 grade 5',
      'scatter of feel ±35 %: 4457–9257 lbf',
      "Shigley 9th ed., Eq. 8-27; K: nut factor as stated; scatter: Machinery's Handbook",
      ESTIMATE,
    ]);
  });

  test.each([
    [
      'a nut factor of a slip',
      () => torqueFor({thread: HALF, friction: 5, preload: q('1000 lbf')}),
      'a nut factor of 5 is outside 0.09 to 0.35; about 0.15 is oiled steel, 0.20 dry',
    ],
    [
      'neither preload nor grade',
      () => torqueFor({thread: HALF, friction: 0.2}),
      'neither preload nor grade is given; give one of them',
    ],
  ])('%s', (_, work, says) => expect(refused(work())).toBe(says));

  // d2 and d3 of M10 are 9.026 and 8.160 mm (ISO 724 and ISO 898-1); the formula by hand: dm 9.080 mm, λ 3.01°.
  test('the long form takes the minor diameter of a metric thread by ISO', () => {
    const worked = longFormTorque({
      thread: METRIC,
      preload: q('25 kN'),
      threadFriction: 0.12,
      faceFriction: 0.12,
    });
    expect(valueIn(result(worked), 'N·m')).toBeCloseTo(40.604, 3);
    expect(working(worked)).toEqual([
      'T = F · [dm/2 · (tan λ + f·sec 30°)/(1 − f·tan λ·sec 30°) + 0.625·fc·d]',
      'thread: M10×1.5',
      'preload: 25 kN',
      'friction of the thread: 0.12',
      'friction of the face: 0.12',
      'Shigley 9th ed., Eq. 8-25 and 8-26',
      ESTIMATE,
    ]);
  });
});

describe('torque and angle', () => {
  test('every input is told once, and nothing of yielding where none is near', () => {
    const all = working(asked('torque-angle', {angle: '10°', condition: 'K 0.2'}));
    expect(all.slice(1, -3)).toEqual([
      'thread: 7/16-20 UNF',
      'torque: 30 lbf·ft',
      'nut factor K: 0.2 (as stated)',
      'angle: 10°',
      'grip: 3.5 in',
      'shank in the grip: 2.5 in',
      "bolt's modulus: 30000 ksi",
      "members' modulus: 30000 ksi",
    ]);
    expect(all.at(-1)).toBe(
      `${ESTIMATE} The stiffness is itself estimated and the first torque must have closed the joint.`,
    );
  });

  test('the share of the yield load lies in a band', () => {
    const given = {thread: HALF, torque: q('30 lbf·ft'), angle: q('30°'), friction: 0.2, grip: q('3 in')};
    const {force, low, high, ofYield} = result(torqueThenAngle({...given, grade: grade('8', HALF)}));
    const shares = [low, force, high].map(({value}) => (100 * value) / (130_000 * 0.1419));
    expect([ofYield?.low, ofYield?.likely, ofYield?.high].map((one) => one?.toFixed(0))).toEqual(
      shares.map((one) => one.toFixed(0)),
    );
  });
});

describe('engagements', () => {
  test.each([{bolt: q('120 ksi')}, {hole: q('120 ksi')}, {}])(
    'one strength alone says nothing: %j',
    (strengths) => {
      expect(working(minimumEngagement({thread: HALF, ...strengths})).slice(2, 4)).toEqual([
        "bolt's tensile strength: taken as that of the hole",
        "hole's tensile strength: taken as that of the bolt",
      ]);
    },
  );
});
