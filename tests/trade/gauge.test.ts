/**
 * Gauge capability and guard bands: the ratios and zones of the standards, and that what proves one thing proves no
 * other.
 */
import fc from 'fast-check';
import {describe, expect, test} from 'vitest';
import {quantity} from '../../src/quantity/convert.js';
import {formatAmount} from '../../src/quantity/format.js';
import type {Amount} from '../../src/quantity/model.js';
import {gaugeCapability} from '../../src/trade/gauge-capability.js';
import {guardBand, proves} from '../../src/trade/guard-band.js';
import {amount, q} from '../help/amount.js';
import {out, refusal, result, valueIn} from './unwrap.js';

describe('capability', () => {
  // References, 9: span 0.0010 in, U95 0.0001 in → TUR 5:1, passes 4:1, fails 10:1 (rules from memory; worked out there).
  test('test uncertainty ratio 5:1', () => {
    const found = result(gaugeCapability(amount('2.4990–2.5000 in'), {accuracy: q('0.0001 in')}));
    expect([found.byAccuracy, found.byResolution, found.verdict]).toEqual([5, undefined, 'least']);
  });

  // References, 9: resolution 0.0001 in against a tolerance of 0.0010 in is exactly 10:1.
  test('resolution 10:1', () => {
    const found = result(gaugeCapability(amount('2.4990–2.5000 in'), {resolution: q('0.0001 in')}));
    expect([found.byResolution, found.verdict]).toEqual([10, 'good']);
  });

  test.each([
    ['2.4990–2.5000 in', '0.0005 in', undefined, 2, undefined, 'too-coarse'],
    ['2.4990–2.5000 in', '0.0001 in', '0.0002 in', 10, 2.5, 'too-coarse'],
    ['2.4995 ±0.0005 in', '0.0001 in', '0.00005 in', 10, 10, 'good'],
    ['2.4995 ±0.0005 in', '0.00025 in', undefined, 4, undefined, 'least'],
    ['0.05–0.09 mm', '0.01 mm', '4 µm', 4, 5, 'least'],
    ['80–90 lbf·ft', '1 lbf·ft', undefined, 10, undefined, 'good'],
    ['180–190 °F', '1 °F', '0.5 °F', 10, 10, 'good'],
    ['80–90 °C', '1.8 °F', undefined, 10, undefined, 'good'],
  ])(
    '%s with %s, ±%s: %s by resolution, %s by accuracy, %s',
    (limits, resolution, accuracy, byResolution, byAccuracy, verdict) => {
      const gauge = {resolution: q(resolution), accuracy: accuracy === undefined ? undefined : q(accuracy)};
      expect(result(gaugeCapability(amount(limits), gauge))).toEqual({byResolution, byAccuracy, verdict});
    },
  );

  test('a coarser gauge is never judged better', () => {
    const rank = {good: 2, least: 1, 'too-coarse': 0};
    const step = fc.integer({min: 1, max: 1000});
    fc.assert(
      fc.property(step, step, (a, b) => {
        const [fine, coarse] = [Math.min(a, b), Math.max(a, b)].map((value) =>
          result(gaugeCapability(amount('10–11 mm'), {resolution: quantity(value, 'µm')})),
        );
        expect(rank[fine?.verdict ?? 'good']).toBeGreaterThanOrEqual(rank[coarse?.verdict ?? 'good']);
      }),
    );
  });

  test.each([
    [() => gaugeCapability(amount('max 1 in'), {resolution: q('0.1 in')}), 'one end'],
    [() => gaugeCapability(amount('1–2 in'), {}), 'nothing is said'],
    [() => gaugeCapability(amount('1–2 in'), {resolution: q('1 kg')}), 'a mass'],
    [() => gaugeCapability(amount('1–2 in'), {accuracy: q('0 in')}), 'above nought'],
    [() => gaugeCapability(amount('2 in'), {resolution: q('0.1 in')}), 'one value'],
  ])('%s: %s', (work, says) => {
    expect(refusal(work()).says).toContain(says);
  });
});

describe('guard band', () => {
  // References, 9: limits 2.4990–2.5000 with U = 0.0001 → 2.4991–2.4999 (ISO 14253-1, from memory; worked out there).
  test('2.4990–2.5000 in with ±0.0001 in', () => {
    const found = result(guardBand(amount('2.4990–2.5000 in'), q('0.0001 in')));
    expect(formatAmount(found.accept)).toBe('2.4991–2.4999 in');
    expect(formatAmount(found.reject)).toBe('2.4989–2.5001 in');
  });

  test.each([
    ['2.4991 in', 'conforms'],
    ['2.4999 in', 'conforms'],
    ['2.4990 in', 'not proved'],
    ['2.49895 in', 'not proved'],
    ['2.50005 in', 'not proved'],
    ['2.4988 in', 'does not conform'],
    ['2.5002 in', 'does not conform'],
    ['63.49 mm', 'conforms'],
  ])('%s %s', (reading, proof) => {
    expect(proves(q(reading), result(guardBand(amount('2.4990–2.5000 in'), q('0.0001 in'))))).toBe(proof);
  });

  test('a temperature gauge is a difference, without the 32', () => {
    const found = result(guardBand(amount('180–190 °F'), q('1 °F')));
    expect([valueIn(found.accept.low, '°F'), valueIn(found.accept.high, '°F')]).toEqual([181, 189]);
    const mixed = result(guardBand(amount('80–90 °C'), q('1.8 °F')));
    expect(valueIn(mixed.accept.low, '°C')).toBe(81);
  });

  /** Limits in µm and an uncertainty that leaves something. */
  const zone = fc
    .record({
      low: fc.integer({min: 1000, max: 5000}),
      width: fc.integer({min: 3, max: 500}),
      part: fc.double({min: 0, max: 0.49, noNaN: true}),
    })
    .map(({low, width, part}) => ({low, high: low + width, guard: Math.floor(width * part)}));

  test('a part within its limits is never rejected, one outside never accepted, for any error within the uncertainty', () => {
    fc.assert(
      fc.property(
        zone,
        fc.integer({min: 900, max: 5600}),
        fc.double({min: -1, max: 1, noNaN: true}),
        ({low, high, guard}, size, error) => {
          fc.pre(guard * 2 < high - low);
          const limits: Amount = {form: 'range', low: quantity(low, 'µm'), high: quantity(high, 'µm')};
          const band = result(guardBand(limits, quantity(guard, 'µm')));
          const proof = proves(quantity(size + guard * error, 'µm'), band);
          expect(proof).not.toBe(size >= low && size <= high ? 'does not conform' : 'conforms');
        },
      ),
    );
  });

  test('without uncertainty a reading always proves one or the other', () => {
    const band = result(guardBand(amount('2–3 mm'), q('0 mm')));
    fc.assert(
      fc.property(fc.integer({min: 1000, max: 4000}), (size) => {
        expect(proves(quantity(size, 'µm'), band)).toBe(
          size >= 2000 && size <= 3000 ? 'conforms' : 'does not conform',
        );
      }),
    );
  });

  test.each([
    [() => guardBand(amount('2.0–2.1 mm'), q('0.05 mm')), 'whole tolerance'],
    [() => guardBand(amount('min 2 mm'), q('0.05 mm')), 'one end'],
    [() => guardBand(amount('2.0–2.1 mm'), q('0.05 kg')), 'a mass'],
    [() => guardBand(amount('2.0–2.1 mm'), q('-0.01 mm')), 'nought or more'],
  ])('%s: %s', (work, says) => {
    expect(refusal(work()).says).toContain(says);
  });

  test('the later edition is named', () => {
    expect(out(guardBand(amount('2–3 mm'), q('0.1 mm'))).advisory).toContain('2017');
  });
});
