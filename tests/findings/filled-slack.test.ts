/** What closes a system is in but not tight when it is filled: plugs, covers and their screws. Common practice, no source. */
import {describe, expect, it} from 'vitest';
import {check} from '../../src/findings/check.js';
import {book} from '../help/example.js';
import {found} from '../help/found.js';

const NO_LOCK = 'lock: {value: none, because: it holds}';
const ENGINE = `
parts:
  block: {given: true}
  covers: {at: [front, rear]}
  tap: {}
fasteners:
  drain-plug: {torque: 20 lbf·ft, threads: dry, lock: safety-wire}
  cover-screws: {at: [front, rear], count: 8, holds: [covers], torque: 60 lbf·in, threads: dry, ${NO_LOCK}}
  tap-thread: {holds: [tap], torque: 10 lbf·ft, threads: dry, ${NO_LOCK}}
  strap-bolt: {holds: [tap], torque: {value: none, because: a strap}, threads: dry, ${NO_LOCK}}
systems:
  oil: {joints: [], closed-by: [covers, tap, drain-plug], with: [engine-oil]}
`;

const PLUG = 'torque: drain-plug to 20 lbf·ft';
const COVERS = 'torque: cover-screws to 60 lbf·in';
const TAP = 'torque: tap-thread to 10 lbf·ft';
const WIRE = 'lock: drain-plug with wire-032';
const FILL = 'fill: oil with engine-oil';
const IN = 'install: covers, tap';

describe('what closes a system', () => {
  it.each<readonly [string, readonly string[], readonly string[]]>([
    ['is in and tight, though not wired yet', [IN, COVERS, TAP, PLUG, FILL, WIRE], []],
    [
      'is a plug that is tightened only afterwards',
      [IN, COVERS, TAP, FILL, PLUG, WIRE],
      ['left-filled-open: oil is filled while drain-plug is slack'],
    ],
    [
      'is a plug that was run down only',
      [IN, COVERS, TAP, 'torque: drain-plug to snug', FILL, PLUG, WIRE],
      ['left-filled-open: oil is filled while drain-plug is slack'],
    ],
    [
      'is a plug that no step tightens, which is told once',
      [IN, COVERS, TAP, FILL],
      [
        'left-slack: drain-plug ends the build slack: no step torques it',
        'left-unlocked: drain-plug is never locked; the specification asks for safety-wire',
      ],
    ],
    [
      'is a cover whose screws were slackened and stay so, which is told once',
      [IN, TAP, COVERS, PLUG, WIRE, 'loosen: cover-screws', FILL],
      [
        'left-slack: cover-screws end the build slack: the torque at step 3 was undone at step 6 of procedure.md (loosen: cover-screws) and never made good',
      ],
    ],
    [
      'is a cover whose screws are slack',
      [IN, TAP, PLUG, WIRE, FILL, COVERS],
      ['left-filled-open: oil is filled while cover-screws, which hold covers, are slack'],
    ],
    [
      'is a cover whose screws are slack in one place',
      [
        IN,
        TAP,
        PLUG,
        WIRE,
        'torque: cover-screws[rear] to 60 lbf·in',
        FILL,
        'torque: cover-screws[front] to 60 lbf·in',
      ],
      ['left-filled-open: oil is filled while cover-screws[front], which hold covers, are slack'],
    ],
    [
      'is out in one place, and slack in the other',
      ['install: covers[rear], tap', TAP, PLUG, WIRE, FILL, 'install: covers[front]', COVERS],
      [
        'left-filled-open: oil is filled while covers[front] are out',
        'left-filled-open: oil is filled while cover-screws[rear], which hold covers, are slack',
      ],
    ],
    [
      'is out, so that nothing is said of its thread',
      ['install: covers', COVERS, PLUG, WIRE, FILL, 'install: tap', TAP],
      ['left-filled-open: oil is filled while tap is out'],
    ],
    [
      'is tapped slack for every filling, a flush too',
      [IN, COVERS, TAP, FILL, 'drain: oil', PLUG, FILL, WIRE],
      ['left-filled-open: oil is filled while drain-plug is slack'],
    ],
  ])('%s', (_, tags, says) => {
    expect(found(ENGINE, tags)).toEqual(says);
  });

  it('was tight and is so no more, which the story tells', () => {
    const tags = [IN, COVERS, TAP, PLUG, 'loosen: drain-plug', FILL, PLUG, WIRE];
    const steps = tags.map((tag, index) => `${index + 1}. Do it. \`${tag}\``).join('\n');
    const [finding] = check(book({engine: ENGINE, procedures: {'p.md': `\n${steps}\n`}})).findings;
    expect(finding?.story.map(({says}) => says)).toEqual([
      'step 4 of p.md: tight (torque: drain-plug)',
      'step 5 of p.md: no longer tight (loosen: drain-plug)',
    ]);
  });

  it('is told once where a fastener both closes the system and holds what closes it', () => {
    const engine = ENGINE.replace('tap, drain-plug]', 'tap, tap-thread, drain-plug]');
    expect(found(engine, [IN, COVERS, PLUG, WIRE, FILL, TAP])).toEqual([
      'left-filled-open: oil is filled while tap-thread is slack',
    ]);
  });

  it('gets no missing torque offered behind the filling', () => {
    const offered = (tags: readonly string[]) => {
      const steps = tags.map((tag, index) => `${index + 1}. Do it. \`${tag}\``).join('\n');
      const {findings} = check(book({engine: ENGINE, procedures: {'p.md': `\n${steps}\n`}}));
      return findings.filter(({name}) => name === 'left-slack').map(({fix}) => fix !== undefined);
    };
    expect(offered([IN, TAP, PLUG, WIRE, FILL])).toEqual([true]);
    expect(offered(['install: covers', PLUG, WIRE, FILL, 'install: tap', COVERS])).toEqual([false]);
  });
});
