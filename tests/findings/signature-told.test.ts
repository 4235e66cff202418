/** A second signature that comes too early, by each kind of thing that it asks for. Common practice, no source. */
import {describe} from 'vitest';
import {SILENT, tells} from '../help/stories.js';

const KINDS = `
parts:
  block: {given: true}
  pump: {at: [left, right]}
surfaces:
  faces: {on: block, assembly: clean}
  bores: {on: block, assembly: lubed, lubricants: [engine-oil]}
joints:
  pump-joint: {between: [block], seal: [paper-gasket]}
  plain-joint: {between: [block], seal: {value: none, because: metal to metal}}
fasteners:
  studs: {count: 2, holds: [block], torque: 20 lbf·ft, threads: dry, lock: [safety-wire, tab-washer], stripe: true}
  plugs: {count: 2, holds: [block], threads: dry, torque: {value: none, because: they are pressed in}, lock: {value: none, because: they are pressed in}}
  caps: {count: 2, holds: [block], torque: 20 lbf·ft, angle: 90 °, threads: dry, lock: {value: none, because: stretch holds them}}
fits:
  play: {between: [block], limits: 0.001–0.004 in, using: [feeler-gauges], when: {installed: []}}
marks:
  number: {stamped: front}
checks:
  turns: {expect: freely}
systems:
  cooling: {joints: [], with: [coolant], amount: 7 qt}
hold-points:
  first: {asks: [turns], by: shop lead}
  last: {asks: [block, pump, faces, bores, pump-joint, plain-joint, studs, plugs, caps, play, number, turns, cooling, first], by: shop lead}
`;

const KINDS_SHOP = `
shop: {name: Example Works}
sources:
  house: {title: Example house notes, note: invented}
tools:
  feeler-gauges: {name: feeler gauges, gauge: true}
consumables:
  engine-oil: {use: lubricant}
  paper-gasket: {use: gasket}
  wire: {use: lock, lock: safety-wire}
  tabs: {use: lock, lock: tab-washer}
  coolant: {use: fluid}
  locker: {use: lock, lock: threadlocker}
`;

const LOCKED = `
parts:
  block: {given: true}
fasteners:
  studs: {at: [left, right], count: 4, holds: [block], torque: 20 lbf·ft, threads: [locker], lock: [safety-wire, tab-washer, locker]}
hold-points:
  last: {asks: [studs], by: shop lead}
`;

const SPECIAL = `
parts:
  block: {given: true}
  shells: {}
joints:
  plain-joint: {between: [block], seal: {value: none, because: metal to metal}}
  bare-joint: {between: [block]}
fasteners:
  pins: {count: 2, holds: [block], threads: dry, torque: {value: none, because: they are pressed in}, lock: {value: none, because: they are pressed in}}
  studs: {count: 2, holds: [block], threads: dry, torque: unknown, lock: {value: none, because: stretch holds them}}
  screws: {count: 2, holds: [block], threads: dry, lock: {value: none, because: stretch holds them}}
alterations:
  ream: {of: [shells], does: ream the bore}
hold-points:
  last: {asks: [plain-joint, bare-joint, pins, studs, screws, ream], by: shop lead}
`;

describe('a second signature', () => {
  tells(
    KINDS,
    [
      [
        'comes when all that it asks for is done',
        'clean: faces, bores, pump-joint; lube: bores with engine-oil; seal: pump-joint with paper-gasket; install: pump; torque: caps to 20 lbf·ft turn 90 °; measure: play; record: number; check: turns; fill: cooling; witness: first; torque: studs; lock: studs with wire; lock: studs with tabs; stripe: studs; witness: last',
        SILENT,
      ],
      [
        'comes before any of it',
        'witness: last; clean: faces, bores, pump-joint; lube: bores with engine-oil; seal: pump-joint with paper-gasket; install: pump; torque: caps to 20 lbf·ft turn 90 °; measure: play; record: number; check: turns; fill: cooling; witness: first; torque: studs; lock: studs with wire; lock: studs with tabs; stripe: studs',
        `
witnessed-early last: last is signed at step 1 before pump is as it asks
  see engine.yaml:28: last asks for pump
  see engine.yaml:7: pump is specified here
witnessed-early last: last is signed at step 1 before faces are as it asks
  see engine.yaml:28: last asks for faces
  see engine.yaml:9: faces is specified here
witnessed-early last: last is signed at step 1 before bores are as it asks
  see engine.yaml:28: last asks for bores
  see engine.yaml:10: bores is specified here
witnessed-early last: last is signed at step 1 before pump-joint is as it asks
  see engine.yaml:28: last asks for pump-joint
  see engine.yaml:12: pump-joint is specified here
witnessed-early last: last is signed at step 1 before studs are as it asks
  see engine.yaml:28: last asks for studs
  see engine.yaml:15: studs is specified here
witnessed-early last: last is signed at step 1 before caps are as it asks
  see engine.yaml:28: last asks for caps
  see engine.yaml:17: caps is specified here
witnessed-early last: last is signed at step 1 before play is as it asks
  see engine.yaml:28: last asks for play
  see engine.yaml:19: play is specified here
witnessed-early last: last is signed at step 1 before number is as it asks
  see engine.yaml:28: last asks for number
  see engine.yaml:21: number is specified here
witnessed-early last: last is signed at step 1 before turns are as it asks
  see engine.yaml:28: last asks for turns
  see engine.yaml:23: turns is specified here
witnessed-early last: last is signed at step 1 before cooling is as it asks
  see engine.yaml:28: last asks for cooling
  see engine.yaml:25: cooling is specified here
witnessed-early last: last is signed at step 1 before first is as it asks
  see engine.yaml:28: last asks for first
  see engine.yaml:27: first is specified here`,
      ],
      [
        'comes before one part is in and one surface is clean',
        'lube: bores with engine-oil; seal: pump-joint with paper-gasket; install: pump[left]; torque: caps to 20 lbf·ft turn 90 °; measure: play; record: number; check: turns; fill: cooling; witness: first; torque: studs; lock: studs with wire; lock: studs with tabs; stripe: studs; witness: last; install: pump[right]; clean: faces, bores',
        `
clean-first bores: bores are lubed but were never cleaned
  see engine.yaml:10: bores is specified here
clean-first pump-joint: pump-joint is sealed but its faces are not clean
  see engine.yaml:12: pump-joint is specified here
witnessed-early last: last is signed at step 14 before pump[right] is as it asks
  see engine.yaml:28: last asks for pump
  see engine.yaml:7: pump is specified here
witnessed-early last: last is signed at step 14 before faces are as it asks
  see engine.yaml:28: last asks for faces
  see engine.yaml:9: faces is specified here
lube-first bores: bores end the build without engine-oil
  see engine.yaml:10: bores is specified here`,
      ],
      [
        'comes before the studs are locked',
        'clean: faces, bores, pump-joint; lube: bores with engine-oil; seal: pump-joint with paper-gasket; install: pump; torque: caps to 20 lbf·ft turn 90 °; measure: play; record: number; check: turns; fill: cooling; witness: first; torque: studs; witness: last; lock: studs with wire; lock: studs with tabs; stripe: studs',
        `
witnessed-early last: last is signed at step 12 before studs are as it asks
  see engine.yaml:28: last asks for studs
  see engine.yaml:15: studs is specified here`,
      ],
      [
        'comes when one of the two locks is on',
        'clean: faces, bores, pump-joint; lube: bores with engine-oil; seal: pump-joint with paper-gasket; install: pump; torque: caps to 20 lbf·ft turn 90 °; measure: play; record: number; check: turns; fill: cooling; witness: first; torque: studs; lock: studs with tabs; witness: last; lock: studs with wire; stripe: studs',
        `
witnessed-early last: last is signed at step 13 before studs are as it asks
  see engine.yaml:28: last asks for studs
  see engine.yaml:15: studs is specified here`,
      ],
      [
        'comes before the stripe',
        'clean: faces, bores, pump-joint; lube: bores with engine-oil; seal: pump-joint with paper-gasket; install: pump; torque: caps to 20 lbf·ft turn 90 °; measure: play; record: number; check: turns; fill: cooling; witness: first; torque: studs; lock: studs with wire; lock: studs with tabs; witness: last; stripe: studs',
        `
witnessed-early last: last is signed at step 14 before studs are as it asks
  see engine.yaml:28: last asks for studs
  see engine.yaml:15: studs is specified here`,
      ],
      [
        'comes before the turn after the torque',
        'clean: faces, bores, pump-joint; lube: bores with engine-oil; seal: pump-joint with paper-gasket; install: pump; measure: play; record: number; check: turns; fill: cooling; witness: first; torque: studs; lock: studs with wire; lock: studs with tabs; stripe: studs; torque: caps to 20 lbf·ft; witness: last; torque: caps to 20 lbf·ft turn 90 °',
        `
witnessed-early last: last is signed at step 15 before caps are as it asks
  see engine.yaml:28: last asks for caps
  see engine.yaml:17: caps is specified here`,
      ],
      [
        'comes though a lock is never put on, which is told as left off',
        'clean: faces, bores, pump-joint; lube: bores with engine-oil; seal: pump-joint with paper-gasket; install: pump; torque: caps to 20 lbf·ft turn 90 °; measure: play; record: number; check: turns; fill: cooling; witness: first; torque: studs; lock: studs with tabs; stripe: studs; witness: last',
        `
left-unlocked studs: studs end the build without safety-wire; the specification asks for safety-wire and tab-washer
  story: step 11 of procedure.md: tight (torque: studs)
  story: step 12 of procedure.md: locked (lock: studs)
  see engine.yaml:15: studs is specified with lock: [safety-wire, tab-washer]
  fix: Write the missing step: lock studs: "\\n12. Lock the studs. \`lock: studs with safety-wire\`" after "…: studs\`"`,
      ],
    ],
    KINDS_SHOP,
  );
});

describe('a second signature for studs with three locks', () => {
  tells(
    LOCKED,
    [
      [
        'comes when all are on',
        'lock: studs with locker; torque: studs; lock: studs with wire, tabs; witness: last',
        SILENT,
      ],
      [
        'comes before one of them, and another is never put on',
        'lock: studs with locker; torque: studs; witness: last; lock: studs with wire',
        `
witnessed-early last: last is signed at step 3 before studs are as it asks
  see engine.yaml:10: last asks for studs
  see engine.yaml:8: studs is specified here
left-unlocked studs: studs end the build without tab-washer; the specification asks for safety-wire, tab-washer and locker
  story: step 2 of procedure.md: tight (torque: studs)
  story: step 4 of procedure.md: locked (lock: studs)
  see engine.yaml:8: studs is specified with lock: [safety-wire, tab-washer, locker]
  fix: Write the missing step: lock studs: "\\n3. Lock the studs. \`lock: studs with tab-washer\`" after "…: studs\`"`,
      ],
      [
        'comes before one of them, which is put on one side only',
        'lock: studs with locker; torque: studs; lock: studs with wire; witness: last; lock: studs[left] with tabs',
        `
left-unlocked studs[right]: studs[right] end the build without tab-washer; the specification asks for safety-wire, tab-washer and locker
  story: step 2 of procedure.md: tight (torque: studs)
  story: step 3 of procedure.md: locked (lock: studs)
  see engine.yaml:8: studs is specified with lock: [safety-wire, tab-washer, locker]
  fix: Write the missing step: lock studs: "\\n3. Lock the studs. \`lock: studs[right] with tab-washer\`" after "…: studs\`"
witnessed-early last: last is signed at step 4 before studs[left] are as it asks
  see engine.yaml:10: last asks for studs
  see engine.yaml:8: studs is specified here`,
      ],
      [
        'comes before one that is brushed on as if it were oil',
        'torque: studs; lock: studs with wire, tabs; witness: last; lube: studs with locker',
        `
thread-condition studs: studs come to torque with dry threads, and the torque is for locker on the threads
  see engine.yaml:8: studs is specified with locker on the threads
left-unlocked studs: studs end the build without locker; the specification asks for safety-wire, tab-washer and locker
  story: step 1 of procedure.md: tight (torque: studs)
  story: step 2 of procedure.md: locked (lock: studs)
  see engine.yaml:8: studs is specified with lock: [safety-wire, tab-washer, locker]`,
      ],
    ],
    KINDS_SHOP,
  );
});

describe('a second signature for what is done as it is', () => {
  tells(
    SPECIAL,
    [
      [
        'waits for nothing',
        'witness: last; clean: plain-joint, bare-joint; seal: plain-joint, bare-joint with paper-gasket; torque: pins to 20 lbf·ft; torque: studs to 20 lbf·ft; torque: screws to 20 lbf·ft; alter: shells by ream; install: shells',
        `
spec-silent bare-joint: bare-joint does not say its seal; write seal: [a consumable], unknown, or none with a reason
spec-silent studs: torque of studs is unknown; find out, and write it down with its source
spec-silent screws: screws does not say its torque; write torque: 85 lbf·ft, snug, unknown, or none with a reason
value-disagrees plain-joint: plain-joint is sealed with paper-gasket, and none is specified
  see engine.yaml:9: plain-joint is specified here`,
      ],
    ],
    KINDS_SHOP,
  );
});

describe('a second signature with a slip', () => {
  const SLIPS = `
parts:
  block: {given: true}
checks:
  turns: {expect: freely}
hold-points:
  last: {asks: [turns, turms], by: shop lead}
`;
  tells(SLIPS, [
    [
      'of the specification, waits for what there is',
      'check: turns; witness: last',
      `
unknown-item last: nothing is called turms; did you mean turns?
  fix: Write turns: "turns" for "turms"`,
    ],
    [
      'of the verb that it waits for, follows from that',
      'chek: turns; witness: last; check: turns',
      `
unknown-verb: "chek" is no verb; did you mean check?
  fix: Write \`check\`: "check" for "chek"
unknown-item last: nothing is called turms; did you mean turns?
  fix: Write turns: "turns" for "turms"
witnessed-early last: last is signed at step 2 before turns are as it asks
  see procedure.md:7: follows from this slip: "chek" is no verb; did you mean check?
  see engine.yaml:10: last asks for turns
  see engine.yaml:8: turns is specified here`,
    ],
  ]);
});
