/** What is left undone at the end, where that is told, and the step that mends it. Common practice, no source. */
import {describe} from 'vitest';
import {SILENT, tellsWhole} from '../help/stories.js';

const NONE = 'lock: {value: none, because: stretch holds them}';

describe('where it is told', () => {
  tellsWhole(
    `
parts:
  block: {given: true}
  caps: {at: [front]}
  cover: {}
  lid: {closes: [lid-joint]}
  pin: {temporary: true}
surfaces:
  lobes: {on: cover, assembly: lubed, lubricants: [assembly-lube]}
  rim: {assembly: lubed, lubricants: [assembly-lube]}
joints:
  cover-joint: {between: [block, cover], seal: [paper-gasket]}
  lid-joint: {between: [block, lid], seal: [paper-gasket]}
fasteners:
  bolts: {at: [front, rear], count: 4, holds: [caps], torque: 40 lbf·ft, threads: dry, ${NONE}}
fits:
  play: {between: [cover], limits: 0.001–0.003 in, using: [feeler-gauges]}
checks:
  drag: {expect: turns by hand}
`,
    [
      [
        'beside a part that has no such place, a part that carries it, and one that lies at a joint',
        'install: caps; torque: bolts[front]; install: cover; install: lid',
        `
lube-first: rim ends the build without assembly-lube @ rim rim
  see: rim, rim is specified here
spec-silent: play does not say when it is measured; write when: {installed: [parts], tight: [fasteners]} @ play play
left-unchecked: drag is never checked @ drag drag
  see: drag, drag is a check of this engine
left-slack: bolts[rear] end the build slack: no step torques them @ 1 bolts[rear]
  see: bolts, bolts must be torqued
left-unmeasured: play is never measured @ 3 play
  see: play, play is specified with limits
left-unsealed: cover-joint is never made up with its seal @ 3 cover-joint
  see: cover-joint, cover-joint is specified with a seal
lube-first: lobes end the build without assembly-lube @ 3 lobes
  see: lobes, lobes is specified here
left-unsealed: lid-joint is never made up with its seal @ 4 lid-joint
  see: lid-joint, lid-joint is specified with a seal`,
      ],
      [
        'where a pin went in, and not where it was wiped',
        'clean: lobes, rim, cover-joint, lid-joint; lube: lobes, rim with assembly-lube; seal: cover-joint, lid-joint with paper-gasket; install: caps; torque: bolts; install: cover, lid; install: pin; clean: pin; measure: play; check: drag',
        `
spec-silent: play does not say when it is measured; write when: {installed: [parts], tight: [fasteners]} @ play play
left-in: pin is temporary, and still in at the end of the build @ 7 pin
  story: 7, step 7 of procedure.md: in (install: pin)
  see: pin, pin is temporary`,
      ],
    ],
  );
});

describe('locks that are left off', () => {
  tellsWhole(
    `
parts:
  block: {given: true}
  caps: {}
fasteners:
  nut: {holds: [caps], torque: 10 lbf·ft, threads: dry, lock: safety-wire}
`,
    [
      [
        'a nut that is never locked',
        'install: caps; torque: nut to 10 lbf·ft',
        `
left-unlocked: nut is never locked; the specification asks for safety-wire @ 2 nut
  story: 2, step 2 of procedure.md: tight (torque: nut)
  see: nut, nut is specified with lock: safety-wire
  fix: Write the missing step: lock nut
    2 / 3. Lock the nut. \`lock: nut with safety-wire\``,
      ],
      [
        'a nut that is only snug and never locked',
        'install: caps; torque: nut to snug',
        `
left-slack: nut ends the build slack: step 2 of procedure.md leaves it below the specified torque @ 2 nut
  story: 2, step 2 of procedure.md: tight (torque: nut)
  see: nut, nut must be torqued
  fix: Write the missing step: torque nut
    2 / 3. Tighten the nut. \`torque: nut to 10 lbf·ft\`
left-unlocked: nut is never locked; the specification asks for safety-wire @ 2 nut
  story: 2, step 2 of procedure.md: tight (torque: nut)
  see: nut, nut is specified with lock: safety-wire`,
      ],
      [
        'a nut that was locked and slackened',
        'install: caps; torque: nut to 10 lbf·ft; lock: nut with wire-032; loosen: nut; torque: nut to 10 lbf·ft',
        `
left-unlocked: nut ends the build unlocked: done at step 3, undone at step 4 of procedure.md (loosen: nut) and never made good @ 5 nut
  story: 3, step 3 of procedure.md: locked (lock: nut)
  story: 4, step 4 of procedure.md: no longer locked (loosen: nut)
  story: 5, step 5 of procedure.md: tight (torque: nut)
  see: nut, nut is specified with lock: safety-wire
  fix: Write the missing step: lock nut
    5 / 6. Lock the nut. \`lock: nut with safety-wire\``,
      ],
      [
        'a nut that was tight, never locked, and slackened',
        'install: caps; torque: nut to 10 lbf·ft; loosen: nut',
        `
left-slack: nut ends the build slack: the torque at step 2 was undone at step 3 of procedure.md (loosen: nut) and never made good @ 3 nut
  story: 2, step 2 of procedure.md: tight (torque: nut)
  story: 3, step 3 of procedure.md: no longer tight (loosen: nut)
  see: nut, nut must be torqued
left-unlocked: nut is never locked; the specification asks for safety-wire @ 3 nut
  story: 2, step 2 of procedure.md: tight (torque: nut)
  story: 3, step 3 of procedure.md: no longer tight (loosen: nut)
  see: nut, nut is specified with lock: safety-wire`,
      ],
    ],
  );
  tellsWhole(
    `
parts:
  block: {given: true}
  caps: {}
fasteners:
  nut: {holds: [caps], torque: 10 lbf·ft, threads: dry, lock: [cotter-pin, tab-washer, safety-wire]}
`,
    [
      [
        'two of three',
        'install: caps; torque: nut to 10 lbf·ft; lock: nut with cotter-pin',
        `
left-unlocked: nut ends the build without tab-washer and safety-wire; the specification asks for cotter-pin, tab-washer and safety-wire @ 3 nut
  story: 2, step 2 of procedure.md: tight (torque: nut)
  story: 3, step 3 of procedure.md: locked (lock: nut)
  see: nut, nut is specified with lock: [cotter-pin, tab-washer, safety-wire]
  fix: Write the missing step: lock nut
    2 / 3. Lock the nut. \`lock: nut with tab-washer, safety-wire\``,
      ],
      [
        'all of three',
        'install: caps; torque: nut to 10 lbf·ft',
        `
left-unlocked: nut is never locked; the specification asks for cotter-pin, tab-washer and safety-wire @ 2 nut
  story: 2, step 2 of procedure.md: tight (torque: nut)
  see: nut, nut is specified with lock: [cotter-pin, tab-washer, safety-wire]
  fix: Write the missing step: lock nut
    2 / 3. Lock the nut. \`lock: nut with cotter-pin, tab-washer, safety-wire\``,
      ],
    ],
  );
  tellsWhole(
    `
parts:
  block: {given: true}
  caps: {}
fasteners:
  nut: {holds: [caps], torque: 10 lbf·ft, threads: dry, lock: [mystery]}
`,
    [
      [
        'one that nobody knows',
        'install: caps; torque: nut to 10 lbf·ft',
        `
unknown-item: nothing is called mystery; add it under consumables: @ nut nut
left-unlocked: nut is never locked; the specification asks for mystery @ 2 nut
  story: 2, step 2 of procedure.md: tight (torque: nut)
  see: nut, nut is specified with lock: mystery`,
      ],
    ],
  );
});

describe('locks that are left off at two places', () => {
  tellsWhole(
    `
parts:
  block: {given: true}
  caps: {}
fasteners:
  bolts: {at: [front, rear], count: 2, holds: [caps], torque: 10 lbf·ft, threads: dry, lock: safety-wire}
`,
    [
      [
        'of which one was locked',
        'install: caps; torque: bolts; lock: bolts[rear] with wire-032; loosen: bolts[rear]; torque: bolts[rear]',
        `
left-unlocked: bolts end the build unlocked: done at step 3, undone at step 4 of procedure.md (loosen: bolts) and never made good @ 5 bolts
  story: 2, step 2 of procedure.md: tight (torque: bolts)
  story: 3, step 3 of procedure.md: locked (lock: bolts)
  story: 4, step 4 of procedure.md: no longer locked (loosen: bolts)
  story: 5, step 5 of procedure.md: tight (torque: bolts)
  see: bolts, bolts is specified with lock: safety-wire`,
      ],
    ],
  );
});

describe('stripes that are left off', () => {
  tellsWhole(
    `
parts:
  block: {given: true}
  caps: {}
fasteners:
  nut: {holds: [caps], torque: 10 lbf·ft, threads: dry, ${NONE}, stripe: true}
`,
    [
      [
        'a nut that is never striped',
        'install: caps; torque: nut to 10 lbf·ft',
        `
left-unstriped: nut is never striped with paint, which the specification asks for @ 2 nut
  story: 2, step 2 of procedure.md: tight (torque: nut)
  see: nut, nut is specified with stripe: true
  fix: Write the missing step: stripe nut
    2 / 3. Draw a stripe of paint across the nut. \`stripe: nut\``,
      ],
      [
        'a nut that is torqued once more',
        'install: caps; torque: nut to 10 lbf·ft; stripe: nut; torque: nut to 10 lbf·ft',
        `
left-unstriped: nut ends the build without the stripe of paint: done at step 3, undone at step 4 of procedure.md (torque: nut) and never made good @ 4 nut
  story: 3, step 3 of procedure.md: striped (stripe: nut)
  story: 4, step 4 of procedure.md: no longer striped (torque: nut)
  story: 4, step 4 of procedure.md: tight (torque: nut)
  see: nut, nut is specified with stripe: true
  fix: Write the missing step: stripe nut
    4 / 5. Draw a stripe of paint across the nut. \`stripe: nut\``,
      ],
    ],
  );
});

describe('seals that are left to cure', () => {
  tellsWhole(
    `
parts:
  block: {given: true}
  cover: {closes: [joint]}
joints:
  joint: {between: [block, cover], seal: [liquid-gasket]}
systems:
  oil: {at: [left, right], joints: [joint], closed-by: [], with: [engine-oil]}
`,
    [
      [
        'and are laid once more after that',
        'clean: joint; seal: joint with liquid-gasket; install: cover; cure: joint for 24 h; seal: joint with liquid-gasket',
        `
left-unfilled: oil is never filled @ 5 oil
  see: oil, oil is a system of this engine
left-unsealed: joint ends the build with its seal uncured: done at step 4, undone at step 5 of procedure.md (seal: joint) and never made good @ 5 joint
  story: 4, step 4 of procedure.md: cured (cure: joint)
  story: 5, step 5 of procedure.md: no longer cured (seal: joint)
  story: 5, step 5 of procedure.md: sealed (seal: joint)
  see: joint, the sealant of joint has a cure`,
      ],
      [
        'not at all, where the system is filled at one place',
        'clean: joint; seal: joint with liquid-gasket; install: cover; fill: oil[left] with engine-oil',
        `
left-unfilled: oil[right] is never filled @ 2 oil[right]
  see: oil, oil is a system of this engine
loaded-before-cure: joint is not cured when oil is filled: liquid-gasket needs 24 h @ 4 joint
  story: 2, step 2 of procedure.md: sealed (seal: joint)
  see: liquid-gasket, liquid-gasket is specified here
  see: joint, joint is specified here`,
      ],
    ],
  );
});

describe('a signature that something undoes', () => {
  tellsWhole(
    `
parts:
  block: {given: true}
  caps: {}
  cover: {after: [signed]}
fasteners:
  nut: {holds: [caps], torque: 10 lbf·ft, threads: dry, ${NONE}}
hold-points:
  signed: {asks: [nut], by: shop lead}
`,
    [
      [
        'is mended behind what is done again, whatever came after the first',
        'install: caps; torque: nut to 10 lbf·ft; witness: signed; install: cover; loosen: nut; torque: nut to 10 lbf·ft; install: block',
        `
left-unwitnessed: signed is witnessed too early: done at step 3, undone at step 5 of procedure.md (loosen: nut) and never made good @ 5 signed
  story: 3, step 3 of procedure.md: witnessed (witness: signed)
  story: 5, step 5 of procedure.md: no longer witnessed (loosen: nut)
  see: signed, signed asks for a second signature
  fix: Write the missing step: witness signed
    6 / 7. Have the signed looked at and signed. \`witness: signed by "shop lead"\``,
      ],
    ],
  );
});

const READ = (bolts: string, fit: string) => `
parts:
  block: {given: true}
  caps: {}
  plate: {}
  lamp: {}
fasteners:
  bolts: {${bolts}count: 4, holds: [caps], torque: 40 lbf·ft, threads: dry, ${NONE}}
fits:
  play: {${fit}between: [block], limits: 0.001–0.003 in, using: [feeler-gauges], when: {installed: [caps], tight: [bolts]}}
`;

describe('a fit that is never read', () => {
  tellsWhole(READ('', 'disturbed-by: [plate], '), [
    [
      'is read behind the last that it needs',
      'install: plate, lamp; install: caps; torque: bolts to 40 lbf·ft',
      `
left-unmeasured: play is never measured @ 3 play
  see: play, play is specified with limits
  fix: Write the missing step: measure play
    3 / 4. Measure the play. \`measure: play using feeler-gauges\``,
    ],
    [
      'is not read where a later step moves something that disturbs it',
      'install: caps; torque: bolts to 40 lbf·ft; install: lamp; install: plate; turn: lamp',
      `
left-unmeasured: play is never measured @ 2 play
  see: play, play is specified with limits`,
    ],
    [
      'is read where a later step moves something else',
      'install: plate; install: caps; torque: bolts to 40 lbf·ft; install: lamp; turn: plate',
      `
left-unmeasured: play is never measured @ 3 play
  see: play, play is specified with limits
  fix: Write the missing step: measure play
    3 / 4. Measure the play. \`measure: play using feeler-gauges\``,
    ],
  ]);
  tellsWhole(READ('at: [front, rear], ', ''), [
    [
      'is not read over a bolt that is only snug',
      'install: plate, lamp; install: caps; torque: bolts[front] to 40 lbf·ft; torque: bolts[rear] to snug',
      `
left-slack: bolts[rear] end the build slack: step 4 of procedure.md leaves them below the specified torque @ 4 bolts[rear]
  story: 4, step 4 of procedure.md: tight (torque: bolts)
  see: bolts, bolts must be torqued
  fix: Write the missing step: torque bolts
    4 / 5. Tighten the bolts. \`torque: bolts[rear] to 40 lbf·ft\`
left-unmeasured: play is never measured @ 4 play
  see: play, play is specified with limits`,
    ],
  ]);
  tellsWhole(READ('at: [front, rear], ', 'at: [front, rear], '), [
    [
      'is not read over bolts that are only snug',
      'install: plate, lamp; install: caps; torque: bolts to snug',
      `
left-slack: bolts end the build slack: step 3 of procedure.md leaves them below the specified torque @ 3 bolts
  story: 3, step 3 of procedure.md: tight (torque: bolts)
  see: bolts, bolts must be torqued
  fix: Write the missing step: torque bolts
    3 / 4. Tighten the bolts. \`torque: bolts to 40 lbf·ft\`
left-unmeasured: play is never measured @ 3 play
  see: play, play is specified with limits`,
    ],
  ]);
});

describe('what is temporary', () => {
  tellsWhole(
    `
parts:
  block: {given: true}
  plug: {temporary: true, seats-in: port, size: 1 in, closes: [port]}
  bush: {seats-in: bore, size: 1 in}
  cover: {closes: [bore]}
surfaces:
  port: {on: block, assembly: clean, size: 1 in}
  bore: {on: block, assembly: clean, size: 1 in}
`,
    [
      [
        'goes in twice and stays, and does not close over itself',
        'clean: port, bore; install: plug; remove: plug; install: plug; install: plug; clean: bore; install: bush; install: cover',
        `
clean-first: port is not clean when plug closes it, and goes together clean @ 5 port
  story: 1, step 1 of procedure.md: clean (clean: port)
  story: 3, step 3 of procedure.md: no longer clean (remove: plug)
  see: port, port is specified here
install-order: plug goes in but is in already since step 4 @ 5 plug
  story: 4, step 4 of procedure.md: in (install: plug)
left-in: plug is temporary, and still in at the end of the build @ 5 plug
  story: 5, step 5 of procedure.md: in (install: plug)
  see: plug, plug is temporary`,
      ],
      [
        'goes in twice, and does not close over itself',
        'clean: port, bore; install: plug; install: plug; remove: plug; clean: bore; install: bush; install: cover',
        `
install-order: plug goes in but is in already since step 2 @ 3 plug
  story: 2, step 2 of procedure.md: in (install: plug)`,
      ],
      [
        'is not what stays, and comes out for another look behind its cover',
        'clean: port, bore; install: plug; remove: plug; clean: bore; install: bush; install: cover; remove: bush; install: bush',
        SILENT,
      ],
    ],
  );
});
