/**
 * Fluids over each other, what serves once and is used again, limits that only a step states, and tools whose range is of
 * something else than they are used for: all that is told of them. Every value is invented; common practice, no source.
 */
import {describe} from 'vitest';
import {SILENT, tells} from '../help/stories.js';

const SHOP = `
shop: {name: Example Works}
sources:
  house: {title: Example house notes, note: invented}
tools:
  old-wrench: {name: old wrench, range: {value: 10–80 mm, source: house}}
consumables:
  engine-oil: {use: lubricant}
  flushing-oil: {use: fluid}
  additive: {use: fluid}
  slow-paste: {use: sealant}
  gum: {use: sealant}
  gear-oil: {use: lubricant}
`;

describe('a fluid over another', () => {
  tells(
    'systems:\n  oil: {joints: [], closed-by: [], with: [flushing-oil, engine-oil, additive]}\n',
    [
      [
        'is told',
        'fill: oil with flushing-oil; fill: oil with engine-oil',
        `
fluids-mixed oil: oil: engine-oil goes in while flushing-oil is still in it; drain it first (\`drain: oil\`)
  story: step 1 of procedure.md: filled (fill: oil)
  see engine.yaml:5: oil is specified here`,
      ],
      [
        'is told of several in the plural',
        'fill: oil with flushing-oil, additive; fill: oil with engine-oil',
        `
fluids-mixed oil: oil: engine-oil goes in while flushing-oil and additive are still in it; drain it first (\`drain: oil\`)
  story: step 1 of procedure.md: filled (fill: oil)
  see engine.yaml:5: oil is specified here`,
      ],
      [
        'is told of several that go in likewise',
        'fill: oil with flushing-oil; fill: oil with engine-oil, additive',
        `
fluids-mixed oil: oil: engine-oil and additive go in while flushing-oil is still in it; drain it first (\`drain: oil\`)
  story: step 1 of procedure.md: filled (fill: oil)
  see engine.yaml:5: oil is specified here`,
      ],
      [
        'is none where one of them is in it',
        'fill: oil with engine-oil, additive; fill: oil with additive',
        SILENT,
      ],
      ['is none where nobody said which', 'fill: oil; fill: oil with engine-oil', SILENT],
      [
        'is none where the first was drained',
        'fill: oil with flushing-oil; drain: oil; fill: oil with engine-oil',
        SILENT,
      ],
    ],
    SHOP,
  );
});

describe('what serves once', () => {
  tells(
    `
parts:
  block: {given: true}
  hub: {}
fasteners:
  nut: {holds: [hub], single-use: true, torque: 40 N·m, threads: dry, lock: {value: none, because: stretch}}
  studs: {holds: [hub], single-use: true, torque: 40 N·m, angle: 90 °, threads: dry, lock: {value: none, because: stretch}}
`,
    [
      [
        'is told at its final torque',
        'install: hub; torque: nut to 40 N·m; renew: studs; torque: studs to 40 N·m; torque: studs turn 90 °',
        `
single-use-reused nut: nut serves once, and comes to its final torque without being renewed
  see engine.yaml:9: nut is specified here`,
      ],
      [
        'is told at no torque that it is only turned on from',
        'install: hub; renew: nut; torque: nut to 40 N·m; torque: studs to 40 N·m',
        `
left-slack studs: studs end the build slack: step 4 of procedure.md brings them to their torque, and no step turns them on by 90°
  story: step 4 of procedure.md: tight (torque: studs)
  see engine.yaml:10: studs must be torqued`,
      ],
    ],
    SHOP,
  );
});

describe('a plug that serves once', () => {
  tells('parts:\n  block: {given: true}\n  plug: {single-use: true, at: [front, rear]}\n', [
    [
      'is told where it was never new',
      'install: plug',
      `
single-use-reused plug: plug serves once, and goes in without being renewed
  see engine.yaml:6: plug is specified here`,
    ],
    [
      'is told with the end that was used already',
      'renew: plug[front]; install: plug[front]; remove: plug; install: plug',
      `
install-order plug[rear]: plug[rear] comes out but is not in
single-use-reused plug: plug serves once, and goes in a second time
  story: step 1 of procedure.md: renewed (renew: plug)
  story: step 3 of procedure.md: no longer renewed (remove: plug)
  see engine.yaml:6: plug is specified here`,
    ],
    ['is new', 'renew: plug; install: plug', SILENT],
  ]);
});

describe('a face of a new part', () => {
  tells(
    `
parts:
  block: {given: true}
  shells: {at: [front, rear], single-use: true}
  caps: {closes: [faces]}
surfaces:
  faces: {on: shells, assembly: lubed, lubricants: [engine-oil, gear-oil]}
`,
    [
      [
        'is clean, and takes either oil',
        'renew: shells; lube: faces with engine-oil; install: shells; install: caps',
        SILENT,
      ],
      [
        'is not clean once it was closed over',
        'renew: shells; install: shells; lube: faces with engine-oil; install: caps; remove: caps; lube: faces with engine-oil; install: caps',
        `
clean-first faces: faces are lubed but are no longer clean
  story: step 5 of procedure.md: no longer clean (remove: caps)
  see engine.yaml:10: faces is specified here`,
      ],
      [
        'is not clean where one of two is new',
        'renew: shells[front]; lube: faces with engine-oil; renew: shells; lube: faces with engine-oil; install: shells; install: caps',
        `
clean-first faces: faces are lubed but were never cleaned
  see engine.yaml:10: faces is specified here`,
      ],
    ],
    SHOP,
  );
});

describe('a cure', () => {
  tells(
    `
parts:
  block: {given: true}
  sump: {closes: [seam]}
joints:
  seam: {between: [block, sump], seal: [slow-paste]}
`,
    [
      [
        'of a joint made up as specified has no source',
        'clean: seam; seal: seam; install: sump; cure: seam for 8 h',
        `
source-missing seam: the cure of seam stands only in this step, without a source; specify it for the sealant in shop.yaml
  see engine.yaml:9: seam is specified here`,
      ],
      [
        'of a joint made up with something else beside has no source to have',
        'clean: seam; seal: seam with slow-paste, gum; install: sump; cure: seam for 8 h',
        SILENT,
      ],
      [
        'of no stated time needs none',
        'clean: seam; seal: seam with slow-paste; install: sump; cure: seam; cure: slow-paste for 8 h',
        SILENT,
      ],
    ],
    SHOP,
  );
});

describe('limits and cures', () => {
  tells(
    `
parts:
  block: {given: true}
  shaft: {}
fits:
  play: {between: [block, shaft], using: [feeler-gauges], when: {installed: [shaft]}}
checks:
  drag: {}
`,
    [
      [
        'that only a step states have no source',
        'install: shaft; measure: play using feeler-gauges within 0.1–0.2 mm; check: drag within 1–2 N·m',
        `
spec-silent play: play does not say its limits; write limits: 0.0015–0.0035 in, or unknown
spec-silent drag: drag does not say what is expected; write limits: with a unit, or expect: in words
source-missing play: the limits of play stand only in this step, without a source; specify them in engine.yaml
  see engine.yaml:9: play is specified here
source-missing drag: the limits of drag stand only in this step, without a source; specify them in engine.yaml
  see engine.yaml:11: drag is specified here`,
      ],
    ],
  );
});

describe('a tool that tightens', () => {
  const engine = `
parts:
  block: {given: true}
  lid: {}
fasteners:
  screws: {holds: [lid], torque: 40 N·m, threads: dry, lock: {value: none, because: stretch}}
  nuts: {holds: [lid], torque: 40 N·m, threads: dry, lock: {value: none, because: stretch}}
`;
  tells(
    engine,
    [
      [
        'has a range of torques, and is told where it first tightens',
        'install: lid; torque: nuts to 40 N·m using old-wrench; torque: screws to 40 N·m using old-wrench',
        `
unit-wrong-kind old-wrench: the range of old-wrench is a length where a torque is due, for it is a torque wrench; write it in lbf·ft, lbf·in or N·m
  see procedure.md:8: it tightens to a torque here`,
      ],
      [
        'may have another range beside one of torques, which is what tightens',
        'install: lid; torque: nuts to 40 N·m using old-wrench, new-wrench; torque: screws to 40 N·m using new-wrench',
        SILENT,
      ],
    ],
    SHOP.replace('tools:', 'tools:\n  new-wrench: {range: {value: 20–120 N·m, source: house}}'),
  );
});
