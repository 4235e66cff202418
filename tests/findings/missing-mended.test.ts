/**
 * Steps that are missing in a build where something is in the way of their mend, or where a part, a joint or a surface is
 * otherwise specified: what is told, and where the missing step is offered. Read against the build by hand.
 * Common practice, no source.
 */
import {describe, expect, it} from 'vitest';
import {type Told, toldOf} from './whole-build.js';

describe.each<[title: string, changes: readonly string[], ...rows: Told[]]>([
  [
    'a reading that a part waits for',
    ['tap: {} => tap: {after: [play]}'],
    [
      ['- measure: play using feeler-gauges'],
      [
        'left-unmeasured: play is never measured @ 8 play',
        '  see: play, play is specified with limits',
        '  fix: Write the missing step: measure play',
        '    6 / 7. Measure the play. `measure: play using feeler-gauges`',
      ],
    ],
    [
      ['- measure: play using feeler-gauges', 'clean: lip => install: tap', '- install: tap'],
      [
        'clean-first: lip is lubed but was never cleaned @ 2 lip',
        '  see: lip, lip is specified here',
        'left-unmeasured: play is never measured @ 8 play',
        '  see: play, play is specified with limits',
      ],
    ],
  ],
  [
    'a stripe that is signed for before the lock goes on',
    [],
    [
      [
        '- stripe: bolts',
        'lock: bolts with wire-032 => witness: closed by "shop lead"',
        'witness: closed by "shop lead" => lock: bolts with wire-032',
      ],
      [
        'witnessed-early: closed is signed at step 7 before bolts are as it asks @ 7 closed',
        '  see: closed, closed asks for bolts',
        '  see: bolts, bolts is specified here',
        'witnessed-early: closed is signed at step 7 before play is as it asks @ 7 closed',
        '  see: closed, closed asks for play',
        '  see: play, play is specified here',
        'left-unstriped: bolts are never striped with paint, which the specification asks for @ 9 bolts',
        '  story: 6, step 6 of procedure.md: tight (torque: bolts)',
        '  story: 9, step 9 of procedure.md: locked (lock: bolts)',
        '  see: bolts, bolts is specified with stripe: true',
      ],
    ],
  ],
  [
    'bolts that a reading needs tight',
    [],
    [
      [
        '- torque: bolts to 40 lbf·ft',
        'lube: bolts with engine-oil => measure: play using feeler-gauges',
        'measure: play using feeler-gauges => lube: bolts with engine-oil',
      ],
      [
        'left-slack: bolts end the build slack: no step torques them @ 8 bolts',
        '  see: bolts, bolts must be torqued',
      ],
    ],
  ],
  [
    'bolts that a nut waits for',
    ['holds: [cover], torque: 10 => holds: [cover], after: [bolts], torque: 10'],
    [
      [
        '- torque: bolts to 40 lbf·ft',
        'lube: bolts with engine-oil => torque: nut to 10 lbf·ft',
        'torque: nut to 10 lbf·ft => lube: bolts with engine-oil',
      ],
      [
        'install-order: cover is not in when nut is torqued @ 5 cover',
        '  see: nut, nut holds cover',
        'left-slack: bolts end the build slack: no step torques them @ 13 bolts',
        '  see: bolts, bolts must be torqued',
      ],
    ],
    [
      [
        '- torque: bolts to 40 lbf·ft',
        'lube: bolts with engine-oil => loosen: nut',
        'torque: nut to 10 lbf·ft => lube: bolts with engine-oil',
      ],
      [
        'left-slack: nut ends the build slack: no step torques it @ 12 nut',
        '  see: nut, nut must be torqued',
        '  fix: Write the missing step: torque nut',
        '    12 / 13. Tighten the nut. `torque: nut to 10 lbf·ft`',
        'left-slack: bolts end the build slack: no step torques them @ 13 bolts',
        '  see: bolts, bolts must be torqued',
      ],
    ],
  ],
  [
    'a joint that is filled against, or left to cure, too early',
    [],
    [
      [
        '- seal: cover-joint with liquid-gasket',
        'clean: lip => fill: oil with engine-oil to 7 qt',
        '- fill: oil with engine-oil to 7 qt',
      ],
      [
        'left-filled-open: oil is filled while cover is out @ 1 oil',
        '  see: cover, cover is specified here',
        'left-filled-open: oil is filled while tap is out @ 1 oil',
        '  see: tap, tap is specified here',
        'clean-first: lip is lubed but was never cleaned @ 2 lip',
        '  see: lip, lip is specified here',
        'left-unsealed: cover-joint is never made up with its seal @ 15 cover-joint',
        '  see: cover-joint, cover-joint is specified with a seal',
      ],
    ],
    [
      [
        '- seal: cover-joint with liquid-gasket',
        'clean: lip => cure: cover-joint for 24 h',
        '- cure: cover-joint for 24 h',
      ],
      [
        'clean-first: lip is lubed but was never cleaned @ 2 lip',
        '  see: lip, lip is specified here',
        'left-unsealed: cover-joint is never made up with its seal @ 11 cover-joint',
        '  see: cover-joint, cover-joint is specified with a seal',
      ],
    ],
    [
      [
        '- seal: cover-joint with liquid-gasket',
        'clean: lip => install: cover',
        'install: cover => clean: lip',
      ],
      [
        'clean-first: lip is lubed but was never cleaned @ 2 lip',
        '  see: lip, lip is specified here',
        'lube-first: lip ends the build without assembly-lube @ 12 lip',
        '  see: lip, lip is specified here',
        'left-unsealed: cover-joint is never made up with its seal @ 15 cover-joint',
        '  see: cover-joint, cover-joint is specified with a seal',
      ],
    ],
  ],
  [
    'a reading that a branch hangs on',
    [],
    [
      [
        '- measure: play using feeler-gauges',
        'clean: lip => `if: play is out`\n    1. Turn it. `turn: shaft`',
      ],
      [
        'unmeasured-branch: play is not read before the branch that hangs on it @ 1 play',
        '  see: play, play is specified here',
        'clean-first: lip is lubed but was never cleaned @ 3 lip',
        '  see: lip, lip is specified here',
        'left-unmeasured: play is never measured @ 9 play',
        '  see: play, play is specified with limits',
      ],
    ],
    [
      [
        '- measure: play using feeler-gauges',
        'check: drag => `if: play is out`\n    1. Turn it. `turn: shaft`',
      ],
      [
        'left-unchecked: drag is never checked @ drag drag',
        '  see: drag, drag is a check of this engine',
        'left-unmeasured: play is never measured @ 8 play',
        '  see: play, play is specified with limits',
        '  fix: Write the missing step: measure play',
        '    6 / 7. Measure the play. `measure: play using feeler-gauges`',
        'unmeasured-branch: play is not read before the branch that hangs on it @ 19 play',
        '  see: play, play is specified here',
      ],
    ],
    [
      [
        '- measure: play using feeler-gauges',
        'clean: lip => `check: drag` `if: drag is out`\n    1. Turn it. `turn: shaft`',
      ],
      [
        'clean-first: lip is lubed but was never cleaned @ 3 lip',
        '  see: lip, lip is specified here',
        'left-unmeasured: play is never measured @ 9 play',
        '  see: play, play is specified with limits',
        '  fix: Write the missing step: measure play',
        '    6 / 7. Measure the play. `measure: play using feeler-gauges`',
      ],
    ],
  ],
  [
    'bolts whose ends are readied in two steps',
    [],
    [
      [
        '- torque: bolts to 40 lbf·ft',
        'lube: bolts with engine-oil => lube: bolts[front] with engine-oil',
        'install: tap => lube: bolts[rear] with engine-oil',
      ],
      [
        'left-out: tap is never installed @ tap tap',
        '  see: tap, tap belongs in the engine',
        'left-slack: bolts end the build slack: no step torques them @ 14 bolts',
        '  see: bolts, bolts must be torqued',
      ],
    ],
    [
      ['- torque: bolts to 40 lbf·ft', '+ torque: bolts[rear] to 40 lbf·ft', '+ loosen: bolts[rear]'],
      [
        'lock-before-torque: bolts[rear] are locked before the final torque @ 7 bolts[rear]',
        '  see: bolts, bolts is specified here',
        'measured-slack: play is measured while bolts[rear] are slack @ 8 play',
        '  see: play, play is specified here',
        'witnessed-early: closed is signed at step 9 before bolts[rear] are as it asks @ 9 closed',
        '  see: closed, closed asks for bolts',
        '  see: bolts, bolts is specified here',
        'left-unwitnessed: closed is witnessed too early: done at step 9, undone at step 20 of procedure.md (torque: bolts) and never made good @ 20 closed',
        '  story: 9, step 9 of procedure.md: witnessed (witness: closed)',
        '  story: 20, step 20 of procedure.md: no longer witnessed (torque: bolts)',
        '  see: closed, closed asks for a second signature',
        'left-slack: bolts end the build slack: the torque at step 20 was undone at step 21 of procedure.md (loosen: bolts) and never made good @ 21 bolts',
        '  story: 20, step 20 of procedure.md: tight (torque: bolts)',
        '  story: 21, step 21 of procedure.md: no longer tight (loosen: bolts)',
        '  see: bolts, bolts must be torqued',
        'left-unlocked: bolts[rear] end the build unlocked: done at step 7, undone at step 20 of procedure.md (torque: bolts) and never made good @ 21 bolts[rear]',
        '  story: 7, step 7 of procedure.md: locked (lock: bolts)',
        '  story: 20, step 20 of procedure.md: no longer locked (torque: bolts)',
        '  story: 20, step 20 of procedure.md: tight (torque: bolts)',
        '  story: 21, step 21 of procedure.md: no longer tight (loosen: bolts)',
        '  see: bolts, bolts is specified with lock: safety-wire',
        'left-unstriped: bolts[rear] end the build without the stripe of paint: done at step 6, undone at step 20 of procedure.md (torque: bolts) and never made good @ 21 bolts[rear]',
        '  story: 6, step 6 of procedure.md: striped (stripe: bolts)',
        '  story: 7, step 7 of procedure.md: locked (lock: bolts)',
        '  story: 20, step 20 of procedure.md: no longer striped (torque: bolts)',
        '  story: 20, step 20 of procedure.md: tight (torque: bolts)',
        '  story: 20, step 20 of procedure.md: no longer locked (torque: bolts)',
        '  story: 21, step 21 of procedure.md: no longer tight (loosen: bolts)',
        '  see: bolts, bolts is specified with stripe: true',
      ],
    ],
    [
      ['- torque: bolts to 40 lbf·ft', '+ loosen: bolts'],
      [
        'left-slack: bolts end the build slack: no step torques them @ 20 bolts',
        '  see: bolts, bolts must be torqued',
        '  fix: Write the missing step: torque bolts',
        '    5 / 6. Tighten the bolts. `torque: bolts to 40 lbf·ft`',
        'left-unlocked: bolts end the build unlocked: done at step 7, undone at step 20 of procedure.md (loosen: bolts) and never made good @ 20 bolts',
        '  story: 7, step 7 of procedure.md: locked (lock: bolts)',
        '  story: 20, step 20 of procedure.md: no longer locked (loosen: bolts)',
        '  see: bolts, bolts is specified with lock: safety-wire',
        'left-unstriped: bolts end the build without the stripe of paint: done at step 6, undone at step 20 of procedure.md (loosen: bolts) and never made good @ 20 bolts',
        '  story: 6, step 6 of procedure.md: striped (stripe: bolts)',
        '  story: 7, step 7 of procedure.md: locked (lock: bolts)',
        '  story: 20, step 20 of procedure.md: no longer striped (loosen: bolts)',
        '  story: 20, step 20 of procedure.md: no longer locked (loosen: bolts)',
        '  see: bolts, bolts is specified with stripe: true',
        'left-unwitnessed: closed is witnessed too early: done at step 9, undone at step 20 of procedure.md (loosen: bolts) and never made good @ 20 closed',
        '  story: 9, step 9 of procedure.md: witnessed (witness: closed)',
        '  story: 20, step 20 of procedure.md: no longer witnessed (loosen: bolts)',
        '  see: closed, closed asks for a second signature',
      ],
    ],
  ],
  [
    'bolts that are locked before they are oiled',
    [],
    [
      [
        '- torque: bolts to 40 lbf·ft',
        'lube: bolts with engine-oil => lock: bolts with wire-032',
        'lock: bolts with wire-032 => lube: bolts with engine-oil',
      ],
      [
        'left-slack: bolts end the build slack: no step torques them @ 7 bolts',
        '  see: bolts, bolts must be torqued',
      ],
    ],
  ],
  [
    'bolts that serve once',
    ['count: 4, holds: [caps] => count: 4, single-use: true, holds: [caps]'],
    [
      ['- torque: bolts to 40 lbf·ft', 'clean: lip => renew: bolts[front]'],
      [
        'clean-first: lip is lubed but was never cleaned @ 2 lip',
        '  see: lip, lip is specified here',
        'left-slack: bolts end the build slack: no step torques them @ 7 bolts',
        '  see: bolts, bolts must be torqued',
      ],
    ],
    [
      ['- torque: bolts to 40 lbf·ft', 'clean: lip => renew: bolts'],
      [
        'clean-first: lip is lubed but was never cleaned @ 2 lip',
        '  see: lip, lip is specified here',
        'left-slack: bolts end the build slack: no step torques them @ 7 bolts',
        '  see: bolts, bolts must be torqued',
        '  fix: Write the missing step: torque bolts',
        '    5 / 6. Tighten the bolts. `torque: bolts to 40 lbf·ft`',
      ],
    ],
  ],
  [
    'a joint in two places',
    ['cover-joint: {between => cover-joint: {at: [left, right], between'],
    [
      ['- seal: cover-joint with liquid-gasket'],
      [
        'left-unsealed: cover-joint is never made up with its seal @ 15 cover-joint',
        '  see: cover-joint, cover-joint is specified with a seal',
        '  fix: Write the missing step: seal cover-joint',
        '    11 / 12. Make up the cover joint with liquid gasket. `seal: cover-joint with liquid-gasket`',
      ],
    ],
    [
      ['- seal: cover-joint with liquid-gasket', 'clean: cover-joint => clean: cover-joint[left]'],
      [
        'left-unsealed: cover-joint is never made up with its seal @ 15 cover-joint',
        '  see: cover-joint, cover-joint is specified with a seal',
      ],
    ],
    [
      ['seal: cover-joint with liquid-gasket => seal: cover-joint[left] with liquid-gasket'],
      [
        'left-unsealed: cover-joint[right] is never made up with its seal @ 16 cover-joint[right]',
        '  see: cover-joint, cover-joint is specified with a seal',
        '  fix: Write the missing step: seal cover-joint',
        '    12 / 13. Make up the cover joint with liquid gasket. `seal: cover-joint[right] with liquid-gasket`',
      ],
    ],
    [
      [
        'cure: cover-joint for 24 h => cure: cover-joint[left] for 24 h',
        '- fill: oil with engine-oil to 7 qt',
      ],
      [
        'left-unsealed: cover-joint[right] is sealed but never left to cure @ 12 cover-joint[right]',
        '  story: 12, step 12 of procedure.md: sealed (seal: cover-joint)',
        '  see: cover-joint, the sealant of cover-joint has a cure',
        'left-unfilled: oil is never filled @ 16 oil',
        '  see: oil, oil is a system of this engine',
      ],
    ],
  ],
  [
    'a joint that the block closes as well',
    ['block: {given: true} => block: {given: true, closes: [cover-joint]}'],
    [
      ['- seal: cover-joint with liquid-gasket'],
      [
        'left-unsealed: cover-joint is never made up with its seal @ 15 cover-joint',
        '  see: cover-joint, cover-joint is specified with a seal',
        '  fix: Write the missing step: seal cover-joint',
        '    11 / 12. Make up the cover joint with liquid gasket. `seal: cover-joint with liquid-gasket`',
      ],
    ],
  ],
  [
    'a joint that is made up with a part',
    [
      'pin: {temporary: true} => pin: {temporary: true}\n  sheet: {}',
      'seal: [liquid-gasket] => seal: [sheet]',
    ],
    [
      ['- seal: cover-joint with liquid-gasket', '- cure: cover-joint for 24 h'],
      [
        'left-out: sheet is never installed @ sheet sheet',
        '  see: sheet, sheet belongs in the engine',
        'left-unsealed: cover-joint is never made up with its seal @ 11 cover-joint',
        '  see: cover-joint, cover-joint is specified with a seal',
      ],
    ],
  ],
  [
    'a joint that is between other parts than close it',
    ['between: [block, cover], seal => between: [block, shaft], seal'],
    [
      ['- seal: cover-joint with liquid-gasket', '- clean: cover-joint', '- cure: cover-joint for 24 h'],
      [
        'spec-contradiction: cover closes cover-joint, which is not between it and anything; add cover to its between @ cover cover',
        '  see: cover-joint, cover-joint is here',
        'left-unsealed: cover-joint is never made up with its seal @ 3 cover-joint',
        '  see: cover-joint, cover-joint is specified with a seal',
      ],
    ],
  ],
  [
    'a surface that nothing has touched',
    ['lip: {on: block => lip: {on: shaft'],
    [
      ['- clean: lip', '- lube: lip with assembly-lube'],
      ['lube-first: lip ends the build without assembly-lube @ 1 lip', '  see: lip, lip is specified here'],
    ],
  ],
  [
    'a surface that any oil serves',
    ['lubricants: [assembly-lube]} => lubricants: []}'],
    [
      ['- lube: lip with assembly-lube'],
      ['lube-first: lip ends the build without lubricant @ 1 lip', '  see: lip, lip is specified here'],
    ],
    [['lube: lip with assembly-lube => lube: lip with engine-oil'], []],
  ],
  [
    'a surface that a part closes',
    ['tap: {} => tap: {closes: [lip]}'],
    [
      ['- lube: lip with assembly-lube'],
      [
        'lube-first: lip is not lubed with assembly-lube when tap closes it @ 14 lip',
        '  see: lip, lip goes together lubed with assembly-lube',
      ],
    ],
    [
      ['lube: lip with assembly-lube => lube: lip with engine-oil'],
      [
        'lube-first: lip carries engine-oil, not assembly-lube, when tap closes it @ 15 lip',
        '  story: 2, step 2 of procedure.md: lubed (lube: lip)',
        '  see: lip, lip goes together lubed with assembly-lube',
      ],
    ],
    [
      ['install: shaft => clean: lip'],
      [
        'left-out: shaft is never installed @ shaft shaft',
        '  see: shaft, shaft belongs in the engine',
        'lube-first: lip is no longer lubed with assembly-lube when tap closes it @ 15 lip',
        '  story: 2, step 2 of procedure.md: lubed (lube: lip)',
        '  story: 3, step 3 of procedure.md: no longer lubed (clean: lip)',
        '  see: lip, lip goes together lubed with assembly-lube',
      ],
    ],
  ],
  [
    'a plug that a part closes over',
    ['pin: {temporary: true} => pin: {temporary: true, seats-in: lip}\n  lid: {closes: [lip]}'],
    [
      [
        'install: shaft => install: pin',
        'install: tap => install: lid',
        '+ install: tap',
        '+ install: shaft',
      ],
      [
        'left-in: pin is temporary, and still in at the end of the build @ 3 pin',
        '  story: 3, step 3 of procedure.md: in (install: pin)',
        '  see: pin, pin is temporary',
        'measured-slack: play is measured while shaft is out @ 9 play',
        '  see: play, play is specified here',
        'left-filled-open: oil is filled while tap is out @ 17 oil',
        '  see: tap, tap is specified here',
      ],
    ],
    [
      [
        'install: shaft => install: pin',
        'install: tap => install: lid',
        '+ install: tap',
        '+ install: shaft',
        '+ remove: pin',
      ],
      [
        'measured-slack: play is measured while shaft is out @ 9 play',
        '  see: play, play is specified here',
        'left-in: pin is temporary, and still in when lid closes over it @ 15 pin',
        '  story: 3, step 3 of procedure.md: in (install: pin)',
        '  see: pin, pin is temporary',
        'left-filled-open: oil is filled while tap is out @ 17 oil',
        '  see: tap, tap is specified here',
      ],
    ],
  ],
  [
    'a mark that matches none',
    ['number: {matches: plate} => number: {}'],
    [
      ['- record: number'],
      [
        'left-unrecorded: number is never written down @ number number',
        '  see: number, number is a mark of this engine',
      ],
    ],
  ],
  [
    'a check that comes undone with a joint',
    ['closed: {asks: [bolts, play] => closed: {asks: [cover-joint, tap]'],
    [
      ['+ remove: tap'],
      [
        'witnessed-early: closed is signed at step 10 before cover-joint is as it asks @ 10 closed',
        '  see: closed, closed asks for cover-joint',
        '  see: cover-joint, cover-joint is specified here',
        'witnessed-early: closed is signed at step 10 before tap is as it asks @ 10 closed',
        '  see: closed, closed asks for tap',
        '  see: tap, tap is specified here',
        'left-out: tap ends the build out: done at step 15, undone at step 21 of procedure.md (remove: tap) and never made good @ 21 tap',
        '  story: 15, step 15 of procedure.md: in (install: tap)',
        '  story: 21, step 21 of procedure.md: no longer in (remove: tap)',
        '  see: tap, tap belongs in the engine',
        'left-unwitnessed: closed is witnessed too early: done at step 10, undone at step 21 of procedure.md (remove: tap) and never made good @ 21 closed',
        '  story: 10, step 10 of procedure.md: witnessed (witness: closed)',
        '  story: 21, step 21 of procedure.md: no longer witnessed (remove: tap)',
        '  see: closed, closed asks for a second signature',
      ],
    ],
    [
      ['+ clean: cover-joint'],
      [
        'witnessed-early: closed is signed at step 10 before cover-joint is as it asks @ 10 closed',
        '  see: closed, closed asks for cover-joint',
        '  see: cover-joint, cover-joint is specified here',
        'witnessed-early: closed is signed at step 10 before tap is as it asks @ 10 closed',
        '  see: closed, closed asks for tap',
        '  see: tap, tap is specified here',
        'left-unsealed: cover-joint ends the build unsealed: done at step 12, undone at step 21 of procedure.md (clean: cover-joint) and never made good @ 21 cover-joint',
        '  story: 12, step 12 of procedure.md: sealed (seal: cover-joint)',
        '  story: 21, step 21 of procedure.md: no longer sealed (clean: cover-joint)',
        '  see: cover-joint, cover-joint is specified with a seal',
        'left-unwitnessed: closed is witnessed too early: done at step 10, undone at step 21 of procedure.md (clean: cover-joint) and never made good @ 21 closed',
        '  story: 10, step 10 of procedure.md: witnessed (witness: closed)',
        '  story: 21, step 21 of procedure.md: no longer witnessed (clean: cover-joint)',
        '  see: closed, closed asks for a second signature',
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
