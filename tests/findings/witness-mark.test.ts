/** The stripe of paint across a tightened fastener: what undoes it, and who asks for it. Common practice, no source. */
import {describe, expect, it} from 'vitest';
import {found} from '../help/found.js';

const ENGINE = `
parts:
  block: {given: true}
  caps: {}
fasteners:
  bolts: {at: [front, rear], count: 4, holds: [caps], torque: 40 lbf·ft, threads: dry, lock: safety-wire, stripe: true}
hold-points:
  closed: {asks: [bolts], by: shop lead}
`;

const CAPS = ['install: caps', 'torque: bolts to 40 lbf·ft'];
const WIRE = 'lock: bolts with wire-032';
const STRIPE = 'stripe: bolts';
const SIGNED = 'witness: closed by "shop lead"';

describe('the stripe of paint', () => {
  it.each<readonly [string, readonly string[], readonly string[]]>([
    ['drawn after the lock', [...CAPS, WIRE, STRIPE, SIGNED], []],
    ['drawn before the wire, which moves nothing', [...CAPS, STRIPE, WIRE, SIGNED], []],
    [
      'never drawn',
      [...CAPS, WIRE, SIGNED],
      ['left-unstriped: bolts are never striped with paint, which the specification asks for'],
    ],
    [
      'drawn at one end only',
      [...CAPS, WIRE, 'stripe: bolts[front]', SIGNED],
      ['left-unstriped: bolts[rear] are never striped with paint, which the specification asks for'],
    ],
    [
      'torqued again after it',
      [
        ...CAPS,
        STRIPE,
        'torque: bolts[rear] to 40 lbf·ft',
        WIRE,
        STRIPE.replace('bolts', 'bolts[front]'),
        SIGNED,
      ],
      [
        'left-unstriped: bolts[rear] end the build without the stripe of paint: done at step 3, undone at step 4 of procedure.md (torque: bolts) and never made good',
        'witnessed-early: closed is signed at step 7 before bolts[rear] are as it asks',
      ],
    ],
    [
      'taken off and put back',
      [...CAPS, WIRE, STRIPE, 'loosen: bolts', 'remove: caps', ...CAPS, WIRE, SIGNED],
      [
        'left-unstriped: bolts end the build without the stripe of paint: done at step 4, undone at step 5 of procedure.md (loosen: bolts) and never made good',
        'witnessed-early: closed is signed at step 10 before bolts are as it asks',
      ],
    ],
    [
      'drawn after the hold point that asks for the bolts',
      [...CAPS, WIRE, SIGNED, STRIPE],
      ['witnessed-early: closed is signed at step 4 before bolts are as it asks'],
    ],
    [
      'a hold point signed before the bolts were striped anew',
      [...CAPS, WIRE, STRIPE, SIGNED, 'torque: bolts to 40 lbf·ft', WIRE, STRIPE],
      [
        'left-unwitnessed: closed is witnessed too early: done at step 5, undone at step 6 of procedure.md (torque: bolts) and never made good',
      ],
    ],
  ])('%s', (_, tags, says) => {
    expect(found(ENGINE, tags)).toEqual(says);
  });

  it('may be drawn where nothing asks for it', () => {
    const plain = ENGINE.replace(', stripe: true', '');
    expect(found(plain, [...CAPS, WIRE, STRIPE, SIGNED])).toEqual([]);
  });

  it('is asked for by practice, from which a fastener departs with its reason', () => {
    const shop = (item: string) => `
shop: {name: Example Works}
sources: {house: {title: House notes, note: invented}}
source: house
consumables:
  wire-032: {use: lock, lock: safety-wire}
practice:
  - {every: fastener, is: {stripe: ${item}}}
`;
    const plain = ENGINE.replace(', stripe: true', '');
    const out = 'left-unstriped: bolts are never striped with paint, which the specification asks for';
    const tags = [...CAPS, WIRE, SIGNED];
    expect(found(plain, tags, shop('true'))).toEqual([out]);
    expect(
      found(
        plain.replace(' lock:', ' stripe: {value: false, because: the cover hides them}, lock:'),
        tags,
        shop('true'),
      ),
    ).toEqual([]);
  });
});
