/** The working under a figure where it hangs on what was given: its formula, what was taken, its source and its advice. */
import {describe, expect, test} from 'vitest';
import type {Task} from '../../src/trade/task-graph.js';
import {readThread} from '../../src/trade/thread.js';
import {timePlan} from '../../src/trade/time-plan.js';
import {q} from '../help/amount.js';
import {asked, type Texts, working} from './ask.js';
import {out, refusal} from './unwrap.js';

const WORKINGS: readonly (readonly [
  subject: string,
  texts: Texts,
  says: readonly string[],
  not: readonly string[],
])[] = [
  [
    'wear-limit',
    {rule: 'bearing-clearance'},
    [
      'limit = high limit + 0.0005 in × diameter in inches',
      'high limit when new: 0.0030 in',
      'diameter: 2.500 in',
    ],
    [],
  ],
  [
    'wear-limit',
    {rule: 'camshaft-journal', 'new-limit': '2.4990 in'},
    ['limit = low limit − 0.0005 in × diameter', 'low limit when new: 2.4990 in'],
    ['high'],
  ],
  ['wear-limit', {rule: 'piston-pin'}, ['allowed = 0.001 in\n'], ['diameter', 'limit =']],
  ['wear-limit', {rule: 'piston'}, ['allowed = 0.0005 in × diameter in inches'], ['limit =']],
  ['stress-area', {}, ['0.9743 / n', 'threads per inch: 20', 'ASME B1.1'], ['ISO']],
  ['stress-area', {thread: 'M10×1.5'}, ['0.9382 · P', 'pitch: 1.5 mm', 'ISO 898-1'], ['ASME']],
  [
    'tightening-order',
    {layout: 'circle 6'},
    ['opposite pairs', 'crosswise, by the layout', 'PCC-1'],
    ['outwards'],
  ],
  [
    'tightening-order',
    {layout: 'row 6'},
    ['by distance from the middle', 'outwards, by the layout', 'no source'],
    ['PCC-1'],
  ],
  ['tightening-order', {layout: 'row 6', pattern: 'crosswise'}, ['pattern: crosswise\n'], ['by the layout']],
  ['safety-wire', {}, ['hole above 0.045 in: 0.032 in or more', 'spacing: not stated', 'twist: double'], []],
  ['safety-wire', {twist: 'single'}, ['the largest wire that the hole takes', 'twist: single'], ['or more']],
  ['wire-length', {}, ['√(1 + (π·d·t)²)', 'spans: 2 in, 2 in, 2.5 in'], ['2·pigtail']],
  ['wire-length', {twist: 'single'}, ['Σs + n·π·D/2 + 2·pigtail'], ['√']],
  [
    'core-plug',
    {},
    ['interference = plug − bore', 'held and sealed by interference only'],
    ['installation page'],
  ],
  [
    'core-plug',
    {kind: 'domed', plug: '1.494–1.496 in'},
    ['clearance before spreading = bore − plug', "a plug maker's"],
    ['held and sealed'],
  ],
  ['engagement', {thread: 'M10×1.5'}, ['M10×1.5, tolerances 6g/6H'], []],
  ['engagement', {}, ['7/16-20 UNF, tolerances 2A/2B', "bolt's tensile strength: 120 ksi"], ['taken as']],
  [
    'torque-angle',
    {},
    ['torque ±25 %, angle ±15 %: 10943–15881 lbf', 'a bolt tightened so is used once'],
    ['At the top'],
  ],
  ['torque-angle', {angle: '33°'}, ['At the top of the band the bolt yields'], ['used once']],
  ['torque-angle', {angle: '10°'}, ['estimate'], ['yields', 'used once']],
  ['preload', {method: 'feel'}, ['scatter of feel ±35 %: '], []],
  [
    'torque',
    {share: '0.5'},
    ['T = K · d · share · Sp · At', 'preload: 50 % of proof load, SAE J429 grade 5', '8-31 and 8-32'],
    [],
  ],
  ['torque', {preload: '7500 lbf'}, ['T = K · F · d', 'preload: 7500 lbf', 'Eq. 8-27; K'], ['8-31']],
  ['passes', {}, ['30, 60, 100 % of the final torque'], []],
  [
    'wrench',
    {},
    [
      'from T / (1 + a) to T / (1 − a)',
      'working range: 20–150 lbf·ft',
      'accuracy of the wrench ±4 %: 81.7–88.5 lbf·ft',
    ],
    [],
  ],
  ['gauge', {}, ['resolution: 0.0001 in', 'accuracy, ±: 0.0001 in'], []],
  ['limits', {}, ['low = D + EI, high = D + ES', 'class: H7', 'IT7: 21 µm'], ['inch']],
  [
    'limits',
    {class: 'f7', size: '1 in'},
    ['low = d + ei, high = d + es', 'class: f7', 'metric standard'],
    [],
  ],
  ['fit', {size: '1 in', fit: 'H7/g6'}, ['metric standard'], []],
  ['fit', {size: '25 mm', fit: 'H7/g6'}, ['ISO 286'], ['metric standard']],
  ['end-play', {}, [], ['no end play']],
  ['end-play', {over: '1.6240–1.6260 in'}, ['some pairs would have no end play'], []],
  ['cool-to-fit', {}, ['∫α dT', 'trunnion'], []],
  ['cool-to-fit', {material: 'aluminium-6061'}, ['ΔT ='], ['trunnion']],
  ['compression', {}, ['dish (+) or dome (−): 5 cc', 'gasket bore: 4.100 in'], [': none']],
  ['chamber', {}, ['ratio wanted: 9.5:1'], ['chamber: ']],
  [
    'cotter-pin',
    {},
    ['slot: 0.12 in, the least of ASME B18.2.2', 'hole: 0.109 in', 'thread: 7/16-20 UNF'],
    [],
  ],
  ['cotter-pin', {thread: 'M10'}, ['slot: not stated'], []],
  ['bearing-clearance', {}, ['journal front: 2.4992 in', 'bore front: 2.5013 in'], []],
  ['time-plan', {}, ['fill, after seal, head: 10 min', 'seal, wait: 24 h'], ['head, wait', 'head, after']],
];

test.each(WORKINGS)('%s %j', (subject, texts, says, not) => {
  const all = working(asked(subject, texts)).join('\n');
  for (const one of says) expect(all).toContain(one);
  for (const one of not) expect(all).not.toContain(one);
});

describe('a wrench that does not reach', () => {
  test.each([
    [
      '10 lbf·ft',
      'a setting of 10 lbf·ft is below the 20 lbf·ft that the wrench starts at',
      'take a smaller wrench',
    ],
    [
      '160 lbf·ft',
      'a setting of 160 lbf·ft is above the 150 lbf·ft that the wrench ends at',
      'take a larger wrench',
    ],
  ])('%s', (torque, says, hint) => expect(refusal(asked('wrench', {torque}))).toMatchObject({says, hint}));

  test.each([
    ['±4 % or so', /does not say how accurate/],
    ['about ±4 %', /does not say how accurate/],
    ['class A or so', /does not say how accurate/],
    ['class H', /"class H" does not say/],
  ])('an accuracy of "%s"', (accuracy, says) =>
    expect(refusal(asked('wrench', {accuracy})).says).toMatch(says),
  );

  test.each([
    '  class B ',
    'type I class C',
    'type 1 class c',
    '+/- 4%',
    '4 % of reading',
    '±4 %  of setting',
  ])('an accuracy of "%s" is read', (accuracy) => {
    out(asked('wrench', {accuracy}));
  });
});

describe('classes of fits and of limits', () => {
  test.each([
    ['limits', {class: 'H7 and more'}, /is no tolerance class/],
    ['limits', {class: 'about H7'}, /is no tolerance class/],
    ['limits', {class: 'Hg7'}, /is no tolerance class/],
    ['fit', {fit: ' H7  g6 '}, /"H7 {2}g6" has no stroke/],
    ['fit', {fit: 'H11 c11'}, /has no stroke/],
    ['fit', {fit: 'H7/g6/k6'}, /is no fit/],
    ['fit', {fit: 'H7/H8'}, /has no hole and shaft/],
  ] as const)('%s %j', (subject, texts, says) => expect(refusal(asked(subject, texts)).says).toMatch(says));
});

describe('threads', () => {
  const told = (given: string) => {
    const read = readThread(given);
    return read.ok ? `${read.thread.name}, ${read.thread.series}, ${read.thread.toleranceClass}` : read.says;
  };

  test.each([
    [' M10 ', 'M10×1.5, coarse, undefined'],
    ['M 10 x 1,25', 'M10×1.25, fine, undefined'],
    ['M10×1.5-6g', 'M10×1.5, coarse, 6g'],
    ['7/16-20 UNF-2A', '7/16-20 UNF, UNF, 2A'],
    ['#10-24 UNEF', '10 has no UNEF thread'],
    [`1/2-13 ${'very '.repeat(12)}long`, '"1/2-13 very very very very ve…" is too long for a thread'],
    ['a thread of the finest pitch there is', '"a thread of the finest pitch …" does not name a thread'],
    ['a thread of a pitch of thirty!', '"a thread of a pitch of thirty!" does not name a thread'],
  ])('"%s"', (given, says) => expect(told(given)).toBe(says));
});

test('of two tasks of one name that one is told, and of a circle no more than eight', () => {
  const task = (id: string, ...after: readonly string[]): Task => ({id, hands: q('10 min'), after});
  expect(refusal(timePlan([task('a'), task('b'), task('c'), task('b')])).says).toBe(
    'the task b is there twice',
  );
  const ring = Array.from({length: 10}, (_, index) => task(`t${index}`, `t${(index + 1) % 10}`));
  expect(refusal(timePlan(ring)).says).toMatch(/: t0, t1, t2, t3, t4, t5, t6, t7$/);
  expect(refusal(timePlan([task('a'), task('b', 'xyzzyplugh')])).hint).toBe('add that task');
});
