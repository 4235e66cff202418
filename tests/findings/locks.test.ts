/** Two locks on one fastener: each has its own side of the torque, and each is asked for. Common practice, no source. */
import {describe, expect, it} from 'vitest';
import {found} from '../help/found.js';

const SHOP = `
shop: {name: Example Works}
sources: {house: {title: House notes, note: invented}}
source: house
consumables:
  locker: {use: lock, lock: threadlocker}
  wire: {use: lock, lock: safety-wire}
  tabs: {use: lock, lock: tab-washer}
  pins: {use: lock, lock: cotter-pin}
  oil: {use: lubricant}
`;

const engine = (lock: string, threads = '[locker]') => `
parts:
  block: {given: true}
  caps: {}
fasteners:
  bolts: {at: [front, rear], count: 4, holds: [caps], torque: 40 lbf·ft, threads: ${threads}, lock: ${lock}}
`;

const LOCKER = 'lock: bolts with locker';
const WIRE = 'lock: bolts with wire';
const TABS = 'lock: bolts with tabs';
const ON = 'install: caps';
const TORQUE = 'torque: bolts to 40 lbf·ft';
const ASKED = 'the specification asks for threadlocker and safety-wire';

describe('threadlocker below the head and wire through it', () => {
  it.each<readonly [string, readonly string[], readonly string[]]>([
    ['each at its time', [ON, LOCKER, TORQUE, WIRE], []],
    [
      'wire left off',
      [ON, LOCKER, TORQUE],
      [`left-unlocked: bolts end the build without safety-wire; ${ASKED}`],
    ],
    [
      'wire at one end only',
      [ON, LOCKER, TORQUE, 'lock: bolts[front] with wire'],
      [`left-unlocked: bolts[rear] end the build without safety-wire; ${ASKED}`],
    ],
    [
      'threadlocker left off',
      [ON, TORQUE, WIRE],
      [
        'thread-condition: bolts come to torque with dry threads, and the torque is for locker on the threads',
        `left-unlocked: bolts end the build without threadlocker; ${ASKED}`,
      ],
    ],
    [
      'the wire before the torque, the threadlocker after it',
      [ON, WIRE, TORQUE, LOCKER, WIRE],
      [
        'lock-before-torque: bolts are locked before the final torque',
        'thread-condition: bolts come to torque with dry threads, and the torque is for locker on the threads',
        'lock-before-torque: bolts are already at final torque, and locker goes on before it',
      ],
    ],
    [
      'both in one tag before the torque',
      [ON, 'lock: bolts with locker, wire', TORQUE],
      [
        'lock-before-torque: bolts are locked before the final torque',
        `left-unlocked: bolts end the build without safety-wire; ${ASKED}`,
      ],
    ],
    [
      'torqued once more after the wire: the threadlocker stays, the wire does not',
      [ON, LOCKER, TORQUE, WIRE, TORQUE],
      [`left-unlocked: bolts end the build without safety-wire; ${ASKED}`],
    ],
    [
      'slackened: both are gone',
      [ON, LOCKER, TORQUE, WIRE, 'loosen: bolts', TORQUE, WIRE],
      [`left-unlocked: bolts end the build without threadlocker; ${ASKED}`],
    ],
    [
      'another kind in place of the wire',
      [ON, LOCKER, TORQUE, 'lock: bolts with pins'],
      [
        'lock-wrong-kind: bolts are locked with pins, and the specification asks for threadlocker and safety-wire',
      ],
    ],
    [
      'a tag that does not say which',
      [ON, LOCKER, TORQUE, 'lock: bolts'],
      ['lock-wrong-kind: bolts: which of threadlocker and safety-wire goes on here is not said'],
    ],
  ])('%s', (_, tags, says) => {
    expect(found(engine('[threadlocker, safety-wire]'), tags, SHOP)).toEqual(says);
  });
});

describe('two that both go on after the torque', () => {
  it.each<readonly [string, readonly string[], readonly string[]]>([
    ['both on', [ON, TORQUE, TABS, WIRE], []],
    [
      'one left off',
      [ON, TORQUE, TABS],
      [
        'left-unlocked: bolts end the build without safety-wire; the specification asks for tab-washer and safety-wire',
      ],
    ],
    [
      'neither',
      [ON, TORQUE],
      ['left-unlocked: bolts are never locked; the specification asks for tab-washer and safety-wire'],
    ],
    [
      'the second only where a branch is taken',
      [ON, TORQUE, TABS, '`if: shake is out`\n   1. Wire them. `lock: bolts with wire`', '`check: shake`'],
      [
        'left-unlocked: bolts end the build without safety-wire; the specification asks for tab-washer and safety-wire',
        'unmeasured-branch: shake is not read before the branch that hangs on it',
      ],
    ],
  ])('%s', (_, tags, says) => {
    const checks = 'checks:\n  shake: {expect: no rattle}\n';
    const asks = tags.some((tag) => tag.includes('shake')) ? checks : '';
    expect(found(engine('[tab-washer, safety-wire]', 'dry') + asks, tags, SHOP)).toEqual(says);
  });
});

describe('bolts that are renewed after they were tight', () => {
  const RENEWED = 'renew: bolts';

  it('are slack and unlocked until that is made good', () => {
    const all = [ON, LOCKER, TORQUE, WIRE, RENEWED];
    expect(found(engine('[threadlocker, safety-wire]'), all, SHOP)).toEqual([
      'left-slack: bolts end the build slack: the torque at step 3 was undone at step 5 of procedure.md (renew: bolts) and never made good',
      'left-unlocked: bolts end the build unlocked: done at step 4, undone at step 5 of procedure.md (renew: bolts) and never made good',
    ]);
    expect(found(engine('[threadlocker, safety-wire]'), [...all, LOCKER, TORQUE, WIRE], SHOP)).toEqual([]);
  });
});
