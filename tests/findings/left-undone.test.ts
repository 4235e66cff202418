/**
 * What is told of a build when one thing of it is left out, done too little, undone or done out of order: every word, where
 * it stands, its story and its mend. Read against the build by hand.
 * Common practice, no source.
 */
import {describe, expect, it} from 'vitest';
import {type Told, toldOf} from './whole-build.js';

describe.each<[title: string, changes: readonly string[], ...rows: Told[]]>([
  ['the build as it should be', [], [[], []]],
  [
    'one step is left out',
    [],
    [
      ['- clean: lip'],
      ['clean-first: lip is lubed but was never cleaned @ 1 lip', '  see: lip, lip is specified here'],
    ],
    [
      ['- lube: lip with assembly-lube'],
      ['lube-first: lip ends the build without assembly-lube @ 1 lip', '  see: lip, lip is specified here'],
    ],
    [
      ['- install: shaft'],
      ['left-out: shaft is never installed @ shaft shaft', '  see: shaft, shaft belongs in the engine'],
    ],
    [
      ['- install: caps'],
      ['left-out: caps are never installed @ caps caps', '  see: caps, caps belong in the engine'],
    ],
    [
      ['- lube: bolts with engine-oil'],
      [
        'thread-condition: bolts come to torque with dry threads, and the torque is for engine-oil on the threads @ 5 bolts',
        '  see: bolts, bolts is specified with engine-oil on the threads',
      ],
    ],
    [
      ['- torque: bolts to 40 lbf·ft'],
      [
        'left-slack: bolts end the build slack: no step torques them @ 7 bolts',
        '  see: bolts, bolts must be torqued',
        '  fix: Write the missing step: torque bolts',
        '    5 / 6. Tighten the bolts. `torque: bolts to 40 lbf·ft`',
      ],
    ],
    [
      ['- stripe: bolts'],
      [
        'left-unstriped: bolts are never striped with paint, which the specification asks for @ 7 bolts',
        '  story: 6, step 6 of procedure.md: tight (torque: bolts)',
        '  story: 7, step 7 of procedure.md: locked (lock: bolts)',
        '  see: bolts, bolts is specified with stripe: true',
        '  fix: Write the missing step: stripe bolts',
        '    7 / 8. Draw a stripe of paint across the bolts. `stripe: bolts`',
      ],
    ],
    [
      ['- lock: bolts with wire-032'],
      [
        'left-unlocked: bolts are never locked; the specification asks for safety-wire @ 6 bolts',
        '  story: 6, step 6 of procedure.md: tight (torque: bolts)',
        '  see: bolts, bolts is specified with lock: safety-wire',
        '  fix: Write the missing step: lock bolts',
        '    6 / 7. Lock the bolts. `lock: bolts with safety-wire`',
      ],
    ],
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
      ['- witness: closed by "shop lead"'],
      [
        'left-unwitnessed: closed is never witnessed @ 9 closed',
        '  see: closed, closed asks for a second signature',
        '  fix: Write the missing step: witness closed',
        '    9 / 10. Have the closed looked at and signed. `witness: closed by "shop lead"`',
      ],
    ],
    [
      ['- clean: cover-joint'],
      [
        'clean-first: cover-joint is sealed but its faces are not clean @ 11 cover-joint',
        '  see: cover-joint, cover-joint is specified here',
      ],
    ],
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
      ['- install: cover'],
      ['left-out: cover is never installed @ cover cover', '  see: cover, cover belongs in the engine'],
    ],
    [
      ['- torque: nut to 10 lbf·ft'],
      [
        'left-slack: nut ends the build slack: no step torques it @ 13 nut',
        '  see: nut, nut must be torqued',
        '  fix: Write the missing step: torque nut',
        '    13 / 14. Tighten the nut. `torque: nut to 10 lbf·ft`',
      ],
    ],
    [
      ['- install: tap'],
      ['left-out: tap is never installed @ tap tap', '  see: tap, tap belongs in the engine'],
    ],
    [
      ['- cure: cover-joint for 24 h'],
      [
        'loaded-before-cure: cover-joint is not cured when oil is filled: liquid-gasket needs 24 h @ 16 cover-joint',
        '  story: 12, step 12 of procedure.md: sealed (seal: cover-joint)',
        '  see: liquid-gasket, liquid-gasket is specified here',
        '  see: cover-joint, cover-joint is specified here',
      ],
    ],
    [
      ['- fill: oil with engine-oil to 7 qt'],
      ['left-unfilled: oil is never filled @ 16 oil', '  see: oil, oil is a system of this engine'],
    ],
    [
      ['- record: number'],
      [
        'left-unrecorded: number is never written down @ number number',
        '  see: number, number is a mark of this engine',
        '  fix: Write the missing step: record number',
        '    18 / 19. Write down the number. `record: number`',
      ],
    ],
    [
      ['- record: plate'],
      [
        'left-unrecorded: plate is never written down @ plate plate',
        '  see: plate, plate is a mark of this engine',
        '  fix: Write the missing step: record plate',
        '    18 / 19. Write down the plate. `record: plate`',
      ],
    ],
    [
      ['- check: drag'],
      ['left-unchecked: drag is never checked @ drag drag', '  see: drag, drag is a check of this engine'],
    ],
  ],
  [
    'one end of two is left out',
    [],
    [
      ['torque: bolts to 40 lbf·ft => torque: bolts[front] to 40 lbf·ft'],
      [
        'left-slack: bolts[rear] end the build slack: no step torques them @ 8 bolts[rear]',
        '  see: bolts, bolts must be torqued',
        '  fix: Write the missing step: torque bolts',
        '    5 / 6. Tighten the bolts. `torque: bolts[rear] to 40 lbf·ft`',
      ],
    ],
    [
      ['stripe: bolts => stripe: bolts[front]'],
      [
        'left-unstriped: bolts[rear] are never striped with paint, which the specification asks for @ 8 bolts[rear]',
        '  story: 6, step 6 of procedure.md: tight (torque: bolts)',
        '  story: 8, step 8 of procedure.md: locked (lock: bolts)',
        '  see: bolts, bolts is specified with stripe: true',
        '  fix: Write the missing step: stripe bolts',
        '    8 / 9. Draw a stripe of paint across the bolts. `stripe: bolts[rear]`',
      ],
    ],
    [
      ['lock: bolts with wire-032 => lock: bolts[rear] with wire-032'],
      [
        'left-unlocked: bolts[front] are never locked; the specification asks for safety-wire @ 6 bolts[front]',
        '  story: 6, step 6 of procedure.md: tight (torque: bolts)',
        '  see: bolts, bolts is specified with lock: safety-wire',
        '  fix: Write the missing step: lock bolts',
        '    6 / 7. Lock the bolts. `lock: bolts[front] with safety-wire`',
      ],
    ],
    [
      ['install: caps => install: caps[rear]'],
      [
        'left-out: caps[front] are never installed @ caps caps[front]',
        '  see: caps, caps belong in the engine',
      ],
    ],
    [
      ['lube: bolts with engine-oil => lube: bolts[front] with engine-oil'],
      [
        'thread-condition: bolts[rear] come to torque with dry threads, and the torque is for engine-oil on the threads @ 6 bolts[rear]',
        '  see: bolts, bolts is specified with engine-oil on the threads',
      ],
    ],
    [
      [
        '- stripe: bolts',
        '- lock: bolts with wire-032',
        '- torque: bolts to 40 lbf·ft',
        '+ torque: bolts[front]',
        '+ torque: bolts[rear]',
      ],
      [
        'measured-slack: play is measured while bolts are slack @ 6 play',
        '  see: play, play is specified here',
        'witnessed-early: closed is signed at step 7 before bolts are as it asks @ 7 closed',
        '  see: closed, closed asks for bolts',
        '  see: bolts, bolts is specified here',
        'left-unlocked: bolts are never locked; the specification asks for safety-wire @ 19 bolts',
        '  story: 18, step 18 of procedure.md: tight (torque: bolts)',
        '  story: 19, step 19 of procedure.md: tight (torque: bolts)',
        '  see: bolts, bolts is specified with lock: safety-wire',
        'left-unstriped: bolts are never striped with paint, which the specification asks for @ 19 bolts',
        '  story: 18, step 18 of procedure.md: tight (torque: bolts)',
        '  story: 19, step 19 of procedure.md: tight (torque: bolts)',
        '  see: bolts, bolts is specified with stripe: true',
      ],
    ],
  ],
  [
    'something is undone again',
    [],
    [
      ['+ loosen: bolts[rear]'],
      [
        'left-slack: bolts[rear] end the build slack: the torque at step 6 was undone at step 21 of procedure.md (loosen: bolts) and never made good @ 21 bolts[rear]',
        '  story: 6, step 6 of procedure.md: tight (torque: bolts)',
        '  story: 21, step 21 of procedure.md: no longer tight (loosen: bolts)',
        '  see: bolts, bolts must be torqued',
        'left-unlocked: bolts[rear] end the build unlocked: done at step 8, undone at step 21 of procedure.md (loosen: bolts) and never made good @ 21 bolts[rear]',
        '  story: 6, step 6 of procedure.md: tight (torque: bolts)',
        '  story: 8, step 8 of procedure.md: locked (lock: bolts)',
        '  story: 21, step 21 of procedure.md: no longer locked (loosen: bolts)',
        '  story: 21, step 21 of procedure.md: no longer tight (loosen: bolts)',
        '  see: bolts, bolts is specified with lock: safety-wire',
        'left-unstriped: bolts[rear] end the build without the stripe of paint: done at step 7, undone at step 21 of procedure.md (loosen: bolts) and never made good @ 21 bolts[rear]',
        '  story: 6, step 6 of procedure.md: tight (torque: bolts)',
        '  story: 7, step 7 of procedure.md: striped (stripe: bolts)',
        '  story: 8, step 8 of procedure.md: locked (lock: bolts)',
        '  story: 21, step 21 of procedure.md: no longer striped (loosen: bolts)',
        '  story: 21, step 21 of procedure.md: no longer tight (loosen: bolts)',
        '  story: 21, step 21 of procedure.md: no longer locked (loosen: bolts)',
        '  see: bolts, bolts is specified with stripe: true',
        'left-unwitnessed: closed is witnessed too early: done at step 10, undone at step 21 of procedure.md (loosen: bolts) and never made good @ 21 closed',
        '  story: 10, step 10 of procedure.md: witnessed (witness: closed)',
        '  story: 21, step 21 of procedure.md: no longer witnessed (loosen: bolts)',
        '  see: closed, closed asks for a second signature',
      ],
    ],
    [
      ['+ loosen: nut'],
      [
        'left-slack: nut ends the build slack: the torque at step 14 was undone at step 21 of procedure.md (loosen: nut) and never made good @ 21 nut',
        '  story: 14, step 14 of procedure.md: tight (torque: nut)',
        '  story: 21, step 21 of procedure.md: no longer tight (loosen: nut)',
        '  see: nut, nut must be torqued',
      ],
    ],
    [
      ['+ torque: bolts to 40 lbf·ft'],
      [
        'left-unlocked: bolts end the build unlocked: done at step 8, undone at step 21 of procedure.md (torque: bolts) and never made good @ 21 bolts',
        '  story: 8, step 8 of procedure.md: locked (lock: bolts)',
        '  story: 21, step 21 of procedure.md: no longer locked (torque: bolts)',
        '  story: 21, step 21 of procedure.md: tight (torque: bolts)',
        '  see: bolts, bolts is specified with lock: safety-wire',
        '  fix: Write the missing step: lock bolts',
        '    21 / 22. Lock the bolts. `lock: bolts with safety-wire`',
        'left-unstriped: bolts end the build without the stripe of paint: done at step 7, undone at step 21 of procedure.md (torque: bolts) and never made good @ 21 bolts',
        '  story: 7, step 7 of procedure.md: striped (stripe: bolts)',
        '  story: 8, step 8 of procedure.md: locked (lock: bolts)',
        '  story: 21, step 21 of procedure.md: no longer striped (torque: bolts)',
        '  story: 21, step 21 of procedure.md: tight (torque: bolts)',
        '  story: 21, step 21 of procedure.md: no longer locked (torque: bolts)',
        '  see: bolts, bolts is specified with stripe: true',
        '  fix: Write the missing step: stripe bolts',
        '    21 / 22. Draw a stripe of paint across the bolts. `stripe: bolts`',
        'left-unwitnessed: closed is witnessed too early: done at step 10, undone at step 21 of procedure.md (torque: bolts) and never made good @ 21 closed',
        '  story: 10, step 10 of procedure.md: witnessed (witness: closed)',
        '  story: 21, step 21 of procedure.md: no longer witnessed (torque: bolts)',
        '  see: closed, closed asks for a second signature',
      ],
    ],
    [
      ['+ remove: tap'],
      [
        'left-out: tap ends the build out: done at step 15, undone at step 21 of procedure.md (remove: tap) and never made good @ 21 tap',
        '  story: 15, step 15 of procedure.md: in (install: tap)',
        '  story: 21, step 21 of procedure.md: no longer in (remove: tap)',
        '  see: tap, tap belongs in the engine',
      ],
    ],
    [
      ['+ drain: oil'],
      [
        'left-unfilled: oil is emptied again: done at step 17, undone at step 21 of procedure.md (drain: oil) and never made good @ 21 oil',
        '  story: 17, step 17 of procedure.md: filled (fill: oil)',
        '  story: 21, step 21 of procedure.md: no longer filled (drain: oil)',
        '  see: oil, oil is a system of this engine',
      ],
    ],
    [
      ['+ clean: lip'],
      ['lube-first: lip ends the build without assembly-lube @ 21 lip', '  see: lip, lip is specified here'],
    ],
    [
      ['+ renew: shaft'],
      [
        'left-unmeasured: play was measured before it was changed: done at step 9, undone at step 21 of procedure.md (renew: shaft) and never made good @ 21 play',
        '  story: 9, step 9 of procedure.md: measured (measure: play)',
        '  story: 21, step 21 of procedure.md: no longer measured (renew: shaft)',
        '  see: play, play is specified with limits',
        'left-unwitnessed: closed is witnessed too early: done at step 10, undone at step 21 of procedure.md (renew: shaft) and never made good @ 21 closed',
        '  story: 10, step 10 of procedure.md: witnessed (witness: closed)',
        '  story: 21, step 21 of procedure.md: no longer witnessed (renew: shaft)',
        '  see: closed, closed asks for a second signature',
      ],
    ],
    [
      ['+ install: pin'],
      [
        'left-in: pin is temporary, and still in at the end of the build @ 21 pin',
        '  story: 21, step 21 of procedure.md: in (install: pin)',
        '  see: pin, pin is temporary',
      ],
    ],
    [
      ['+ clean: cover-joint'],
      [
        'left-unsealed: cover-joint ends the build unsealed: done at step 12, undone at step 21 of procedure.md (clean: cover-joint) and never made good @ 21 cover-joint',
        '  story: 12, step 12 of procedure.md: sealed (seal: cover-joint)',
        '  story: 21, step 21 of procedure.md: no longer sealed (clean: cover-joint)',
        '  see: cover-joint, cover-joint is specified with a seal',
      ],
    ],
    [
      ['+ renew: bolts'],
      [
        'left-slack: bolts end the build slack: the torque at step 6 was undone at step 21 of procedure.md (renew: bolts) and never made good @ 21 bolts',
        '  story: 6, step 6 of procedure.md: tight (torque: bolts)',
        '  story: 21, step 21 of procedure.md: no longer tight (renew: bolts)',
        '  see: bolts, bolts must be torqued',
        'left-unlocked: bolts end the build unlocked: done at step 8, undone at step 21 of procedure.md (renew: bolts) and never made good @ 21 bolts',
        '  story: 6, step 6 of procedure.md: tight (torque: bolts)',
        '  story: 8, step 8 of procedure.md: locked (lock: bolts)',
        '  story: 21, step 21 of procedure.md: no longer locked (renew: bolts)',
        '  story: 21, step 21 of procedure.md: no longer tight (renew: bolts)',
        '  see: bolts, bolts is specified with lock: safety-wire',
        'left-unstriped: bolts end the build without the stripe of paint: done at step 7, undone at step 21 of procedure.md (renew: bolts) and never made good @ 21 bolts',
        '  story: 6, step 6 of procedure.md: tight (torque: bolts)',
        '  story: 7, step 7 of procedure.md: striped (stripe: bolts)',
        '  story: 8, step 8 of procedure.md: locked (lock: bolts)',
        '  story: 21, step 21 of procedure.md: no longer striped (renew: bolts)',
        '  story: 21, step 21 of procedure.md: no longer tight (renew: bolts)',
        '  story: 21, step 21 of procedure.md: no longer locked (renew: bolts)',
        '  see: bolts, bolts is specified with stripe: true',
        'left-unwitnessed: closed is witnessed too early: done at step 10, undone at step 21 of procedure.md (renew: bolts) and never made good @ 21 closed',
        '  story: 10, step 10 of procedure.md: witnessed (witness: closed)',
        '  story: 21, step 21 of procedure.md: no longer witnessed (renew: bolts)',
        '  see: closed, closed asks for a second signature',
      ],
    ],
  ],
  [
    'something is done too little',
    [],
    [
      ['torque: bolts to 40 lbf·ft => torque: bolts to snug'],
      [
        'left-slack: bolts end the build slack: step 6 of procedure.md leaves them below the specified torque @ 6 bolts',
        '  story: 6, step 6 of procedure.md: tight (torque: bolts)',
        '  see: bolts, bolts must be torqued',
        '  fix: Write the missing step: torque bolts',
        '    6 / 7. Tighten the bolts. `torque: bolts to 40 lbf·ft`',
        'lock-before-torque: bolts are locked before the final torque @ 8 bolts',
        '  story: 6, step 6 of procedure.md: tight (torque: bolts)',
        '  see: bolts, bolts is specified here',
        'measured-slack: play is measured while bolts are slack @ 9 play',
        '  see: play, play is specified here',
        'witnessed-early: closed is signed at step 10 before bolts are as it asks @ 10 closed',
        '  see: closed, closed asks for bolts',
        '  see: bolts, bolts is specified here',
      ],
    ],
    [
      ['torque: nut to 10 lbf·ft => torque: nut to snug'],
      [
        'left-slack: nut ends the build slack: step 14 of procedure.md leaves it below the specified torque @ 14 nut',
        '  story: 14, step 14 of procedure.md: tight (torque: nut)',
        '  see: nut, nut must be torqued',
        '  fix: Write the missing step: torque nut',
        '    14 / 15. Tighten the nut. `torque: nut to 10 lbf·ft`',
      ],
    ],
    [
      ['lube: lip with assembly-lube => lube: lip with engine-oil'],
      ['lube-first: lip ends the build without assembly-lube @ 2 lip', '  see: lip, lip is specified here'],
    ],
    [['lube: lip with assembly-lube => lube: lip'], []],
    [['witness: closed by "shop lead" => witness: closed'], []],
  ],
  [
    'something is done in another order',
    [],
    [['stripe: bolts => lock: bolts with wire-032', 'lock: bolts with wire-032 => stripe: bolts'], []],
    [
      [
        'install: tap => fill: oil with engine-oil to 7 qt',
        'fill: oil with engine-oil to 7 qt => install: tap',
      ],
      [
        'left-filled-open: oil is filled while tap is out @ 15 oil',
        '  see: tap, tap is specified here',
        'loaded-before-cure: cover-joint is not cured when oil is filled: liquid-gasket needs 24 h @ 15 cover-joint',
        '  story: 12, step 12 of procedure.md: sealed (seal: cover-joint)',
        '  see: liquid-gasket, liquid-gasket is specified here',
        '  see: cover-joint, cover-joint is specified here',
      ],
    ],
    [
      [
        'install: cover => fill: oil with engine-oil to 7 qt',
        'fill: oil with engine-oil to 7 qt => install: cover',
      ],
      [
        'left-filled-open: oil is filled while cover is out @ 13 oil',
        '  see: cover, cover is specified here',
        'left-filled-open: oil is filled while tap is out @ 13 oil',
        '  see: tap, tap is specified here',
        'loaded-before-cure: cover-joint is not cured when oil is filled: liquid-gasket needs 24 h @ 13 cover-joint',
        '  story: 12, step 12 of procedure.md: sealed (seal: cover-joint)',
        '  see: liquid-gasket, liquid-gasket is specified here',
        '  see: cover-joint, cover-joint is specified here',
        'install-order: cover is not in when nut is torqued @ 14 cover',
        '  see: nut, nut holds cover',
      ],
    ],
    [
      [
        'seal: cover-joint with liquid-gasket => fill: oil with engine-oil to 7 qt',
        'fill: oil with engine-oil to 7 qt => seal: cover-joint with liquid-gasket',
      ],
      [
        'left-filled-open: oil is filled while cover is out @ 12 oil',
        '  see: cover, cover is specified here',
        'left-filled-open: oil is filled while tap is out @ 12 oil',
        '  see: tap, tap is specified here',
        'left-filled-open: oil is filled while cover-joint is open @ 12 oil',
        '  see: cover-joint, cover-joint is specified here',
        'install-order: cover-joint is not made up when cover closes it @ 13 cover-joint',
        '  see: cover-joint, cover-joint is specified here',
      ],
    ],
    [
      ['install: caps => torque: bolts to 40 lbf·ft', 'torque: bolts to 40 lbf·ft => install: caps'],
      [
        'install-order: caps are not in when bolts are torqued @ 4 caps',
        '  see: bolts, bolts hold caps',
        'thread-condition: bolts come to torque with dry threads, and the torque is for engine-oil on the threads @ 4 bolts',
        '  see: bolts, bolts is specified with engine-oil on the threads',
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
