/**
 * A step that is missing, with something in the build that waits for it, or seems to: what is told, and whether the step
 * is offered. Read against the build by hand.
 * Common practice, no source.
 */
import {describe, expect, it} from 'vitest';
import {type Told, toldOf} from './whole-build.js';

const EARLY_FILL = 'clean: lip => `fill: oil with engine-oil to 7 qt` `clean: lip`';

describe.each<[title: string, changes: readonly string[], ...rows: Told[]]>([
  [
    'a reading that comes before the filling, and before a check',
    [
      'with: [engine-oil], amount => after: [play], with: [engine-oil], amount',
      'drag: {expect: turns by hand} => drag: {expect: turns by hand, after: [play]}',
    ],
    [
      ['- measure: play using feeler-gauges', 'clean: lip => `drain: oil` `clean: lip`'],
      [
        'two-actions: lip: step 1 does several things that have nothing to do with each other (drain oil, clean lip); make each a step @ 1 lip',
        'left-unmeasured: play is never measured @ 8 play',
        '  see: play, play is specified with limits',
        '  fix: Write the missing step: measure play',
        '    6 / 7. Measure the play. `measure: play using feeler-gauges`',
      ],
    ],
    [
      ['- measure: play using feeler-gauges', '- check: drag', 'clean: lip => `check: drag` `clean: lip`'],
      ['left-unmeasured: play is never measured @ 8 play', '  see: play, play is specified with limits'],
    ],
  ],
  [
    'bolts that come before a nut is tightened, and before it is locked',
    ['nut: {holds: => nut: {after: [bolts], lock-after: [bolts], holds:'],
    [
      [
        '- torque: bolts to 40 lbf·ft',
        '- stripe: bolts',
        '- lock: bolts with wire-032',
        '- torque: nut to 10 lbf·ft',
        'clean: lip => `torque: nut to 10 lbf·ft` `clean: lip`',
      ],
      [
        'install-order: cover is not in when nut is torqued @ 1 cover',
        '  see: nut, nut holds cover',
        'two-actions: lip: step 1 does several things that have nothing to do with each other (torque nut, clean lip); make each a step @ 1 lip',
        'left-slack: bolts end the build slack: no step torques them @ 5 bolts',
        '  see: bolts, bolts must be torqued',
        'left-unlocked: bolts are never locked; the specification asks for safety-wire @ 5 bolts',
        '  see: bolts, bolts is specified with lock: safety-wire',
        'left-unstriped: bolts are never striped with paint, which the specification asks for @ 5 bolts',
        '  see: bolts, bolts is specified with stripe: true',
      ],
    ],
    [
      [
        '- torque: bolts to 40 lbf·ft',
        '- stripe: bolts',
        '- lock: bolts with wire-032',
        'clean: lip => `lock: nut with wire-032` `clean: lip`',
      ],
      [
        'lock-before-torque: nut is locked before the final torque @ 1 nut',
        '  see: nut, nut is specified here',
        'lock-wrong-kind: nut is specified without a lock @ 1 nut',
        '  see: nut, nut is specified with lock: none',
        'two-actions: lip: step 1 does several things that have nothing to do with each other (lock nut, clean lip); make each a step @ 1 lip',
        'left-slack: bolts end the build slack: no step torques them @ 5 bolts',
        '  see: bolts, bolts must be torqued',
        'left-unlocked: bolts are never locked; the specification asks for safety-wire @ 5 bolts',
        '  see: bolts, bolts is specified with lock: safety-wire',
        'left-unstriped: bolts are never striped with paint, which the specification asks for @ 5 bolts',
        '  see: bolts, bolts is specified with stripe: true',
      ],
    ],
    [
      [
        '- torque: bolts to 40 lbf·ft',
        '- stripe: bolts',
        '- lock: bolts with wire-032',
        'clean: lip => `loosen: nut` `clean: lip`',
      ],
      [
        'two-actions: lip: step 1 does several things that have nothing to do with each other (loosen nut, clean lip); make each a step @ 1 lip',
        'left-slack: bolts end the build slack: no step torques them @ 5 bolts',
        '  see: bolts, bolts must be torqued',
        '  fix: Write the missing step: torque bolts',
        '    5 / 6. Tighten the bolts. `torque: bolts to 40 lbf·ft`',
        'left-unlocked: bolts are never locked; the specification asks for safety-wire @ 5 bolts',
        '  see: bolts, bolts is specified with lock: safety-wire',
        'left-unstriped: bolts are never striped with paint, which the specification asks for @ 5 bolts',
        '  see: bolts, bolts is specified with stripe: true',
      ],
    ],
  ],
  [
    'bolts that hold what the filling asks for, and what it does not',
    ['nut: {holds: [cover] => nut: {holds: [cover, shaft]'],
    [
      ['- torque: nut to 10 lbf·ft', '- fill: oil with engine-oil to 7 qt', EARLY_FILL],
      [
        'left-filled-open: oil is filled while cover is out @ 1 oil',
        '  see: cover, cover is specified here',
        'left-filled-open: oil is filled while tap is out @ 1 oil',
        '  see: tap, tap is specified here',
        'left-filled-open: oil is filled while cover-joint is open @ 1 oil',
        '  see: cover-joint, cover-joint is specified here',
        'two-actions: lip: step 1 does several things that have nothing to do with each other (fill oil, clean lip); make each a step @ 1 lip',
        'left-slack: nut ends the build slack: no step torques it @ 13 nut',
        '  see: nut, nut must be torqued',
      ],
    ],
    [
      [
        '- torque: bolts to 40 lbf·ft',
        '- stripe: bolts',
        '- lock: bolts with wire-032',
        '- fill: oil with engine-oil to 7 qt',
        EARLY_FILL,
      ],
      [
        'left-filled-open: oil is filled while cover is out @ 1 oil',
        '  see: cover, cover is specified here',
        'left-filled-open: oil is filled while tap is out @ 1 oil',
        '  see: tap, tap is specified here',
        'left-filled-open: oil is filled while cover-joint is open @ 1 oil',
        '  see: cover-joint, cover-joint is specified here',
        'two-actions: lip: step 1 does several things that have nothing to do with each other (fill oil, clean lip); make each a step @ 1 lip',
        'left-slack: bolts end the build slack: no step torques them @ 5 bolts',
        '  see: bolts, bolts must be torqued',
        '  fix: Write the missing step: torque bolts',
        '    5 / 6. Tighten the bolts. `torque: bolts to 40 lbf·ft`',
        'left-unlocked: bolts are never locked; the specification asks for safety-wire @ 5 bolts',
        '  see: bolts, bolts is specified with lock: safety-wire',
        'left-unstriped: bolts are never striped with paint, which the specification asks for @ 5 bolts',
        '  see: bolts, bolts is specified with stripe: true',
      ],
    ],
  ],
  [
    'a signature for an alteration beside all else',
    [
      'hold-points: => alterations:\n  hone: {of: [shaft], does: hone it}\nhold-points:',
      'asks: [bolts, play] => asks: [bolts, play, hone]',
    ],
    [
      ['- witness: closed by "shop lead"'],
      [
        'spec-silent: hone is an alteration of shaft that nothing asks for and no step makes; write alterations: [hone] beside shaft or a substitute of it, or take it out @ hone hone',
        '  see: shaft, shaft is specified here',
        'left-unwitnessed: closed is never witnessed @ 9 closed',
        '  see: closed, closed asks for a second signature',
        '  fix: Write the missing step: witness closed',
        '    9 / 10. Have the closed looked at and signed. `witness: closed by "shop lead"`',
      ],
    ],
  ],
])('%s', (_, changes, ...rows) => {
  it.each(rows.map(([edits, told]) => [edits.join(' · '), edits, told] as const))(
    '%s',
    (_title, edits, told) => {
      expect(toldOf(changes, edits)).toEqual(told);
    },
  );
});
