/** Wear limits, gauging strip, bent shafts and rods, core plugs: against the manuals that give them. */
import fc from 'fast-check';
import {describe, expect, test} from 'vitest';
import {quantity} from '../../src/quantity/convert.js';
import {formatAmount, formatQuantity} from '../../src/quantity/format.js';
import {counterbore, plugFit} from '../../src/trade/core-plug.js';
import {STRIPS, stripFor, stripTaper} from '../../src/trade/gauging-strip.js';
import {bentShaft, rodTwist} from '../../src/trade/straightness.js';
import {wearLimit} from '../../src/trade/wear-limit.js';
import {WEAR_RULES} from '../../src/trade/wear-rules.js';
import {amount, q} from '../help/amount.js';
import {refusal, result, valueIn} from './unwrap.js';

describe('wear limits', () => {
  // TM 10-3930-647-14&P (references, 7.2; read, the scan's columns paired by sense). A size of 4 in makes the per-inch rules plain.
  test.each([
    ['sleeve-bore', 0.004],
    ['sleeve-taper', 0.002],
    ['piston', 0.002],
    ['piston-pin', 0.001],
    ['pin-bore', 0.002],
    ['bearing-clearance', 0.002],
    ['journal-out-of-round', 0.0016],
    ['crankshaft-end-play', 0.005],
    ['camshaft-journal', 0.002],
    ['camshaft-end-play', 0.01],
    ['valve-stem', 0.001],
    ['valve-guide', 0.0015],
  ])('%s allows %d in at 4 in', (name, allowed) => {
    expect(valueIn(result(wearLimit(name, q('4 in'))).allowance, 'in')).toBe(allowed);
  });

  test('every rule is checked', () => expect(WEAR_RULES).toHaveLength(12));

  // The same manual: clearance 0.0005 in per inch over the high limit, end play 0.005 in over it.
  test.each([
    ['bearing-clearance', '2.5 in', '0.0030 in', 0.004_25],
    ['crankshaft-end-play', '2.5 in', '0.0070 in', 0.012],
    ['camshaft-journal', '2.0 in', '1.9980 in', 1.997],
  ])('%s at %s with %s when new: %d in', (name, size, limit, worn) => {
    expect(valueIn(result(wearLimit(name, q(size), q(limit))).limit, 'in')).toBe(worn);
  });

  test('in proportion to the size, in any unit', () => {
    fc.assert(
      fc.property(fc.constantFrom(...WEAR_RULES), fc.integer({min: 10, max: 200}), ({name, of}, tenths) => {
        const inches = result(wearLimit(name, quantity(tenths / 10, 'in'))).allowance;
        const metric = result(wearLimit(name, quantity((tenths / 10) * 25.4, 'mm'))).allowance;
        expect(valueIn(metric, 'thou')).toBeCloseTo(valueIn(inches, 'thou'), 6);
        const unit = result(wearLimit(name, q('1 in'))).allowance;
        const factor = of === 'total' ? 1 : tenths / 10;
        expect(valueIn(inches, 'thou')).toBeCloseTo(valueIn(unit, 'thou') * factor, 6);
      }),
    );
  });

  test('a total needs no size, a rule per inch does', () => {
    expect(formatQuantity(result(wearLimit('piston-pin')).allowance)).toBe('0.0010 in');
    expect(refusal(wearLimit('piston')).hint).toContain('diameter');
    expect(refusal(wearLimit('pistn')).hint).toBe('did you mean piston?');
    expect(refusal(wearLimit('piston', q('4 kg'))).says).toContain('a mass');
  });
});

describe('gauging strip', () => {
  // TM 5-2420-222-34, §1-16 (read): inch ranges, and the mm printed beside them.
  test.each([
    ['green', 0.001, 0.003, 0.0254, 0.0762],
    ['red', 0.002, 0.006, 0.0508, 0.1524],
    ['blue', 0.004, 0.009, 0.1016, 0.2286],
  ])('%s reads %d to %d in', (colour, low, high, mmLow, mmHigh) => {
    const reads = STRIPS.find((strip) => strip.colour === colour)?.reads;
    expect([valueIn(reads?.low, 'in'), valueIn(reads?.high, 'in')]).toEqual([low, high]);
    expect([valueIn(reads?.low, 'mm'), valueIn(reads?.high, 'mm')]).toEqual([mmLow, mmHigh]);
  });

  // References, 7.5: the strip must span the whole range; 0.0015–0.0045 wants red.
  test.each([
    ['0.0015–0.0025 in', 'green'],
    ['0.0025–0.0045 in', 'red'],
    ['0.05–0.15 mm', undefined],
    ['0.051–0.15 mm', 'red'],
    ['0.0015–0.0045 in', undefined],
    ['0.004–0.009 in', 'blue'],
    ['0.001–0.009 in', undefined],
    ['max 0.003 in', undefined],
    ['1–2 kg', undefined],
  ])('%s wants %s', (limits, colour) => {
    const worked = stripFor(amount(limits));
    expect(worked.ok ? worked.result.colour : undefined).toBe(colour);
  });

  // TM 10-3930-659-34, §2-24 (read): the difference between the ends is about the taper.
  test('taper', () => {
    expect(valueIn(result(stripTaper(q('0.0020 in'), q('0.0025 in'))), 'thou')).toBe(0.5);
    expect(refusal(stripTaper(q('0 in'), q('0.0025 in'))).says).toContain('above nought');
  });
});

describe('straightness', () => {
  // TM 10-3930-653-14&P, p. 4-37 (read): half of the full-turn reading.
  test('bent shaft', () => {
    expect(valueIn(result(bentShaft(q('0.0030 in'))), 'in')).toBe(0.0015);
    expect(valueIn(result(bentShaft(q('0 mm'))), 'mm')).toBe(0);
    expect(refusal(bentShaft(q('-1 mm'))).says).toContain('nought or more');
  });

  // FAA-H-8083-32, ch. 10 (read): feeler over separation is the twist per inch; TM 10-3930-671-24 (read): 0.002 in over 4 in.
  test('rod twist', () => {
    expect(valueIn(result(rodTwist(q('0.002 in'), q('4 in'))), 'in')).toBe(0.0005);
    expect(valueIn(result(rodTwist(q('0.003 in'), q('6 in'), q('4 in'))), 'in')).toBe(0.002);
    expect(refusal(rodTwist(q('1 in'), q('6 in'))).hint).toContain('units');
    expect(refusal(rodTwist(q('1 N·m'), q('6 in'))).says).toContain('a torque');
  });
});

describe('core plugs', () => {
  // References, 8: interference = OD − bore; a cup must have some, a domed plug none before it is spread.
  test('a cup holds by interference', () => {
    const fit = result(plugFit('cup', amount('1.512–1.516 in'), amount('1.500–1.502 in')));
    expect([fit.kind, valueIn(fit.least, 'in'), valueIn(fit.most, 'in')]).toEqual([
      'interference',
      -0.016,
      -0.01,
    ]);
    expect(refusal(plugFit('cup', amount('1.500 in'), amount('1.500 in'))).says).toContain(
      'nothing would hold it',
    );
    // Two nominal sizes that get mixed up: 1-1/2 and 1-1/8 in.
    expect(refusal(plugFit('cup', amount('1-1/8 in'), amount('1-1/2 in'))).hint).toContain('nominal size');
  });

  test('a domed plug goes in free', () => {
    expect(result(plugFit('domed', amount('1.498 in'), amount('1.500 in'))).kind).toBe('clearance');
    expect(refusal(plugFit('domed', amount('1.501 in'), amount('1.500 in'))).hint).toContain('free');
    expect(refusal(plugFit('domed', amount('1.5 kg'), amount('1.500 in'))).says).toContain('a mass');
  });

  // A plug maker's installation page (references, 8; read): plug upper limit + 0.002 in, 1.5 to 2 thicknesses deep.
  test('counterbore', () => {
    const bore = result(counterbore(amount('1.495–1.500 in'), q('0.060 in')));
    expect(valueIn(bore.diameter, 'in')).toBe(1.502);
    expect(formatAmount(bore.depth)).toBe('0.0900–0.1200 in');
    expect(refusal(counterbore(amount('3 in'), q('0.06 in'))).says).toContain('2.5 in');
    expect(refusal(counterbore(amount('min 1 in'), q('0.06 in'))).says).toContain('upper limit');
  });
});
