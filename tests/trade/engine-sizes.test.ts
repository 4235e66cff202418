/** Ring gap, valve lash, end play, compression and deck height: rules of the manuals, geometry, and a unit library. */
import fc from 'fast-check';
import {unit as measure} from 'mathjs';
import {describe, expect, test} from 'vitest';
import {quantity} from '../../src/quantity/convert.js';
import {formatAmount, formatQuantity} from '../../src/quantity/format.js';
import {type Cylinder, chamberFor, compressionRatio} from '../../src/trade/compression-ratio.js';
import {deckHeight} from '../../src/trade/deck-height.js';
import {endPlay, thrustWasher} from '../../src/trade/end-play.js';
import {gapInBore, ringGap} from '../../src/trade/ring-gap.js';
import {screwTurn, shimFor} from '../../src/trade/valve-lash.js';
import {amount, q} from '../help/amount.js';
import {out, refusal, result, valueIn} from './unwrap.js';

describe('ring gap', () => {
  // References, 7.6 (rule of thumb, from memory): 0.003 to 0.004 in per inch; a 4.000 in bore at 0.0035 is 0.0140 in.
  test('4.000 in', () => {
    const worked = out(ringGap(q('4.000 in')));
    expect(formatAmount(worked.result)).toBe('0.0120–0.0160 in');
    expect((valueIn(worked.result.low, 'in') + valueIn(worked.result.high, 'in')) / 2).toBeCloseTo(0.014, 12);
    expect(worked.advisory).toContain('estimate');
  });

  test('in proportion to the bore, in any unit', () => {
    fc.assert(
      fc.property(fc.integer({min: 1000, max: 9000}), (thou) => {
        const inches = result(ringGap(quantity(thou / 1000, 'in')));
        const metric = result(ringGap(quantity((thou / 1000) * 25.4, 'mm')));
        expect(valueIn(inches.low, 'in') / (thou / 1000)).toBeCloseTo(0.003, 9);
        expect(valueIn(metric.high, 'mm')).toBeCloseTo(valueIn(inches.high, 'mm'), 6);
      }),
    );
  });

  // TM 5-3805-261-34 (read): 0.003 in of gap for 0.001 in of bore, exactly π.
  test('0.001 in of bore is 0.003 in of gap', () => {
    const opened = result(gapInBore(q('0.014 in'), q('4.000 in'), q('4.001 in')));
    expect(valueIn(opened, 'in')).toBeCloseTo(0.014 + Math.PI / 1000, 9);
    expect(formatQuantity(result(gapInBore(q('0.0140 in'), q('4.000 in'), q('4.001 in'))))).toBe('0.0171 in');
  });

  // References, 7.6: +0.030 in with the same ring, +0.0942 in. TM 5-3825-229-14&P: 0.001 in smaller, 0.0031 in less.
  test.each([
    ['4.030 in', 0.0942],
    ['3.999 in', -0.0031],
  ])('a bore of %s changes the gap by %d in', (bore, change) => {
    const opened = result(gapInBore(q('0.0140 in'), q('4.000 in'), q(bore)));
    expect(valueIn(opened, 'in') - 0.014).toBeCloseTo(change, 4);
  });

  test('there and back', () => {
    const bore = fc.integer({min: 80_000, max: 80_500}).map((microns) => quantity(microns / 1000, 'mm'));
    fc.assert(
      fc.property(bore, bore, (one, other) => {
        const there = result(gapInBore(q('2.000 mm'), one, other));
        expect(valueIn(result(gapInBore(there, other, one)), 'mm')).toBeCloseTo(2, 6);
      }),
    );
  });

  test.each([
    [() => gapInBore(q('0.001 in'), q('4.000 in'), q('3.990 in')), 'butt'],
    [() => gapInBore(q('0.001 kg'), q('4.000 in'), q('3.990 in')), 'a mass'],
    [() => ringGap(q('-4 in')), 'above nought'],
  ])('%s: %s', (work, says) => expect(refusal<unknown>(work()).says).toContain(says));
});

describe('valve lash', () => {
  // Geometry: a 24 pitch screw moves 1/24 in a turn; 0.005 in at the valve is 0.005/1.5 in at the screw: 28.8°.
  test('turn of a screw at the pushrod', () => {
    const turn = result(screwTurn(q('0.017 in'), q('0.012 in'), quantity(1 / 24, 'in'), 1.5));
    expect(valueIn(turn, '°')).toBeCloseTo(28.8, 6);
    expect(
      valueIn(result(screwTurn(q('0.012 in'), q('0.017 in'), quantity(1 / 24, 'in'), 1.5)), '°'),
    ).toBeCloseTo(-28.8, 6);
  });

  test('a whole pitch is a whole turn', () => {
    expect(valueIn(result(screwTurn(q('1.25 mm'), q('0.25 mm'), q('1 mm'))), 'turn')).toBe(1);
  });

  // Common practice: new shim = old shim + lash found − lash wanted.
  test('shim', () => {
    expect(formatQuantity(result(shimFor(q('0.35 mm'), q('0.25 mm'), q('2.60 mm'))))).toBe('2.700 mm');
    expect(valueIn(result(shimFor(q('0.010 in'), q('0.016 in'), q('0.100 in'), 1.5)), 'in')).toBeCloseTo(
      0.096,
      9,
    );
  });

  test('the shim that is right already stays', () => {
    fc.assert(
      fc.property(fc.integer({min: 1, max: 50}), fc.integer({min: 100, max: 400}), (lash, shim) => {
        const [found, present] = [quantity(lash / 100, 'mm'), quantity(shim / 100, 'mm')];
        expect(valueIn(result(shimFor(found, found, present)), 'mm')).toBeCloseTo(shim / 100, 9);
        expect(valueIn(result(screwTurn(found, found, present)), '°')).toBe(0);
      }),
    );
  });

  test.each([
    [() => screwTurn(q('0.01 in'), q('0.01 in'), q('0 in')), 'above nought'],
    [() => screwTurn(q('0.01 in'), q('0.01 in'), q('0.05 in'), 9), 'rocker ratio'],
    [() => screwTurn(q('0.01 in'), q('0.01 s'), q('0.05 in')), 'a time'],
    [() => shimFor(q('0.01 in'), q('0.09 in'), q('0.05 in')), 'not that much'],
    [() => shimFor(q('0.01 in'), q('0.09 in'), q('0.05 in'), 0), 'rocker ratio'],
  ])('%s: %s', (work, says) => expect(refusal<unknown>(work()).says).toContain(says));
});

describe('end play', () => {
  test('from the lengths', () => {
    const play = result(endPlay(amount('1.6250–1.6270 in'), amount('1.6190–1.6210 in')));
    expect([formatQuantity(play.least), formatQuantity(play.most)]).toEqual(['0.0040 in', '0.0080 in']);
  });

  // TM 10-3930-653-14&P, p. 4-37 (read): end play of one small engine 0.0020 to 0.0071 in.
  test('the washer nearest to the middle of the limits', () => {
    const set = ['0.091 in', '0.093 in', '0.095 in'].map(q);
    const found = result(thrustWasher(q('0.0090 in'), amount('0.0020–0.0071 in'), q('0.0910 in'), set));
    expect([formatQuantity(found.washer), formatQuantity(found.play)]).toEqual(['0.095 in', '0.0050 in']);
  });

  test('what is chosen is within the limits, and no other is nearer to their middle', () => {
    const washer = fc.integer({min: 2000, max: 2200}).map((microns) => quantity(microns / 1000, 'mm'));
    fc.assert(
      fc.property(
        fc.integer({min: 0, max: 400}),
        washer,
        fc.array(washer, {minLength: 1, maxLength: 6}),
        (play, present, set) => {
          const worked = thrustWasher(quantity(play / 1000, 'mm'), amount('0.10–0.20 mm'), present, set);
          const gives = set.map((one) => play / 1000 - (one.value - present.value));
          const fit = gives.filter((one) => one >= 0.1 - 1e-9 && one <= 0.2 + 1e-9);
          expect(worked.ok).toBe(fit.length > 0);
          const best = Math.min(...fit.map((one) => Math.abs(one - 0.15)));
          if (worked.ok) expect(Math.abs(valueIn(worked.result.play, 'mm') - 0.15)).toBeCloseTo(best, 9);
        },
      ),
    );
  });

  test.each([
    [() => endPlay(amount('1.60 in'), amount('1.62 in')), 'locked endways'],
    [() => endPlay(amount('1.60 in'), amount('1.62 kg')), 'a mass'],
    [() => thrustWasher(q('0.2 mm'), amount('0.1–0.2 mm'), q('2 mm'), []), 'no washer'],
    [() => thrustWasher(q('0.9 mm'), amount('0.1–0.2 mm'), q('2 mm'), [q('2.1 mm')]), 'no washer of the set'],
    [() => thrustWasher(q('0.9 mm'), amount('max 0.2 mm'), q('2 mm'), [q('2.1 mm')]), 'one end'],
  ])('%s: %s', (work, says) => expect(refusal<unknown>(work()).says).toContain(says));

  test('pairs that could have none at all are warned of', () => {
    expect(out(endPlay(amount('1.620–1.630 in'), amount('1.622–1.625 in'))).advisory).toContain(
      'no end play',
    );
  });
});

/** An invented cylinder. */
const CYLINDER: Cylinder = {
  bore: q('4.000 in'),
  stroke: q('3.480 in'),
  chamber: q('64 cc'),
  dish: q('5 cc'),
  deck: q('0.025 in'),
  gasket: {bore: q('4.100 in'), thickness: q('0.040 in')},
};

describe('compression', () => {
  // Geometry, the volumes worked out by a general-purpose unit library (mathjs): π/4 · d² · h.
  test('volumes as mathjs has them', () => {
    const disc = (diameter: number, height: number) =>
      measure((Math.PI / 4) * diameter ** 2 * height, 'in^3').toNumber('cm^3');
    const swept = disc(4, 3.48);
    const clearance = 64 + 5 + disc(4, 0.025) + disc(4.1, 0.04);
    const found = result(compressionRatio(CYLINDER));
    expect(valueIn(found.swept, 'cc')).toBeCloseTo(swept, 6);
    expect(valueIn(found.clearance, 'cc')).toBeCloseTo(clearance, 6);
    expect(found.ratio).toBeCloseTo((swept + clearance) / clearance, 9);
    expect(found.ratio).toBeCloseTo(9.65, 2);
  });

  // A bore and stroke of 100 mm sweep π/4 L; with a quarter of that above it the ratio is 5.
  test('a plain case by hand', () => {
    const quarter = quantity((Math.PI / 16) * 1000, 'cc');
    const found = result(compressionRatio({bore: q('100 mm'), stroke: q('100 mm'), chamber: quarter}));
    expect(found.ratio).toBeCloseTo(5, 9);
    expect(valueIn(found.swept, 'L')).toBeCloseTo(Math.PI / 4, 9);
  });

  test('a dome raises, a dish, deck and gasket lower the ratio', () => {
    const {ratio} = result(compressionRatio(CYLINDER));
    const changed = [
      {dish: q('-5 cc')},
      {dish: q('9 cc')},
      {deck: q('0.040 in')},
      {gasket: {bore: q('4.1 in'), thickness: q('0.060 in')}},
    ];
    const signs = changed.map((change) =>
      Math.sign(result(compressionRatio({...CYLINDER, ...change})).ratio - ratio),
    );
    expect(signs).toEqual([1, -1, -1, -1]);
  });

  test('the chamber for a ratio gives that ratio', () => {
    fc.assert(
      fc.property(fc.integer({min: 50, max: 120}), (tenths) => {
        const chamber = result(chamberFor(tenths / 10, CYLINDER));
        expect(result(compressionRatio({...CYLINDER, chamber})).ratio).toBeCloseTo(tenths / 10, 6);
      }),
    );
  });

  test.each([
    [() => compressionRatio({...CYLINDER, chamber: q('64 in')}), 'a length'],
    [() => compressionRatio({...CYLINDER, dish: q('-90 cc')}), 'no volume'],
    [() => compressionRatio({...CYLINDER, chamber: q('64 L')}), 'cannot be right'],
    [() => compressionRatio({...CYLINDER, bore: q('0 in')}), 'above nought'],
    [() => chamberFor(60, CYLINDER), 'cannot be right'],
    [() => chamberFor(25, {...CYLINDER, dish: q('60 cc')}), 'no room'],
    [() => chamberFor(9, {...CYLINDER, stroke: q('3 s')}), 'a time'],
  ])('%s: %s', (work, says) => expect(refusal<unknown>(work()).says).toContain(says));
});

describe('deck height', () => {
  const block = {block: q('9.025 in'), stroke: q('3.480 in'), rod: q('5.700 in'), piston: q('1.560 in')};

  // Geometry, by hand: 9.025 − 1.740 − 5.700 − 1.560 = 0.025 in; with a 0.040 in gasket 0.065 in.
  test('deck clearance and squish', () => {
    const deck = result(deckHeight({...block, gasket: q('0.040 in')}));
    expect([formatQuantity(deck.clearance), deck.squish && formatQuantity(deck.squish)]).toEqual([
      '0.0250 in',
      '0.0650 in',
    ]);
    expect(result(deckHeight(block)).squish).toBeUndefined();
  });

  test('a piston may stand proud of the deck, but not through the gasket', () => {
    const proud = result(deckHeight({...block, piston: q('1.590 in'), gasket: q('0.040 in')}));
    expect(valueIn(proud.clearance, 'in')).toBeCloseTo(-0.005, 9);
    expect(refusal(deckHeight({...block, piston: q('1.590 in'), gasket: q('0.004 in')})).says).toContain(
      'strike',
    );
  });

  test('a longer rod raises the piston by as much', () => {
    fc.assert(
      fc.property(fc.integer({min: 0, max: 300}), (tenths) => {
        const longer = result(deckHeight({...block, rod: quantity(5.7 + tenths / 10_000, 'in', 0.0001)}));
        expect(valueIn(longer.clearance, 'in')).toBeCloseTo(0.025 - tenths / 10_000, 9);
      }),
    );
  });

  test.each([
    [() => deckHeight({...block, rod: q('5.7 mm')}), 'do not belong'],
    [() => deckHeight({...block, rod: q('5.7 kg')}), 'a mass'],
  ])('%s: %s', (work, says) => expect(refusal(work()).says).toContain(says));
});
