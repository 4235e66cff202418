/** What goes in too early, twice, or over what is not made up: all that is told of it. Common practice, no source. */
import {describe} from 'vitest';
import {SILENT, tells} from '../help/stories.js';

const ORDER = `
parts:
  block: {given: true}
  bearings: {at: [front, rear]}
  camshaft: {at: [front, rear], after: [block, bearings, play, turns, number, studs, signed]}
  gear: {after: [lid]}
  lid: {}
  loner: {}
fasteners:
  studs: {count: 2, holds: [block], torque: 20 lbf·ft, threads: dry, lock: wire-032}
fits:
  play: {between: [bearings], limits: 0.001–0.004 in, using: [feeler-gauges], when: {installed: []}}
marks:
  number: {stamped: front}
checks:
  turns: {expect: freely}
hold-points:
  signed: {asks: [], by: shop lead}
`;

const CLOSED = `
parts:
  block: {given: true}
  sump: {at: [left, right], closes: [sump-joint, plain-joint]}
joints:
  sump-joint: {at: [left, right], between: [block, sump], seal: [paper-gasket]}
  plain-joint: {between: [block, sump], seal: {value: none, because: metal to metal}}
fasteners:
  sump-bolts: {at: [left, right], count: 8, holds: [sump, block], torque: 20 lbf·ft, threads: dry, lock: {value: none, because: stretch holds them}}
`;

const HIDDEN = `
parts:
  block: {given: true}
  shells: {at: [front, rear]}
  caps: {at: [front, rear], closes: [shell-faces], after: [shells]}
  guard: {closes: [shell-faces], after: [lamp]}
  lamp: {after: [shells]}
surfaces:
  shell-faces: {on: shells, at: [front, rear], assembly: clean}
`;

const BARE = `
parts:
  block: {given: true}
  lid: {closes: [walls, ledge, edge, lip], after: [ledge, led]}
surfaces:
  walls: {on: block}
  edge: {assembly: clean}
joints:
  ledge: {between: [block, lid], seal: [paper-gasket]}
  lip: {between: [block, lid]}
fasteners:
  lid-bolts: {count: 4, holds: [lid, lidd], torque: 20 lbf·ft, threads: dry, lock: {value: none, because: stretch holds them}}
`;

describe('what must come first', () => {
  tells(ORDER, [
    [
      'comes first',
      'install: bearings; measure: play; check: turns; record: number; torque: studs; lock: studs; witness: signed; install: camshaft; install: lid; install: gear; install: loner',
      SILENT,
    ],
    [
      'comes after it, every kind of it',
      'install: camshaft; install: bearings; measure: play; check: turns; record: number; torque: studs; lock: studs; witness: signed; install: lid; install: gear; install: loner',
      `
install-order camshaft: camshaft goes in before bearings, which must be in first
  see engine.yaml:8: camshaft comes after bearings
install-order camshaft: camshaft goes in before play, which must be measured first
  see engine.yaml:8: camshaft comes after play
install-order camshaft: camshaft goes in before turns, which must be checked first
  see engine.yaml:8: camshaft comes after turns
install-order camshaft: camshaft goes in before number, which must be recorded first
  see engine.yaml:8: camshaft comes after number
install-order camshaft: camshaft goes in before studs, which must be torqued first
  see engine.yaml:8: camshaft comes after studs
install-order camshaft: camshaft goes in before signed, which must be witnessed first
  see engine.yaml:8: camshaft comes after signed`,
    ],
    [
      'comes after it at one place',
      'install: bearings[front]; measure: play; check: turns; record: number; torque: studs; lock: studs; witness: signed; install: camshaft; install: bearings[rear]; install: lid; install: gear; install: loner',
      `
install-order camshaft: camshaft goes in before bearings[rear], which must be in first
  see engine.yaml:8: camshaft comes after bearings`,
    ],
    [
      'comes after the end that needs it',
      'install: bearings[front]; measure: play; check: turns; record: number; torque: studs; lock: studs; witness: signed; install: camshaft[front]; install: bearings[rear]; install: camshaft[rear]; install: lid; install: gear; install: loner',
      SILENT,
    ],
    [
      'never comes, which is told as left out',
      'install: bearings; measure: play; check: turns; record: number; torque: studs; lock: studs; witness: signed; install: camshaft; install: gear; install: loner',
      `
left-out lid: lid is never installed
  see engine.yaml:10: lid belongs in the engine`,
    ],
    [
      'has come, and come out again',
      'install: bearings; measure: play; check: turns; record: number; torque: studs; lock: studs; witness: signed; remove: bearings; install: camshaft; install: bearings; install: lid; install: gear; install: loner',
      `
install-order camshaft: camshaft goes in before bearings, which must be in first
  see engine.yaml:8: camshaft comes after bearings`,
    ],
    [
      'is tight and not locked yet',
      'install: bearings; measure: play; check: turns; record: number; torque: studs; witness: signed; install: camshaft; lock: studs; install: lid; install: gear; install: loner',
      `
install-order camshaft: camshaft goes in before studs, which must be locked first
  see engine.yaml:8: camshaft comes after studs`,
    ],
    [
      'comes after a trial only',
      'install: camshaft; remove: camshaft; install: bearings; measure: play; check: turns; record: number; torque: studs; lock: studs; witness: signed; install: camshaft; install: lid; install: gear; install: loner',
      SILENT,
    ],
    [
      'goes in twice, and comes out though it never went in',
      'install: bearings; measure: play; check: turns; record: number; torque: studs; lock: studs; witness: signed; install: camshaft; install: camshaft[rear]; remove: lid; remove: block; install: lid; install: gear; install: loner',
      `
install-order camshaft[rear]: camshaft[rear] goes in but is in already since step 8
  story: step 8 of procedure.md: in (install: camshaft)
install-order lid: lid comes out but is not in
install-order studs: studs are still tight when block comes off
  story: step 5 of procedure.md: tight (torque: studs)
  see engine.yaml:13: studs hold block
left-slack studs: studs end the build slack: the torque at step 5 was undone at step 11 of procedure.md (remove: block) and never made good
  story: step 5 of procedure.md: tight (torque: studs)
  story: step 11 of procedure.md: no longer tight (remove: block)
  see engine.yaml:13: studs must be torqued
left-unlocked studs: studs end the build unlocked: done at step 6, undone at step 11 of procedure.md (remove: block) and never made good
  story: step 5 of procedure.md: tight (torque: studs)
  story: step 6 of procedure.md: locked (lock: studs)
  story: step 11 of procedure.md: no longer locked (remove: block)
  story: step 11 of procedure.md: no longer tight (remove: block)
  see engine.yaml:13: studs is specified with lock: wire-032`,
    ],
    [
      'came out already',
      'install: bearings; measure: play; check: turns; record: number; torque: studs; lock: studs; witness: signed; install: camshaft; install: lid; install: gear; install: loner; remove: gear; remove: gear; install: gear',
      `
install-order gear: gear comes out but is not in
  story: step 10 of procedure.md: in (install: gear)
  story: step 12 of procedure.md: no longer in (remove: gear)`,
    ],
  ]);
});

describe('a sump on its joint', () => {
  tells(CLOSED, [
    [
      'is put on right',
      'clean: sump-joint; seal: sump-joint with paper-gasket; install: sump; torque: sump-bolts',
      SILENT,
    ],
    [
      'goes on before the joint is made up',
      'clean: sump-joint; install: sump; torque: sump-bolts; seal: sump-joint with paper-gasket',
      `
install-order sump-joint: sump-joint is not made up when sump closes it
  see engine.yaml:9: sump-joint is specified here`,
    ],
    [
      'goes on with one side made up',
      'clean: sump-joint; seal: sump-joint[left] with paper-gasket; install: sump; torque: sump-bolts; seal: sump-joint[right] with paper-gasket',
      `
install-order sump-joint[right]: sump-joint[right] is not made up when sump closes it
  see engine.yaml:9: sump-joint is specified here`,
    ],
    [
      'goes on with a joint that was wiped off again',
      'clean: sump-joint; seal: sump-joint with paper-gasket; clean: sump-joint; install: sump; torque: sump-bolts',
      `
left-unsealed sump-joint: sump-joint ends the build unsealed: done at step 2, undone at step 3 of procedure.md (clean: sump-joint) and never made good
  story: step 2 of procedure.md: sealed (seal: sump-joint)
  story: step 3 of procedure.md: no longer sealed (clean: sump-joint)
  see engine.yaml:9: sump-joint is specified with a seal
  fix: Write the missing step: seal sump-joint: "\\n4. Make up the sump joint with paper gasket. \`seal: sump-joint with paper-gasket\`" after "…p-joint\`"
install-order sump-joint: sump-joint is not made up when sump closes it
  story: step 2 of procedure.md: sealed (seal: sump-joint)
  story: step 3 of procedure.md: no longer sealed (clean: sump-joint)
  see engine.yaml:9: sump-joint is specified here`,
    ],
    [
      'is tried on dry',
      'install: sump; remove: sump; clean: sump-joint; seal: sump-joint with paper-gasket; install: sump; torque: sump-bolts',
      SILENT,
    ],
    [
      'comes off with its bolts tight on one side',
      'clean: sump-joint; seal: sump-joint with paper-gasket; install: sump; torque: sump-bolts; loosen: sump-bolts[left]; remove: sump; clean: sump-joint; seal: sump-joint with paper-gasket; install: sump; torque: sump-bolts',
      `
install-order sump-bolts[right]: sump-bolts[right] are still tight when sump comes off
  story: step 4 of procedure.md: tight (torque: sump-bolts)
  see engine.yaml:12: sump-bolts hold sump`,
    ],
    [
      'goes on a joint that needs no seal, and gets one after that',
      'clean: sump-joint; seal: sump-joint with paper-gasket; install: sump; torque: sump-bolts; seal: plain-joint with paper-gasket',
      `
install-order plain-joint: plain-joint is not made up when sump closes it
  see engine.yaml:10: plain-joint is specified here
clean-first plain-joint: plain-joint is sealed but its faces are not clean
  see engine.yaml:10: plain-joint is specified here
value-disagrees plain-joint: plain-joint is sealed with paper-gasket, and none is specified
  see engine.yaml:10: plain-joint is specified here`,
    ],
    [
      'is torqued before it is on',
      'clean: sump-joint; seal: sump-joint with paper-gasket; torque: sump-bolts; install: sump; torque: sump-bolts',
      `
install-order sump: sump is not in when sump-bolts are torqued
  see engine.yaml:12: sump-bolts hold sump`,
    ],
    [
      'is torqued on one side before it is on',
      'clean: sump-joint; seal: sump-joint with paper-gasket; install: sump[left]; torque: sump-bolts; install: sump[right]; torque: sump-bolts[right]',
      `
install-order sump[right]: sump[right] is not in when sump-bolts are torqued
  see engine.yaml:12: sump-bolts hold sump`,
    ],
    [
      'is torqued after it came off',
      'clean: sump-joint; seal: sump-joint with paper-gasket; install: sump; remove: sump; torque: sump-bolts; clean: sump-joint; seal: sump-joint with paper-gasket; install: sump; torque: sump-bolts',
      `
install-order sump: sump is not in when sump-bolts are torqued
  story: step 3 of procedure.md: in (install: sump)
  story: step 4 of procedure.md: no longer in (remove: sump)
  see engine.yaml:12: sump-bolts hold sump`,
    ],
  ]);
});

describe('shells under caps, and a guard over both', () => {
  tells(HIDDEN, [
    [
      'go in first',
      'clean: shell-faces; install: shells; install: caps; install: lamp; install: guard',
      SILENT,
    ],
    [
      'go in when the caps are on',
      'clean: shell-faces; install: caps; install: shells; install: lamp; install: guard',
      `
install-order shells: shells go in after caps, which close over them and are in already
  story: step 2 of procedure.md: in (install: caps)
  see engine.yaml:8: caps come after shells`,
    ],
    [
      'go in when one cap is on',
      'clean: shell-faces; install: caps[rear]; install: shells; install: caps[front]; install: lamp; install: guard',
      `
install-order shells: shells go in after caps[rear], which close over them and are in already
  story: step 2 of procedure.md: in (install: caps)
  see engine.yaml:8: caps come after shells`,
    ],
    [
      'go in when the caps were on for a trial',
      'clean: shell-faces; install: caps; remove: caps; clean: shell-faces; install: shells; install: caps; install: lamp; install: guard',
      SILENT,
    ],
    [
      'go in below a guard that need not come after them, and after a lamp that closes nothing',
      'clean: shell-faces; install: lamp; install: guard; install: shells; install: caps',
      `
install-order lamp: lamp goes in before shells, which must be in first
  see engine.yaml:10: lamp comes after shells`,
    ],
  ]);
});

describe('a lid of which the specification says little', () => {
  tells(BARE, [
    [
      'is put on',
      'install: lid; torque: lid-bolts',
      `
unknown-item lid: nothing is called led; did you mean lid?
  fix: Write lid: "lid" for "led"
spec-silent walls: walls does not say its assembly; write assembly: clean, dry, lubed or unknown
spec-silent lip: lip does not say its seal; write seal: [a consumable], unknown, or none with a reason
unknown-item lid-bolts: nothing is called lidd; did you mean lid?
  fix: Write lid: "lid" for "lidd"
clean-first edge: edge is not clean when lid closes it, and goes together clean
  see engine.yaml:10: edge is specified here
left-unsealed ledge: ledge is never made up with its seal
  see engine.yaml:12: ledge is specified with a seal`,
    ],
    [
      'is put on before its joint is made up',
      'clean: ledge; install: lid; torque: lid-bolts; seal: ledge with paper-gasket',
      `
unknown-item lid: nothing is called led; did you mean lid?
  fix: Write lid: "lid" for "led"
spec-silent walls: walls does not say its assembly; write assembly: clean, dry, lubed or unknown
spec-silent lip: lip does not say its seal; write seal: [a consumable], unknown, or none with a reason
unknown-item lid-bolts: nothing is called lidd; did you mean lid?
  fix: Write lid: "lid" for "lidd"
clean-first edge: edge is not clean when lid closes it, and goes together clean
  see engine.yaml:10: edge is specified here
install-order lid: lid goes in before ledge, which must be sealed first
  see engine.yaml:7: lid comes after ledge
install-order ledge: ledge is not made up when lid closes it
  see engine.yaml:12: ledge is specified here`,
    ],
  ]);
});

const SINGLE = `
parts:
  block: {given: true}
  pump: {}
  gear: {}
  guard: {closes: [teeth], after: [pump, gear]}
surfaces:
  teeth: {on: gear, assembly: clean}
  flank: {on: gear, assembly: clean}
fasteners:
  nut: {holds: [pump], torque: 20 lbf·ft, threads: dry, lock: {value: none, because: stretch holds it}}
`;

describe('a single nut, and a guard over a gear', () => {
  tells(SINGLE, [
    [
      'comes off under its nut',
      'install: pump; torque: nut; remove: pump; install: pump; torque: nut; clean: teeth, flank; install: gear; install: guard',
      `
install-order nut: nut is still tight when pump comes off
  story: step 2 of procedure.md: tight (torque: nut)
  see engine.yaml:14: nut holds pump`,
    ],
    [
      'goes in behind its guard',
      'install: pump; torque: nut; clean: teeth, flank; install: guard; install: gear',
      `
install-order gear: gear goes in after guard, which closes over it and is in already
  story: step 4 of procedure.md: in (install: guard)
  see engine.yaml:9: guard comes after gear`,
    ],
  ]);
});
