/** Safety wire and cotter pins against the rules and tables of the manuals. */
import fc from 'fast-check';
import {describe, expect, test} from 'vitest';
import {quantity, si} from '../../src/quantity/convert.js';
import {cotterPinFor, cotterSuits} from '../../src/trade/cotter-pin.js';
import {COTTER_FOR_BOLT, COTTER_PINS} from '../../src/trade/cotter-sizes.js';
import {wireFor, wireSuits} from '../../src/trade/safety-wire.js';
import {twistsFor, wireLength, wireRun} from '../../src/trade/wire-run.js';
import {q} from '../help/amount.js';
import {thread} from './fasteners.js';
import {out, refusal, result, valueIn} from './unwrap.js';

describe('wire for a hole', () => {
  // AC 43.13-1B 7-124 (read second-hand); TM 1-1500-204-23-6 p. 2-77 (read): 0.032 in at least above 0.045 in.
  test.each([
    ['0.062 in', '3 in', 0.032, 0.06],
    ['0.0465 in', '3 in', 0.032, 0.041],
    ['0.070 in', '1 in', 0.032, 0.06],
    ['0.062 in', undefined, 0.032, 0.06],
    // 0.020 in will do in holes of 0.045 to 0.062 in less than 2 in apart.
    ['0.062 in', '1.9 in', 0.02, 0.06],
    ['0.062 in', '2 in', 0.032, 0.06],
    ['0.046 in', '1 in', 0.02, 0.041],
    ['0.045 in', '3 in', 0.02, 0.041],
    ['1.6 mm', '80 mm', 0.032, 0.06],
  ])('a hole of %s at %s: %d to %d in', (hole, spacing, least, most) => {
    const found = result(wireFor({hole: q(hole), ...(spacing ? {spacing: q(spacing)} : {})}));
    expect([valueIn(found.least, 'in'), valueIn(found.most, 'in')]).toEqual([least, most]);
  });

  // TM 1-1500-204-23-6 p. 2-79 (read): single wire is the largest nominal size that the hole takes.
  test.each([
    ['0.062 in', 0.06],
    ['0.045 in', 0.041],
    ['0.040 in', 0.032],
  ])('single wire in a hole of %s is %d in', (hole, size) => {
    const found = result(wireFor({hole: q(hole), twist: 'single'}));
    expect([valueIn(found.least, 'in'), valueIn(found.most, 'in')]).toEqual([size, size]);
  });

  test('a wire is judged by its nominal size', () => {
    const choice = result(wireFor({hole: q('0.062 in')}));
    expect(wireSuits(q('0.020 in'), choice)).toBe('too thin');
    expect(wireSuits(q('0.032 in'), choice)).toBe('suits');
    expect(wireSuits(q('0.8 mm'), choice)).toBe('suits');
    expect(wireSuits(q('0.041 in'), choice)).toBe('suits');
    expect(wireSuits(q('0.091 in'), choice)).toBe('too thick');
  });

  test.each([
    ['no hole', wireFor({hole: q('0 in')}), /above nought/],
    ['a pinhole', wireFor({hole: q('0.010 in')}), /no safety wire goes through/],
    ['a hole for none but the thinnest', wireFor({hole: q('0.018 in')}), /0\.02 in wire does not go through/],
    ['a hole in pounds', wireFor({hole: q('3 lb')}), /hole is a mass/],
  ])('%s is refused', (_, worked, says) => expect(refusal(worked).says).toMatch(says));

  test('a larger hole never takes a thinner wire', () => {
    const holes = fc.double({min: 0.03, max: 0.2, noNaN: true});
    fc.assert(
      fc.property(holes, holes, (a, b) => {
        const [small, large] = [Math.min(a, b), Math.max(a, b)].map((one) =>
          result(wireFor({hole: quantity(one, 'in')})),
        );
        if (small && large)
          expect(si(small.most) <= si(large.most) && si(small.least) <= si(large.least)).toBe(true);
        if (large) expect(si(large.least)).toBeLessThanOrEqual(si(large.most));
      }),
    );
  });
});

describe('twists (NASM33540 as quoted at wmrc.ca, second-hand and unsure)', () => {
  test.each([
    ['0.020 in', 8, 14],
    ['0.025 in', 8, 14],
    ['0.032 in', 6, 11],
    ['0.041 in', 6, 11],
    ['0.051 in', 4, 8],
    ['0.060 in', 4, 8],
  ])('%s: %d to %d an inch', (wire, low, high) => {
    const found = out(twistsFor(q(wire)));
    expect(found.result).toEqual({low, high});
    expect(found.advisory).toMatch(/check it/);
  });

  test('6 to 8 for 0.032 in, the figure of AC 43.13-1B, lies within', () => {
    const {low, high} = result(twistsFor(q('0.032 in')));
    expect(low <= 6 && high >= 8).toBe(true);
  });

  test('thicker and thinner wires are refused', () => {
    expect(refusal(twistsFor(q('0.091 in'))).hint).toMatch(/0\.020 to 0\.060/);
    expect(refusal(twistsFor(q('0.015 in'))).hint).toMatch(/0\.020 to 0\.060/);
  });
});

describe('runs', () => {
  const wire = q('0.032 in');

  // TM 10-3930-659-34, 2-22 and TM 5-5420-202-20-4 (read): widely spaced, 4 to 6 in, three at most.
  test.each([
    [6, '4 in', 3, 2],
    [6, '6 in', 3, 2],
    [7, '5 in', 3, 3],
    [2, '5 in', 3, 1],
  ])('%d fasteners %s apart: %d in a run, %d runs', (count, spacing, most, runs) => {
    expect(result(wireRun({count, spacing: q(spacing), wire}))).toEqual({most, runs});
  });

  test('closer ones: as many as 24 in of wire does (same), by the length to cut', () => {
    const {most} = result(wireRun({count: 20, spacing: q('2 in'), wire}));
    const cut = (fasteners: number): number =>
      valueIn(result(wireLength({spans: Array(fasteners - 1).fill(q('2 in')), wire})), 'in');
    expect(cut(most)).toBeLessThanOrEqual(24);
    expect(cut(most + 1)).toBeGreaterThan(24);
  });

  test.each([
    ['farther than 6 in', wireRun({count: 4, spacing: q('6.5 in'), wire}), /not wired together/, /tie point/],
    [
      'single wire 3 in apart',
      wireRun({count: 4, spacing: q('3 in'), wire, twist: 'single'}),
      /to 2 in apart/,
      /double/,
    ],
    ['one fastener', wireRun({count: 1, spacing: q('3 in'), wire}), /make no run/, /2 or more/],
    ['half a fastener', wireRun({count: 2.5, spacing: q('3 in'), wire}), /make no run/, /2 or more/],
    ['no span', wireLength({spans: [], wire}), /no span/, /hole to hole/],
    ['a span of 7 in', wireLength({spans: [q('3 in'), q('7 in')], wire}), /7 in is too long/, /6 in/],
  ])('%s is refused', (_, worked, says, hint) => {
    const {says: said, hint: hinted} = refusal<unknown>(worked);
    expect([said, hinted]).toEqual([expect.stringMatching(says), expect.stringMatching(hint)]);
  });

  test('the length is that of two helices (geometry, by hand): 0.032 in at 8.5 twists, 3 in span', () => {
    const turn = Math.hypot(1 / 8.5, Math.PI * 0.032) * 8.5;
    expect(result(wireLength({spans: [q('3 in')], wire})).value).toBeCloseTo(2 * (3 + 0.625) * turn, 9);
    expect(result(wireLength({spans: [q('1 in')], wire, twist: 'single'})).value).toBeCloseTo(
      1 + 2 * 0.625,
      9,
    );
  });

  test('longer spans and larger heads take more wire, and 24 in is spoken of', () => {
    const of = (spans: readonly string[], head?: string) =>
      out(wireLength({spans: spans.map(q), wire, ...(head ? {head: q(head)} : {})}));
    expect(si(of(['4 in']).result)).toBeGreaterThan(si(of(['3 in']).result));
    expect(si(of(['3 in'], '0.75 in').result)).toBeGreaterThan(si(of(['3 in']).result));
    expect(of(['5 in', '5 in']).advisory).toMatch(/split the run/);
    expect(of(['3 in']).advisory).not.toMatch(/split/);
  });
});

describe('cotter pins', () => {
  // ASME B18.8.1 gauge holes (from memory; the rule, pin plus 1/64 in, read at acamthai.com and sizes.com).
  test.each([
    ['1/32', 0.047],
    ['3/64', 0.062],
    ['1/16', 0.078],
    ['5/64', 0.094],
    ['3/32', 0.109],
    ['7/64', 0.125],
    ['1/8', 0.141],
    ['5/32', 0.172],
    ['3/16', 0.203],
    ['7/32', 0.234],
    ['1/4', 0.266],
  ])('%s in goes in %d in', (name, hole) => {
    const [over = 0, under = 1] = name.split('/').map(Number);
    expect(Math.abs(hole - over / under - 1 / 64)).toBeLessThan(0.0006);
    const found = result(cotterPinFor({hole: quantity(hole, 'in')}));
    expect(valueIn(found.take, 'in')).toBeCloseTo(over / under, 9);
    const smaller = COTTER_PINS.findLast((pin) => pin.inches < over / under);
    if (smaller)
      expect(valueIn(result(cotterPinFor({hole: quantity(hole - 0.002, 'in')})).take, 'in')).toBe(
        smaller.inches,
      );
  });

  // AN310 with AN380 (from memory); sizes.com/tools/cotter_pins.htm (read) names the same bolts for 1/16, 3/32 and 1/8 in.
  test.each([
    ['#10-32', '1/16 in'],
    ['1/4-28', '1/16 in'],
    ['5/16-24', '1/16 in'],
    ['3/8-24', '3/32 in'],
    ['7/16-20', '3/32 in'],
    ['1/2-20', '3/32 in'],
    ['9/16-18', '1/8 in'],
    ['5/8-18', '1/8 in'],
    ['3/4-16', '1/8 in'],
    ['7/8-14', '1/8 in'],
    ['1-12', '1/8 in'],
  ])('%s takes %s', (name, pin) => {
    const found = result(cotterPinFor({thread: thread(name)}));
    expect(si(found.take)).toBeCloseTo(si(q(pin)), 9);
    expect(found.least).toEqual(found.take);
  });

  test('the least pin of every bolt goes through the slots of both standards', () => {
    // BS 1768 Table 3 (boltport.com, read second-hand), least slots; No. 10 is not in it.
    const bs1768 = new Map([
      ['1/4', 0.078],
      ['5/16', 0.094],
      ['3/8', 0.125],
      ['7/16', 0.125],
      ['1/2', 0.156],
      ['9/16', 0.156],
      ['5/8', 0.188],
      ['3/4', 0.188],
      ['7/8', 0.188],
      ['1', 0.25],
    ]);
    for (const {bolt, pin, slot} of COTTER_FOR_BOLT) {
      if (slot) expect(pin).toBeLessThanOrEqual(slot[0]);
      const british = bs1768.get(bolt);
      if (british !== undefined) {
        expect(pin).toBeLessThanOrEqual(british);
        // The inch slot and the British one are one width in two roundings.
        expect(british >= (slot?.[0] ?? 0) && british <= (slot?.[1] ?? 0)).toBe(true);
      }
    }
  });

  test('with the hole, the largest that goes in, no wider than the slot', () => {
    expect(valueIn(result(cotterPinFor({thread: thread('1/2-20'), hole: q('0.141 in')})).take, 'in')).toBe(
      0.125,
    );
    expect(valueIn(result(cotterPinFor({thread: thread('3/8-24'), hole: q('0.172 in')})).take, 'in')).toBe(
      7 / 64,
    );
    expect(
      valueIn(
        result(cotterPinFor({thread: thread('3/8-24'), hole: q('0.172 in'), slot: q('0.16 in')})).take,
        'in',
      ),
    ).toBe(5 / 32);
  });

  test('a pin is judged by its nominal size', () => {
    const choice = result(cotterPinFor({thread: thread('1/2-20'), hole: q('0.109 in')}));
    expect(cotterSuits(q('1/16 in'), choice)).toBe('too thin');
    expect(cotterSuits(q('3/32 in'), choice)).toBe('suits');
    expect(cotterSuits(q('0.094 in'), choice)).toBe('suits');
    expect(cotterSuits(q('1/8 in'), choice)).toBe('too thick');
  });

  test.each([
    ['neither bolt nor hole', cotterPinFor({}), /neither bolt nor hole/],
    [
      'a metric bolt without its hole',
      cotterPinFor({thread: thread('M10')}),
      /no cotter pin is tabled for M10/,
    ],
    ['a hole too small', cotterPinFor({hole: q('0.030 in')}), /no cotter pin goes in a hole of 0\.030 in/],
    [
      'a hole too small for the bolt',
      cotterPinFor({thread: thread('1/2-20'), hole: q('0.078 in')}),
      /1\/16 in, less than the 3\/32 in/,
    ],
    ['a hole in pounds', cotterPinFor({hole: q('3 lb')}), /hole is a mass/],
  ])('%s is refused', (_, worked, says) => expect(refusal(worked).says).toMatch(says));

  test('a metric bolt goes by its hole, and a pin is never used twice', () => {
    const found = out(cotterPinFor({thread: thread('M10'), hole: q('2.8 mm')}));
    expect(valueIn(found.result.take, 'in')).toBe(3 / 32);
    expect(found.result.least).toBeUndefined();
    expect(found.advisory).toMatch(/new pin every time.*never back off/i);
  });
});
