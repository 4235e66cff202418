/** Torque and preload against worked examples and published tables, and the laws that they must keep. */
import fc from 'fast-check';
import {describe, expect, test} from 'vitest';
import {quantity, si} from '../../src/quantity/convert.js';
import {frictionOf, scatterOf} from '../../src/trade/friction.js';
import {jointStiffness} from '../../src/trade/joint-stiffness.js';
import type {ThreadCondition, TighteningMethod} from '../../src/trade/nut-factors.js';
import {longFormTorque, preloadOf, torqueFor} from '../../src/trade/preload.js';
import {tensileStressArea} from '../../src/trade/stress-area.js';
import {torqueThenAngle} from '../../src/trade/torque-angle.js';
import {q} from '../help/amount.js';
import {grade, thread} from './fasteners.js';
import {out, refusal, result, valueIn} from './unwrap.js';

describe('published examples', () => {
  test('Shigley 9th ed., Example 8-3, p. 439 (inputs and stress read, torques from memory): 3/4-16 UNF at 25 kip', () => {
    const of = thread('3/4-16 UNF');
    const preload = q('25 kip');
    const short = result(torqueFor({thread: of, friction: 0.2, preload}));
    expect(valueIn(short, 'lbf·in')).toBeCloseTo(3750, 6);
    const stress = result(preloadOf({thread: of, torque: short, friction: 0.2})).stress;
    expect(Math.abs(valueIn(stress, 'ksi') - 67.02)).toBeLessThan(0.05);
    const long = result(longFormTorque({thread: of, preload, threadFriction: 0.15, faceFriction: 0.15}));
    expect(Math.abs(valueIn(long, 'lbf·in') - 3551)).toBeLessThan(1);
  });

  test('Shigley 9th ed., Example 8-4, p. 443 (read): 5/8-11, stiffness and recommended preload', () => {
    const of = thread('5/8-11 UNC');
    const joint = result(
      jointStiffness({thread: of, grip: q('1.5 in'), shank: q('0.75 in'), memberModulus: q('14000 ksi')}),
    );
    const megaPoundPerInch = 4.448_221_615_260_5e6 / 0.0254;
    expect(joint.bolt / megaPoundPerInch).toBeCloseTo(5.21, 2);
    expect(joint.members / megaPoundPerInch).toBeCloseTo(8.95, 2);
    expect(joint.share).toBeCloseTo(0.368, 3);
    const torque = result(torqueFor({thread: of, friction: 0.2, grade: grade('5', of)}));
    const preload = result(preloadOf({thread: of, torque, friction: 0.2})).force;
    expect(valueIn(preload, 'lbf') / 1000).toBeCloseTo(14.4, 1);
  });

  // J. A. Speck, Mechanical Fastening, Joining, and Assembly, p. 85 (read): d = 0.190 in, P = 1275 lbf.
  test.each([
    [0.3, 72.7],
    [0.25, 60.6],
    [0.2, 48.5],
    [0.15, 36.3],
    [0.1, 24.2],
  ])('Speck p. 85: K = %d gives %d lbf·in', (friction, inchPounds) => {
    const torque = result(torqueFor({thread: thread('#10-32'), friction, preload: q('1275 lbf')}));
    expect(Math.abs(valueIn(torque, 'lbf·in') - inchPounds)).toBeLessThan(0.06);
  });

  test('85 lbf·ft on 7/16-20 with K = 0.18 is 128 % of the proof load of grade 5', () => {
    const of = thread('7/16-20');
    const found = result(
      preloadOf({thread: of, torque: q('85 lbf·ft'), friction: 0.18, grade: grade('SAE 5', of)}),
    );
    expect(Math.round(found.ofProof?.likely ?? 0)).toBe(128);
    expect(valueIn(found.force, 'lbf')).toBeCloseTo(12_952, 0);
    expect([found.ofProof?.low, found.ofProof?.high].map((one) => Math.round(one ?? 0))).toEqual([96, 160]);
  });
});

/** A fastener supplier's table, coxhardware.com/t-bolt-torque.aspx (read): grade 2, 75 % of proof, K = 0.20: lbf and lbf·ft. */
const TABLE_C: readonly (readonly [string, number, number])[] = [
  ['1/4-20', 1312, 5.4],
  ['1/4-28', 1502, 6.3],
  ['5/16-18', 2162, 11.5],
  ['5/16-24', 2397, 12.5],
  ['3/8-16', 3197, 20.0],
  ['3/8-24', 3622, 22.6],
  ['7/16-14', 4385, 32.0],
  ['7/16-20', 4896, 35.7],
  ['1/2-13', 5853, 48.8],
  ['1/2-20', 6600, 55.0],
  ['9/16-12', 7508, 70.4],
  ['9/16-18', 8374, 78.5],
  ['5/8-11', 9323, 97.1],
  ['5/8-18', 10_560, 110],
  ['3/4-10', 13_778, 172],
  ['3/4-16', 15_366, 192],
];

/** Worked out apart from this project from Shigley's areas: 75 % of proof, lbf; torque at K 0.20 and 0.15, lbf·ft. */
const TABLE_D: readonly (readonly [string, string, number, number, number])[] = [
  ['5', '1/4-20', 2027, 8.45, 6.34],
  ['8', '1/4-20', 2862, 11.92, 8.94],
  ['5', '5/16-18', 3340, 17.4, 13.05],
  ['8', '5/16-18', 4716, 24.56, 18.42],
  ['5', '5/16-24', 3698, 19.26, 14.44],
  ['8', '5/16-24', 5220, 27.19, 20.39],
  ['5', '3/8-16', 4941, 30.88, 23.16],
  ['8', '3/8-16', 6975, 43.59, 32.7],
  ['5', '3/8-24', 5597, 34.98, 26.24],
  ['8', '3/8-24', 7902, 49.39, 37.04],
  ['5', '7/16-14', 6777, 49.41, 37.06],
  ['8', '7/16-14', 9567, 69.76, 52.32],
  ['5', '7/16-20', 7567, 55.18, 41.38],
  ['8', '7/16-20', 10_683, 77.9, 58.42],
  ['5', '1/2-13', 9046, 75.38, 56.54],
  ['8', '1/2-13', 12_771, 106.43, 79.82],
  ['5', '1/2-20', 10_194, 84.95, 63.71],
  ['8', '1/2-20', 14_391, 119.92, 89.94],
  ['5', '5/8-11', 14_408, 150.08, 112.56],
  ['8', '5/8-11', 20_340, 211.88, 158.91],
];

describe('published tables', () => {
  test.each(TABLE_C)('grade 2, %s: %d lbf, %d lbf·ft', (name, force, torque) => {
    const of = thread(name);
    const found = result(torqueFor({thread: of, friction: 0.2, grade: grade('2', of)}));
    const preload = result(preloadOf({thread: of, torque: found, friction: 0.2})).force;
    expect(Math.abs(valueIn(preload, 'lbf') / force - 1)).toBeLessThan(0.003);
    // The table rounds its smallest torques: 5/16-18 is 2.05 % off.
    expect(Math.abs(valueIn(found, 'lbf·ft') / torque - 1)).toBeLessThan(0.021);
  });

  test.each(TABLE_D)('grade %s, %s: %d lbf', (name, of, force, dry, oiled) => {
    const on = thread(of);
    const at = (friction: number): number =>
      valueIn(result(torqueFor({thread: on, friction, grade: grade(name, on)})), 'lbf·ft');
    expect(Math.abs(at(0.2) / dry - 1)).toBeLessThan(0.0025);
    expect(Math.abs(at(0.15) / oiled - 1)).toBeLessThan(0.0025);
    const preload = result(preloadOf({thread: on, torque: quantity(at(0.2), 'lbf·ft'), friction: 0.2})).force;
    expect(Math.abs(valueIn(preload, 'lbf') / force - 1)).toBeLessThan(0.0025);
  });
});

/** FAA AC 43.13-1B (9/8/98) Table 7-1 (read): tension nuts, lbf·in from … to at 40 ksi, most at 90 ksi. */
const AC_43_13: readonly (readonly [string, number, number, number])[] = [
  ['8-36 UNF', 12, 15, 20],
  ['10-32 UNF', 20, 25, 40],
  ['1/4-28 UNF', 50, 70, 100],
  ['5/16-24 UNF', 100, 140, 225],
  ['3/8-24 UNF', 160, 190, 390],
  ['7/16-20 UNF', 450, 500, 840],
  ['1/2-20 UNF', 480, 690, 1100],
  ['9/16-18 UNF', 800, 1000, 1600],
  ['5/8-18 UNF', 1100, 1300, 2400],
  ['3/4-16 UNF', 2300, 2500, 5000],
  ['7/8-14 UNF', 2500, 3000, 7000],
  ['1-14 UNS', 3700, 5500, 10_000],
  ['1-1/8-12 UNF', 5000, 7000, 15_000],
  ['1-1/4-12 UNF', 9000, 11_000, 25_000],
  ['8-32 UNC', 12, 15, 20],
  ['10-24 UNC', 20, 25, 35],
  ['1/4-20 UNC', 40, 50, 75],
  ['5/16-18 UNC', 80, 90, 160],
  ['3/8-16 UNC', 160, 185, 275],
  ['7/16-14 UNC', 235, 255, 475],
  ['1/2-13 UNC', 400, 480, 880],
  ['9/16-12 UNC', 500, 700, 1100],
  ['5/8-11 UNC', 700, 900, 1500],
  ['3/4-10 UNC', 1150, 1600, 2500],
  ['7/8-9 UNC', 2200, 3000, 4600],
];

describe('AC 43.13-1B Table 7-1', () => {
  // 7/16-20 and 3/4-16 stand out in the source itself; they are in the band all the same.
  test.each(AC_43_13)(
    '%s: the nut factor that its torques imply is in the range accepted',
    (name, low, high, most) => {
      const of = thread(name);
      const {squareMetres} = result(tensileStressArea(of));
      const implied = (inchPounds: number, ksi: number): number =>
        si(quantity(inchPounds, 'lbf·in')) / (si(quantity(ksi, 'ksi')) * squareMetres * si(of.diameter));
      for (const k of [implied(low, 40), implied(high, 40), implied(most, 90)]) {
        expect(k).toBeGreaterThan(0.09);
        expect(k).toBeLessThan(0.25);
        expect('ok' in frictionOf(k)).toBe(false);
      }
    },
  );

  test('the middle of its torques lies about the published factor for cadmium plate', () => {
    const factors = AC_43_13.map(([name, low, high]) => {
      const of = thread(name);
      const {squareMetres} = result(tensileStressArea(of));
      return (
        si(quantity((low + high) / 2, 'lbf·in')) / (si(quantity(40, 'ksi')) * squareMetres * si(of.diameter))
      );
    });
    const mean = factors.reduce((sum, one) => sum + one, 0) / factors.length;
    const friction = frictionOf('cadmium-plated');
    expect('ok' in friction ? 0 : friction.nutFactor).toBe(0.16);
    expect(mean).toBeCloseTo(0.16, 1);
  });
});

describe('friction and scatter as published', () => {
  // Shigley Table 8-15 p. 439 (read); Bickford & Nassar ch. 2 Table 1, Mott, IFI (read second-hand); NASA (from memory).
  test.each<[ThreadCondition, number, number, number]>([
    ['dry', 0.2, 0.2, 0.3],
    ['oiled', 0.18, 0.11, 0.18],
    ['zinc-plated', 0.2, 0.2, 0.295],
    ['cadmium-plated', 0.16, 0.16, 0.2],
    ['anti-seize', 0.12, 0.12, 0.12],
    ['not stated', 0.2, 0.2, 0.2],
  ])('%s: K = %d, published %d to %d', (condition, taken, low, high) => {
    const friction = frictionOf(condition);
    expect(friction).toMatchObject({nutFactor: taken, published: {low, high}});
  });

  // Machinery's Handbook and the NSTS 08307 family, as reproduced at docsbay.net (read second-hand).
  test.each<[TighteningMethod, ThreadCondition | undefined, number]>([
    ['feel', undefined, 0.35],
    ['torque wrench', undefined, 0.25],
    ['torque wrench', 'oiled', 0.25],
    ['torque wrench', 'cadmium-plated', 0.3],
    ['torque wrench', 'dry', 0.35],
    ['turn of nut', 'dry', 0.15],
    ['indicating washer', undefined, 0.1],
    ['bolt stretch', undefined, 0.05],
    ['ultrasonic', undefined, 0.1],
  ])('%s (%s): ±%d', (method, condition, fraction) => {
    expect(scatterOf(method, condition).fraction).toBe(fraction);
  });

  test('a disagreement of the sources is said, and a stated factor is not doubted', () => {
    const of = thread('1/2-13');
    expect(out(preloadOf({thread: of, torque: q('50 lbf·ft'), friction: 'oiled'})).advisory).toMatch(
      /published from 0\.11 to 0\.18/,
    );
    expect(out(preloadOf({thread: of, torque: q('50 lbf·ft'), friction: 0.15})).advisory).not.toMatch(
      /published/,
    );
  });
});

describe('refusals', () => {
  const of = thread('1/2-13');
  test.each([
    [
      'a mass for a torque',
      preloadOf({thread: of, torque: q('85 lb'), friction: 0.2}),
      /torque is a mass/,
      /lbf·ft/,
    ],
    ['no torque', preloadOf({thread: of, torque: q('0 N·m'), friction: 0.2}), /above nought/, /check/],
    [
      'a nut factor of ten',
      preloadOf({thread: of, torque: q('85 N·m'), friction: 10}),
      /outside 0\.09 to 0\.35/,
      /oiled/,
    ],
    [
      'a nut factor that is no number',
      preloadOf({thread: of, torque: q('85 N·m'), friction: Number.NaN}),
      /outside/,
      /dry/,
    ],
    [
      'nothing left',
      preloadOf({thread: of, torque: q('5 N·m'), friction: 0.2, prevailing: q('6 N·m')}),
      /takes all/,
      /added/,
    ],
    ['neither preload nor grade', torqueFor({thread: of, friction: 0.2}), /neither/, /one of them/],
    [
      'more than the proof load',
      torqueFor({thread: of, friction: 0.2, grade: grade('5', of), share: 1.2}),
      /outside 0 to 1/,
      /0\.75/,
    ],
    [
      'friction of 2',
      longFormTorque({thread: of, preload: q('5 kN'), threadFriction: 2, faceFriction: 0.1}),
      /0\.03 to 0\.4/,
      /0\.12/,
    ],
    [
      'a shank longer than the grip',
      jointStiffness({thread: of, grip: q('1 in'), shank: q('2 in')}),
      /longer than the grip/,
      /count only/,
    ],
  ])('%s', (_, worked, says, hint) => {
    const {says: said, hint: hinted} = refusal<unknown>(worked);
    expect([said, hinted]).toEqual([expect.stringMatching(says), expect.stringMatching(hint)]);
  });
});

describe('laws', () => {
  const threads = fc
    .constantFrom('1/4-20', '3/8-24', '7/16-20', '1/2-13', 'M6', 'M10', 'M12×1.25')
    .map(thread);
  const factors = fc.double({min: 0.1, max: 0.3, noNaN: true});
  const torques = fc.double({min: 1, max: 300, noNaN: true}).map((value) => quantity(value, 'N·m'));

  test('torque to preload and back is the torque', () => {
    fc.assert(
      fc.property(threads, factors, torques, (of, friction, torque) => {
        const preload = result(preloadOf({thread: of, torque, friction})).force;
        const back = result(torqueFor({thread: of, friction, preload}));
        expect(si(back) / si(torque)).toBeCloseTo(1, 9);
      }),
    );
  });

  test('preload is in proportion to torque, falls with friction, and lies within its band', () => {
    fc.assert(
      fc.property(threads, factors, torques, (of, friction, torque) => {
        const once = result(preloadOf({thread: of, torque, friction}));
        const twice = result(preloadOf({thread: of, torque: {...torque, value: 2 * torque.value}, friction}));
        const slicker = result(preloadOf({thread: of, torque, friction: friction - 0.005}));
        expect(si(twice.force) / si(once.force)).toBeCloseTo(2, 9);
        expect(si(slicker.force)).toBeGreaterThan(si(once.force));
        expect(si(once.low) < si(once.force) && si(once.force) < si(once.high)).toBe(true);
      }),
    );
  });

  test('the unit of the torque makes no difference', () => {
    const inPounds = result(preloadOf({thread: thread('1/2-13'), torque: q('1020 lbf·in'), friction: 0.2}));
    const inFeet = result(preloadOf({thread: thread('1/2-13'), torque: q('85 lbf·ft'), friction: 0.2}));
    expect(inPounds.force).toEqual(inFeet.force);
  });

  test('prevailing torque makes no preload', () => {
    const of = thread('3/8-24');
    const with5 = result(preloadOf({thread: of, torque: q('35 N·m'), friction: 0.2, prevailing: q('5 N·m')}));
    expect(with5.force).toEqual(result(preloadOf({thread: of, torque: q('30 N·m'), friction: 0.2})).force);
  });
});

describe('torque then angle', () => {
  const of = thread('M10');
  const inputs = {
    thread: of,
    torque: q('30 N·m'),
    friction: 0.18,
    grip: q('60 mm'),
    grade: grade('10.9', of),
  } as const;

  test('no angle is the torque alone; what the angle gives is in proportion to it', () => {
    const at = (degrees: number) => result(torqueThenAngle({...inputs, angle: quantity(degrees, '°')}));
    const alone = result(preloadOf({thread: of, torque: inputs.torque, friction: 0.18})).force;
    expect(si(at(0.000_01).force) / si(alone)).toBeCloseTo(1, 5);
    expect(si(at(40).byAngle) / si(at(20).byAngle)).toBeCloseTo(2, 9);
    expect(si(at(20).force)).toBeCloseTo(si(at(20).byTorque) + si(at(20).byAngle), 3);
  });

  test('the angle part is the stretch over both springs in series', () => {
    const joint = result(jointStiffness({thread: of, grip: q('60 mm')}));
    const series = 1 / (1 / joint.bolt + 1 / joint.members);
    const found = result(torqueThenAngle({...inputs, angle: q('36°')}));
    expect(si(found.byAngle)).toBeCloseTo(0.1 * 0.0015 * series, 3);
  });

  test('a longer grip is springier', () => {
    const at = (grip: string) =>
      si(result(torqueThenAngle({...inputs, grip: q(grip), angle: q('30°')})).byAngle);
    expect(at('120 mm')).toBeLessThan(at('60 mm'));
  });

  test('beyond yield it says so', () => {
    const far = out(torqueThenAngle({...inputs, angle: q('90°')}));
    expect(far.result.ofYield?.likely).toBeGreaterThan(100);
    expect(far.advisory).toMatch(/used once/);
    const near = out(torqueThenAngle({...inputs, angle: q('10°')}));
    expect(near.advisory).not.toMatch(/yield/i);
  });

  test('an angle is due, not a torque', () => {
    expect(refusal(torqueThenAngle({...inputs, angle: q('90 N·m')})).says).toMatch(/angle is a torque/);
  });
});
