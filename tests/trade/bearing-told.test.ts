/** Bearings by place: which place is named of several, what stands in the working, and refusals whole. Invented readings. */
import {describe, expect, test} from 'vitest';
import {type BearingPlace, bearingClearance} from '../../src/trade/bearing-clearance.js';
import {formOf} from '../../src/trade/roundness.js';
import {runningClearance} from '../../src/trade/running-clearance.js';
import {amount, q} from '../help/amount.js';
import {answer, askedAlone, inputsOf, lines, refused} from './ask.js';
import {out, result} from './unwrap.js';

/** A journal of 2 in in bores larger by these thousandths, the least and the most at each place. */
function placesOf(clearances: Readonly<Record<string, readonly [number, number]>>): BearingPlace[] {
  return Object.entries(clearances).map(([place, thou]) => ({
    place,
    journal: [[q('2.0000 in')]],
    bore: [thou.map((one) => q(`${(2 + one / 1000).toFixed(4)} in`))],
  }));
}

describe('of several places', () => {
  test.each([
    ['each the one', {a: [2, 3], b: [1, 2], c: [2, 4]}, undefined, 'b, c, b'],
    ['the first of equals', {a: [2, 4], b: [1, 3], c: [1, 4]}, undefined, 'b, a, b'],
    ['the nearest to the lower limit', {a: [2, 3], b: [1.1, 3], c: [3, 4.7]}, '0.001–0.005 in', 'b, c, b'],
    ['the nearest to the upper limit', {a: [1.3, 3], b: [2, 3], c: [3, 4.9]}, '0.001–0.005 in', 'a, c, c'],
    ['the first of those as near', {a: [2, 3], b: [1.5, 3], c: [1.5, 3]}, '0.001–0.005 in', 'b, a, b'],
    ['the furthest outside', {a: [0.5, 3], b: [2, 5.2], c: [0.6, 3]}, '0.001–0.005 in', 'a, b, a'],
    ['by one limit', {a: [2, 3], b: [1, 2], c: [2, 4.5]}, 'max 0.005 in', 'b, c, c'],
    ['by the other limit', {a: [2, 3], b: [1, 2], c: [2, 4.5]}, 'min 0.001 in', 'b, c, b'],
  ] as const)('%s is named', (_, clearances, limits, named) => {
    const {tightest, loosest, worst} = result(
      bearingClearance(placesOf(clearances), limits === undefined ? undefined : amount(limits)),
    );
    expect([tightest, loosest, worst].join(', ')).toBe(named);
  });
});

test.each([
  ['max 0.003 in', [0.5, 2.9], 'in'],
  ['max 0.003 in', [0.5, 3.1], 'loose'],
  ['min 0.001 in', [1.5, 9], 'in'],
  ['min 0.001 in', [0.5, 9], 'tight'],
  ['0.001–0.003 in', [0.5, 9], 'both'],
] as const)('%s: %j is %s', (limits, thou, verdict) => {
  const [place] = result(bearingClearance(placesOf({front: thou}), amount(limits))).places;
  expect(place?.verdict).toBe(verdict);
});

describe('without a name of the place', () => {
  const PLACE: BearingPlace = {place: '', journal: [[q('2.0000 in')]], bore: [[q('2.2020 in')]]};

  test('the working has what was read, and no wall where none was', () => {
    expect(inputsOf(bearingClearance([PLACE]))).toEqual(['journal: 2.0000 in', 'bore: 2.2020 in']);
    const walls = [q('0.1000 in'), q('0.1010 in')];
    expect(inputsOf(bearingClearance([{...PLACE, walls}], amount('0.0010–0.0030 in')))).toEqual([
      'journal: 2.0000 in',
      'bore: 2.2020 in',
      'wall: 0.1000 in',
      'wall: 0.1010 in',
      'limits: 0.0010–0.0030 in',
    ]);
  });

  test('a bearing of one wall has two alike, and no eccentricity', () => {
    const [one] = result(bearingClearance([{...PLACE, walls: [q('0.1000 in')]}])).places;
    expect(
      lines([
        {name: 'least', value: one?.least ?? ''},
        {name: 'off', value: one?.eccentricity ?? ''},
      ]),
    ).toEqual(['least: 0.0020 in', 'off: 0.0000 in']);
    expect(result(bearingClearance([PLACE])).places[0]).not.toHaveProperty('eccentricity');
  });

  test.each([
    [{journal: []}, 'the journal has no reading; give at least one diameter'],
    [{journal: [[]]}, 'the journal has no reading; give at least one diameter'],
    [{bore: []}, 'the bore has no reading; give at least one diameter'],
    [
      {journal: [[q('2 in'), q('2 kg')]]},
      'a reading of the journal is a mass (kg) where a length is due; write it in in or mm',
    ],
    [
      {bore: [[q('2.5 in'), q('2.5 in')], [q('2.5 in')]]},
      'the bore has 2 readings in one row and 1 in another; read the same directions at every place along it',
    ],
    [{walls: [q('1.5 in')]}, 'the shells at the bearing fill the whole bore; check the walls and their unit'],
    [
      {walls: [q('0.1 in'), q('0.1 in'), q('0.1 in')]},
      'a bearing has two shells; give the wall of the upper and of the lower one',
    ],
    [
      {place: 'rear', walls: [q('1.5 in')]},
      'the shells at rear fill the whole bore; check the walls and their unit',
    ],
    [{place: 'rear', bore: []}, 'the bore at rear has no reading; give at least one diameter'],
    [{place: 'rear', journal: []}, 'the journal at rear has no reading; give at least one diameter'],
  ])('%j is refused', (change: Partial<BearingPlace>, due) => {
    expect(refused(bearingClearance([{...PLACE, ...change}]))).toBe(due);
  });
});

test('the figure tells taper and out-of-round of both, and no verdict without limits', () => {
  expect(
    answer(
      askedAlone('bearing-clearance', {
        journal: '2.0000, 2.0001; 1.9998, 1.9998 in',
        bore: '2.0020, 2.0021; 2.0024, 2.0020 in',
      }),
    ),
  ).toEqual([
    'clearance: 0.0019–0.0026 in',
    'journal taper: 0.0003 in',
    'journal out-of-round: 0.0001 in',
    'bore taper: 0.0004 in',
    'bore out-of-round: 0.0004 in',
  ]);
});

test('the form of one reading has neither taper nor out-of-round', () => {
  expect(formOf([[q('2.0000 in')]], 'it')).toStrictEqual({
    smallest: q('2.0000 in'),
    largest: q('2.0000 in'),
    taper: undefined,
    outOfRound: undefined,
  });
});

test.each([
  // Of the rules in use 2 thou and 1 more per inch allow most to 2 in, 2 per inch beyond (Yung, Plant Engineering, 2016).
  ['1.000 in', ['clearance: 0.0008–0.0015 in', 'by the rules in use: 0.0008–0.0030 in']],
  ['4.000 in', ['clearance: 0.0030–0.0060 in', 'by the rules in use: 0.0030–0.0080 in']],
])('running clearance of a journal of %s', (journal, told) => {
  const {result: clearance, band} = out(runningClearance(q(journal)));
  expect(lines([{name: 'clearance', value: clearance}, ...(band ? [band] : [])])).toEqual(told);
});
