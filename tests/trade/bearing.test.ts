/** Plain bearings: clearance, taper, out-of-round, crush, spread and undersizes, against the manuals' rules and geometry. */
import fc from 'fast-check';
import {describe, expect, test} from 'vitest';
import {quantity} from '../../src/quantity/convert.js';
import {formatAmount, formatQuantity} from '../../src/quantity/format.js';
import type {Quantity} from '../../src/quantity/model.js';
import {type BearingPlace, bearingClearance} from '../../src/trade/bearing-clearance.js';
import {crush, crushFromGap} from '../../src/trade/crush.js';
import {formOf} from '../../src/trade/roundness.js';
import {runningClearance} from '../../src/trade/running-clearance.js';
import {shellSpread} from '../../src/trade/shell-spread.js';
import {chooseUndersize, INCH_GRINDS, METRIC_GRINDS, matchUndersize} from '../../src/trade/undersize.js';
import {amount, q} from '../help/amount.js';
import {out, refusal, result, valueIn} from './unwrap.js';

function inches(...rows: readonly (readonly number[])[]): Quantity[][] {
  return rows.map((row) => row.map((value) => quantity(value, 'in', 0.0001)));
}

/** A crankshaft of three mains, invented, worked by hand below. */
const MAINS: readonly BearingPlace[] = [
  {
    place: 'front',
    journal: inches([2.4992, 2.4991], [2.499, 2.499]),
    bore: inches([2.5013, 2.5014], [2.5012, 2.5013]),
  },
  {place: 'centre', journal: inches([2.4988, 2.4984]), bore: inches([2.5015, 2.5016])},
  {place: 'rear', journal: inches([2.4994, 2.4994]), bore: inches([2.501, 2.501])},
];

describe('clearance', () => {
  // TM 5-3895-370-14&P, pp. 5-272 and 5-283 (read): the journal taken from the smallest bore. Sums by hand.
  test('place by place', () => {
    const {places} = result(bearingClearance(MAINS));
    const told = places.map(({place, least, most}) => [place, formatQuantity(least), formatQuantity(most)]);
    expect(told).toEqual([
      ['front', '0.0020 in', '0.0024 in'],
      ['centre', '0.0027 in', '0.0032 in'],
      ['rear', '0.0016 in', '0.0016 in'],
    ]);
  });

  test('taper and out-of-round, journal and bore', () => {
    const [front, centre] = result(bearingClearance(MAINS)).places;
    const form = (of: typeof front) =>
      of &&
      [of.journal.taper, of.journal.outOfRound, of.bore.taper, of.bore.outOfRound].map(
        (one) => one && valueIn(one, 'thou'),
      );
    expect(form(front)).toEqual([0.2, 0.1, 0.1, 0.1]);
    expect(form(centre)).toEqual([undefined, 0.4, undefined, 0.1]);
  });

  test('tightest, loosest and worst place, and the spread between neighbours', () => {
    const plain = result(bearingClearance(MAINS));
    expect([plain.tightest, plain.loosest, plain.worst]).toEqual(['rear', 'centre', 'rear']);
    // Means 0.0022, 0.00295, 0.0016: the largest step is 0.00135 in, over the 0.001 in of TM 5-6115-593-34 (read).
    expect(valueIn(plain.spread, 'thou')).toBeCloseTo(1.35, 6);
  });

  test('limits say which place is out and which is worst', () => {
    const limited = result(bearingClearance(MAINS, amount('0.0015–0.0030 in')));
    expect(limited.places.map(({verdict}) => verdict)).toEqual(['in', 'loose', 'in']);
    expect(limited.worst).toBe('centre');
    const narrow = result(bearingClearance(MAINS, amount('0.0021–0.0023 in')));
    expect(narrow.places.map(({verdict}) => verdict)).toEqual(['both', 'loose', 'tight']);
  });

  test('shell walls come off the housing bore, and unlike ones move the middle', () => {
    const place = {
      place: '',
      journal: inches([2.4989]),
      bore: inches([2.6545]),
      walls: [q('0.0767 in'), q('0.0765 in')],
    };
    const [only] = result(bearingClearance([place])).places;
    expect(valueIn(only?.least, 'in')).toBe(0.0024);
    expect(valueIn(only?.eccentricity, 'in')).toBe(0.0001);
  });

  test('one wall stands for both halves', () => {
    const place = {place: '', journal: inches([2.4989]), bore: inches([2.6545]), walls: [q('0.0765 in')]};
    expect(valueIn(result(bearingClearance([place])).places[0]?.least, 'in')).toBe(0.0026);
  });

  test('metric walls in an inch bore', () => {
    const place = {place: '', journal: inches([2]), bore: [[q('2.1590 in')]], walls: [q('2.000 mm')]};
    expect(valueIn(result(bearingClearance([place])).places[0]?.least, 'mm')).toBeCloseTo(
      54.8386 - 4 - 50.8,
      6,
    );
  });

  const reading = fc
    .integer({min: 24_900, max: 25_100})
    .map((tenths) => quantity(tenths / 10_000, 'in', 0.0001));
  const grid = fc.array(fc.tuple(reading, reading), {minLength: 1, maxLength: 4});

  test('least is never above most; both shift with every reading', () => {
    fc.assert(
      fc.property(grid, grid, fc.integer({min: 1, max: 50}), (journal, bore, more) => {
        const [before] = result(bearingClearance([{place: 'p', journal, bore}])).places;
        const wider = bore.map((row) => row.map((one) => quantity(one.value + more / 10_000, 'in', 0.0001)));
        const [after] = result(bearingClearance([{place: 'p', journal, bore: wider}])).places;
        expect(valueIn(before?.least, 'thou')).toBeLessThanOrEqual(valueIn(before?.most, 'thou'));
        expect(valueIn(after?.least, 'thou') - valueIn(before?.least, 'thou')).toBeCloseTo(more / 10, 6);
        expect(after?.bore.taper && valueIn(after.bore.taper, 'thou')).toEqual(
          before?.bore.taper && valueIn(before.bore.taper, 'thou'),
        );
      }),
    );
  });

  test('the order of the directions does not matter', () => {
    fc.assert(
      fc.property(grid, (journal) => {
        const turned = journal.map(([a, b]) => [b, a]);
        expect(formOf(turned, 'j')).toEqual(formOf(journal, 'j'));
      }),
    );
  });

  test.each([
    ['no place', [], 'no reading'],
    ['no journal', [{place: 'a', journal: [], bore: inches([2])}], 'the journal at a has no reading'],
    [
      'ragged rows',
      [{place: 'a', journal: inches([2, 2], [2]), bore: inches([2])}],
      '2 readings in one row and 1',
    ],
    ['a mass', [{place: '', journal: [[q('2 lb')]], bore: inches([2])}], 'a mass'],
    [
      'walls that fill the bore',
      [{place: 'a', journal: inches([2]), bore: inches([2]), walls: [q('1 in')]}],
      'fill',
    ],
    [
      'three walls',
      [{place: '', journal: inches([2]), bore: inches([3]), walls: [q('1 in'), q('1 in'), q('1 in')]}],
      'two',
    ],
  ])('%s is refused', (_, places, says) => {
    expect(refusal(bearingClearance(places)).says).toContain(says);
  });
});

describe('by the rule', () => {
  // References, 7.1 (rule of thumb, from memory): 2.500 in at 0.00075 to 0.0015 in per inch.
  test('2.500 in', () => {
    const worked = out(runningClearance(q('2.500 in')));
    // The reference rounds to 0.0019–0.0038.
    expect([worked.result.low, worked.result.high].map((end) => valueIn(end, 'in'))).toEqual([
      0.001_875, 0.003_75,
    ]);
    // C. Yung, Plant Engineering, June 2016 (read): 2 thou + 1 per inch is 4.5 thou, 2 per inch 5 thou.
    expect(
      worked.band &&
        typeof worked.band.value !== 'string' &&
        'high' in worked.band.value &&
        valueIn(worked.band.value.high, 'thou'),
    ).toBe(5);
    expect(worked.advisory).toContain('estimate');
  });
});

describe('undersize', () => {
  const standard = amount('2.4990–2.5000 in');

  // References, 7.4: journal + undersize = standard journal, and the undersizes in common use. Sums by hand.
  test.each([
    ['2.4990 in', '0.001 in'],
    ['2.4985 in', '0.002 in'],
    ['2.4950 in', '0.010 in'],
    ['2.4900 in', '0.010 in'],
    ['2.4899 in', '0.020 in'],
    ['2.4650 in', '0.040 in'],
  ])('a journal worn to %s cleans up to %s', (worn, undersize) => {
    const found = result(chooseUndersize(q(worn), standard, INCH_GRINDS));
    expect(formatQuantity(found.undersize)).toBe(undersize);
  });

  test('what cleaning up takes is taken off first', () => {
    const found = result(chooseUndersize(q('2.4910 in'), standard, INCH_GRINDS, q('0.002 in')));
    expect(formatQuantity(found.undersize)).toBe('0.020 in');
    expect(formatAmount(found.journal)).toBe('2.4790–2.4800 in');
  });

  // TM 10-3930-653-14&P, p. 4-38, read: 0.25, 0.50, 0.75, 1.00 mm.
  test('metric undersizes', () => {
    const found = result(chooseUndersize(q('49.60 mm'), amount('49.980–50.000 mm'), METRIC_GRINDS));
    expect(formatAmount(found.journal)).toBe('49.480–49.500 mm');
  });

  test.each([
    ['2.4895 in', '0.010 in', true],
    ['2.4795 in', '0.020 in', true],
    ['2.4995 in', '0 in', true],
    ['2.4850 in', '0.010 in', false],
  ])('a journal of %s is the %s grind: %s', (journal, undersize, fits) => {
    const found = result(matchUndersize(q(journal), standard, [q('0 in'), ...INCH_GRINDS.slice(2)]));
    expect([formatQuantity(found.undersize), found.fits]).toEqual([undersize, fits]);
    if (!fits) expect(valueIn(found.off, 'in')).toBe(0.004);
  });

  test('whatever is ground to its limits is found again', () => {
    const grind = fc.constantFrom(...INCH_GRINDS.slice(2));
    fc.assert(
      fc.property(grind, fc.integer({min: 0, max: 10}), (undersize, tenths) => {
        const journal = quantity(2.499 + tenths / 10_000 - undersize.value, 'in', 0.0001);
        const found = result(matchUndersize(journal, standard, INCH_GRINDS.slice(2)));
        expect([found.fits, found.undersize.value]).toEqual([true, undersize.value]);
      }),
    );
  });

  test('more wear never asks for a smaller undersize', () => {
    const worn = fc.integer({min: 24_600, max: 24_990}).map((tenths) => tenths / 10_000);
    fc.assert(
      fc.property(worn, worn, (a, b) => {
        const [less, more] = [Math.max(a, b), Math.min(a, b)].map(
          (size) =>
            result(chooseUndersize(quantity(size, 'in', 0.0001), standard, INCH_GRINDS)).undersize.value,
        );
        expect(less).toBeLessThanOrEqual(more ?? Number.NaN);
      }),
    );
  });

  test.each([
    [() => chooseUndersize(q('2.400 in'), standard, INCH_GRINDS), 'does not clean up'],
    [() => chooseUndersize(q('2.49 in'), standard, []), 'no undersize'],
    [() => chooseUndersize(q('2.49 in'), amount('max 2.5 in'), INCH_GRINDS), 'only one limit'],
    [() => chooseUndersize(q('2.49 kg'), standard, INCH_GRINDS), 'a mass'],
    [() => chooseUndersize(q('2.49 in'), standard, [q('3 in')]), 'leaves no journal'],
    [() => matchUndersize(q('2.49 in'), standard, [q('10 s')]), 'a time'],
    [() => matchUndersize(q('0 in'), standard, INCH_GRINDS), 'above nought'],
  ])('%s: %s', (work, says) => {
    expect(refusal<unknown>(work()).says).toContain(says);
  });
});

describe('crush and spread', () => {
  // Geometry: two halves that are each 0.0015 in too long add 0.003 in to the circumference, 0.003/π to the diameter.
  test('crush of a half', () => {
    expect(valueIn(result(crush(q('0.0015 in'), q('2.6545 in'))).interference, 'thou')).toBeCloseTo(
      0.954_93,
      4,
    );
    const worked = out(crushFromGap(q('0.0030 in'), q('2.6545 in')));
    expect(valueIn(worked.result.height, 'thou')).toBe(1.5);
    expect(valueIn(worked.result.interference, 'thou')).toBeCloseTo(0.954_93, 4);
  });

  // TM 5-3820-256-24-5, p. 13, read: about 0.025 in.
  test('spread', () => {
    expect(valueIn(result(shellSpread(q('2.680 in'), q('2.655 in'))), 'in')).toBe(0.025);
    expect(refusal(shellSpread(q('2.655 in'), q('2.655 in'))).says).toContain('drops out');
  });

  test.each([
    [() => crush(q('0.1 in'), q('2.5 in')), 'another size'],
    [() => crush(q('0 in'), q('2.5 in')), 'above nought'],
    [() => crushFromGap(q('3 s'), q('2.5 in')), 'a time'],
    [() => shellSpread(q('2.5 in'), q('2.5 kg')), 'a mass'],
  ])('%s: %s', (work, says) => {
    expect(refusal<unknown>(work()).says).toContain(says);
  });
});
