/**
 * What a wrench is told to be good for, line for line, with its adapter or without; bands by hand: T / (1 + a) to
 * T / (1 − a).
 */
import {describe, expect, test} from 'vitest';
import {quantity} from '../../src/quantity/convert.js';
import {appliedTorque, readAccuracy} from '../../src/trade/wrench.js';
import {amount, q} from '../help/amount.js';
import {asked, refused, told, working} from './ask.js';
import {result} from './unwrap.js';

test.each([
  [
    {accuracy: 'the accuracy of a wrench that nobody knows'},
    '"the accuracy of a wrench that " does not say how accurate the wrench is; write class A, type I class B or ±4 %',
  ],
  [
    {range: 'min 20 lbf·ft'},
    'the range of the wrench has no upper end; write 20–150 lbf·ft or max 150 lbf·ft',
  ],
])('%j is refused', (texts, says) => expect(refused(asked('wrench', texts))).toBe(says));

describe('accuracies of wrenches', () => {
  test.each([
    [' ±3.25 % ', '±3.25 % as stated'],
    ['class  A', 'ISO 6789 type II class A (adjustable with scale): ±4 %'],
    ['type  I class C', 'ISO 6789 type I class C (rigid housing, electronic): ±4 %'],
    ['type 1 class c', 'ISO 6789 type I class C (rigid housing, electronic): ±4 %'],
    ['type II class C', 'ISO 6789 type II class C (adjustable without scale): ±6 %'],
    ['type 2 class C', 'ISO 6789 type II class C (adjustable without scale): ±6 %'],
  ])('"%s"', (accuracy, says) => {
    expect(working(asked('wrench', {accuracy}))).toContain(`accuracy: ${says}`);
  });

  test('the largest torque must be one', () => {
    expect(readAccuracy('class A', q('3 in'))).toMatchObject({
      says: 'the largest torque is a length (in) where a torque is due',
    });
  });
});

describe('bands of wrenches', () => {
  test.each([
    ['100 lbf·ft', '20–150 lbf·ft', '96.2–104.2 lbf·ft'],
    ['8.5 N·m', '5–20 N·m', '8.17–8.85 N·m'],
    ['1/2 lbf·ft', '1/4 to 20 lbf·ft', '0.481–0.521 lbf·ft'],
    ['25-1/2 lbf·ft', '20–150 lbf·ft', '24.5–26.6 lbf·ft'],
  ])('%s by one of %s', (torque, range, gets) => {
    expect(told(asked('wrench', {torque, range}))).toEqual([`the fastener gets: ${gets}`]);
  });

  test('a torque that was worked out coarse is told to a tenth', () => {
    const torque = quantity(100, 'lbf·ft', 10);
    const {low} = result(appliedTorque({torque, range: amount('20–150 lbf·ft'), accuracy: '±4 %'}));
    expect(low.step).toBe(0.1);
  });

  const given = {torque: q('40 lbf·ft'), range: amount('20–150 lbf·ft'), accuracy: 'class A'};

  test('with an adapter its formula, source and advice are told first', () => {
    const on = {wrench: q('12 in'), adapter: q('4 in')};
    expect(working(appliedTorque({...given, adapter: on}))).toEqual([
      'S = T · L / (L + E · cos a); from T / (1 + a) to T / (1 − a)',
      'torque wanted: 40 lbf·ft',
      'wrench, grip to drive (L): 12 in',
      'adapter, drive to fastener (E): 4 in',
      'angle (a): in line',
      'working range: 20–150 lbf·ft',
      'accuracy: ISO 6789 type II class A (adjustable with scale): ±4 %',
      'accuracy of the wrench ±4 %: 38.5–41.7 lbf·ft',
      'ISO 6789-1:2017; NAVEDTRA 14315 fig. 3-44 and TM 9-2350-261-20-1 p. 2-29 (in line); TM 55-1945-205-24-4 p. 247-1 (folded back); TM 9-254 fig. 4-6 (at an angle)',
      'Holds only where the hand pulls at the centre of the grip; never slip a pipe over the handle. A straight socket extension on the drive takes no correction.',
    ]);
    expect(working(appliedTorque(given))[0]).toBe('from T / (1 + a) to T / (1 − a)');
  });

  test('an adapter that is folded back to the grip is refused', () => {
    const on = {wrench: q('12 in'), adapter: q('12 in'), angle: q('180°')};
    expect(refused(appliedTorque({...given, adapter: on}))).toBe(
      'the adapter is folded back almost to the grip; turn it outwards or square, or take a longer wrench',
    );
  });
});
