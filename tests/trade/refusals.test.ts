/** Refusals that name what was given: the person must see which of their words or values is meant, and what to do. */
import {describe, expect, test} from 'vitest';
import {cotterPinFor} from '../../src/trade/cotter-pin.js';
import {fitOfLimits} from '../../src/trade/fit.js';
import {stripFor, stripTaper} from '../../src/trade/gauging-strip.js';
import {gradeGiven, gradeOf} from '../../src/trade/grade.js';
import {preloadOf} from '../../src/trade/preload.js';
import {wireFor} from '../../src/trade/safety-wire.js';
import {middleFor, stack} from '../../src/trade/stack.js';
import type {Task} from '../../src/trade/task-graph.js';
import {timePlan} from '../../src/trade/time-plan.js';
import type {Worked} from '../../src/trade/worked.js';
import {amount, q} from '../help/amount.js';
import {asked, type Texts} from './ask.js';
import {thread} from './fasteners.js';
import {out, refusal} from './unwrap.js';

const BOLT = thread('1/2-13 UNC');
const LINKS = [
  {name: 'case', size: amount('1.750 ±0.003 in'), times: 1},
  {name: 'shaft', size: amount('0.750 ±0.001 in'), times: -1},
];

function task(id: string, ...after: readonly string[]): Task {
  return {id, hands: q('10 min'), after};
}

const CALCULATIONS: readonly (readonly [string, () => Worked<unknown>, RegExp])[] = [
  ['a hole with one limit', () => fitOfLimits(amount('max 1.5 in'), amount('1.4 in')), /both limits/],
  ['a hole upside down', () => fitOfLimits(amount('1.5–1.6 kg'), amount('1.4 in')), /^the hole is a mass/],
  ['a shaft in kg', () => fitOfLimits(amount('1.5 in'), amount('1.4 kg')), /^the shaft is a mass/],
  ['a strip by one limit', () => stripFor(amount('max 0.003 in')), /by both limits/],
  [
    'limits that no strip spans',
    () => stripFor(amount('0.001–0.009 in')),
    /spans 0\.001–0\.009 in \(green 0\.001–0\.003 in, red 0\.002–0\.006 in, blue 0\.004–0\.009 in\)/,
  ],
  ['a bolt without a cotter pin', () => cotterPinFor({thread: thread('M10')}), /is tabled for M10×1\.5$/],
  ['no bolt and no hole', () => cotterPinFor({}), /neither bolt nor hole/],
  ['a pinhole for a pin', () => cotterPinFor({hole: q('0.01 in')}), /goes in a hole of 0\.01 in$/],
  [
    'a hole too small for the bolt',
    () => cotterPinFor({thread: thread('7/16-20'), hole: q('0.078 in')}),
    /the largest pin that goes in is 1\/16 in, less than the 3\/32 in for /,
  ],
  ['a hole too small for any wire', () => wireFor({hole: q('0.010 in')}), /a hole of 0\.010 in$/],
  [
    'a nut factor of a slip',
    () => preloadOf({thread: BOLT, torque: q('50 lbf·ft'), friction: 2}),
    /nut factor of 2 is outside/,
  ],
  [
    'no nut factor',
    () => preloadOf({thread: BOLT, torque: q('50 lbf·ft'), friction: 0.01}),
    /nut factor of 0\.01 is outside/,
  ],
  ['an empty stack', () => stack([]), /no link/],
  [
    'a link with one limit',
    () => stack([{name: 'case', size: amount('max 1 in'), times: 1}]),
    /^case has only one/,
  ],
  ['a link that is not there', () => middleFor(LINKS, 'shim', q('0.01 in')), /no link shim can be moved/],
  ['a plan without a task', () => timePlan([]), /no task/],
  ['two tasks of a name', () => timePlan([task('a'), task('b'), task('b')]), /\bb\b/],
  ['a task after none', () => timePlan([task('seal'), task('fill', 'sael')]), /sael/],
  [
    'tasks in a circle, without those that are not in it',
    () => timePlan([task('a'), task('b', 'c'), task('c', 'b')]),
    /^these tasks wait for each other: b, c$/,
  ],
];

describe('calculations', () => {
  test.each(CALCULATIONS)('%s', (_, work, says) => expect(refusal(work()).says).toMatch(says));

  test('the names to choose from are told', () => {
    expect(refusal(middleFor(LINKS, 'shim', q('0.01 in'))).hint).toBe('the stack has case, shaft');
    expect(refusal(timePlan([task('seal'), task('fill', 'sael')])).hint).toContain('seal');
  });

  test('of two ends the smaller is the least clearance', () => {
    for (const [one, other] of [
      ['0.0015 in', '0.0020 in'],
      ['0.0020 in', '0.0015 in'],
    ] as const)
      expect(out(stripTaper(q(one), q(other))).advisory).toContain('0.0015 in is the least');
  });

  test('an inflation stands in the formula, none does not', () => {
    expect(out(stack(LINKS, 1.5)).formula).toContain('1.5 · √');
    expect(out(stack(LINKS)).formula).toContain('T = √');
  });

  test('holes for which no least size is set are told so, others not', () => {
    expect(out(wireFor({hole: q('0.045 in')})).advisory).toContain('no least size');
    expect(out(wireFor({hole: q('0.062 in')})).advisory).toBeUndefined();
    expect(out(wireFor({hole: q('0.045 in'), twist: 'single'})).advisory).toBeUndefined();
  });

  test('two links go by the worst case, three may go by the root sum square', () => {
    const three = [...LINKS, {name: 'shim', size: amount('0.995 ±0.002 in'), times: -1}];
    expect(out(stack(LINKS)).advisory).toContain('worst case');
    expect(out(stack(three)).advisory).toBeUndefined();
  });
});

describe('grades', () => {
  test.each([
    ['a length in kg', gradeOf('2', BOLT, q('3 kg')), /the bolt's length is a mass/],
    ['a range of strengths', gradeOf('yield 36–40 ksi', BOLT), /36–40 ksi is not one strength/],
    ['a proof strength in inches', gradeGiven({proof: q('3 in')}), /the proof strength is a length/],
    ['a yield strength of nought', gradeGiven({yield: q('0 ksi')}), /the yield strength must be above/],
    [
      'a tensile strength in inches',
      gradeGiven({proof: q('3 ksi'), tensile: q('3 in')}),
      /the tensile strength is a/,
    ],
    ['nothing', gradeGiven({}), /neither proof nor yield/],
    [
      'a long word',
      gradeOf('unobtainium of the very first quality', BOLT),
      /^"unobtainium of the very first…" is/,
    ],
    ['a word before a strength', gradeOf('some yield 36 ksi', BOLT), /is not a grade in the tables/],
  ] as const)('%s', (_, read, says) => {
    expect(read.ok ? '' : read.says).toMatch(says);
    expect(read.ok ? '' : read.hint).toMatch(/\w/);
  });

  test.each([
    // A number that the tables lack is a slip; what speaks of something else is a bolt that they do not know.
    ['3', false],
    ['class 3.6', false],
    ['SAE 3', false],
    ['brass 8', true],
    ['A2-70', true],
    ['', true],
  ])('"%s": of another family, %s', (text, foreign) => {
    const read = gradeOf(text, BOLT);
    expect(read.ok ? undefined : read.foreign).toBe(foreign);
  });

  test.each([
    ['  grade 8  ', 'SAE J429 grade 8'],
    [' yield   36 ksi ', 'yield 36 ksi given'],
    ['YIELD 36 ksi', 'yield 36 ksi given'],
    ['J 429 grade 5', 'SAE J429 grade 5'],
  ])('"%s" is %s', (text, name) => {
    const read = gradeOf(text, BOLT);
    expect(read.ok ? read.grade.name : read.says).toBe(name);
  });

  test('a tensile strength that is given is kept, and each strength says where it comes from', () => {
    const read = gradeGiven({proof: q('55 ksi'), tensile: q('74 ksi')});
    expect(read.ok ? read.grade.tensile : read.says).toEqual(q('74 ksi'));
    expect(read.ok ? read.grade.source : '').toContain('as given');
    const metric = gradeOf('8.8', thread('M10'));
    expect(metric.ok ? metric.grade.source : '').toContain('ISO 898-1');
  });
});

describe('figures', () => {
  test.each([
    ['tightening-order', {layout: 'circle 0'}, /"circle 0" is no layout/],
    ['tightening-order', {layout: 'grid 0 x 3'}, /is no layout/],
    ['tightening-order', {layout: 'grid 3'}, /./],
    ['tightening-order', {layout: 'circle six'}, /circle six/],
    ['tightening-order', {layout: 'a circle 6'}, /a circle 6/],
    ['tightening-order', {layout: 'circle 6 or so'}, /circle 6 or so/],
    ['tightening-order', {layout: 'row 401'}, /is no layout/],
    ['tightening-order', {layout: 'a: 0 0; b: four 0'}, /"b: four 0" is no place of a fastener/],
    ['tightening-order', {layout: 'a: 0 0; b: 4 0 mm'}, /"b: 4 0 mm" is no place/],
    ['heat-to-fit', {material: '99e-6/K'}, /no metal expands by 99e-6/],
    ['heat-to-fit', {material: '0.1e-6/K'}, /no metal expands by 0\.1e-6/],
    ['heat-to-fit', {material: 'about 12e-6/K'}, /"about 12e-6\/K" is no material/],
    ['heat-to-fit', {material: '12e-6/K or so'}, /is no material of the table/],
    [
      'heat-to-fit',
      {material: 'unobtainium of the very first quality'},
      /"unobtainium of the very first " is/,
    ],
    ['stack', {link: ['case: 1.750 in']}, /the size has no sign and name/],
    ['preload', {condition: 'K 0.18 or so'}, /"K 0\.18 or so" is no condition of threads/],
    ['preload', {condition: 'about 0.18'}, /"about 0\.18" is no condition of threads/],
    ['preload', {grade: ' '}, /the grade is missing/],
    ['passes', {count: 'x3'}, /"x3" is not a plain number/],
    ['passes', {count: '3x'}, /"3x" is not a plain number/],
    ['compression', {gasket: [], 'gasket-bore': '4 in'}, /./],
    ['gauge', {resolution: '0.001–0.002 in'}, /limits were given where one value is due/],
    ['crush', {bore: '2–3 in'}, /limits were given where a length is due/],
    ['safety-wire', {twist: 'triple'}, /"triple" is not known/],
    ['bearing-clearance', {bore: 'rear: 2.5 in'}, /no bore was read at front/],
    ['bearing-clearance', {journal: ['front: 2.4 in', 'rear: 2.4 in']}, /no bore was read at rear/],
    ['bearing-clearance', {bore: ['front: 2.5 in', 'rear: 2.5 in']}, /no journal was read at rear/],
    ['bearing-clearance', {journal: '2.4 in', bore: 'front: 2.5 in'}, /no bore was read at the bearing/],
    ['time-plan', {task: '20 min'}, /the task has no name/],
    ['time-plan', {task: ': 20 min'}, /the task has no name/],
    ['time-plan', {task: 'seal: 20 min, then 24 h'}, /"then" is no part of a task/],
    ['which-undersize', {grinds: '0.010 0.020 in'}, /./],
  ] as const)('%s %j', (subject, texts, says) => {
    expect(refusal(asked(subject, texts as Texts)).says).toMatch(says);
  });

  test('numbers without commas between them are told to have some', () => {
    expect(refusal(asked('which-undersize', {grinds: ' 0.010   0.020 in '})).hint).toContain(
      '0.010, 0.020 in',
    );
  });

  test.each([
    ['passes', {count: ' 3 '}],
    ['safety-wire', {twist: ' Single '}],
    ['heat-to-fit', {material: ' 6.8e-6 per °F '}],
    ['heat-to-fit', {material: '12E-6/C'}],
    ['heat-to-fit', {material: '12.25e-6 / °C'}],
    ['heat-to-fit', {material: ' Steel '}],
    ['preload', {condition: ' k=.18 '}],
    ['preload', {condition: 'K = 0.18'}],
    ['preload', {condition: 'Oiled'}],
    ['preload', {grade: ' SAE 5 '}],
    ['stack', {link: ['+case:1.750 in', '−  10.25 ×  cone : 0.01 in']}],
    ['limits', {class: ' g 6 '}],
    ['bolt-grade', {grade: 'proof 55 ksi'}],
  ] as const)('%s is read in %j', (subject, texts) => {
    out(asked(subject, texts as Texts));
  });
});
