/** What is read too early, or too late: all that is told of it. Common practice, no source. */
import {describe} from 'vitest';
import {SILENT, tells} from '../help/stories.js';

const STRIP = `
parts:
  block: {given: true}
  shaft: {}
  caps: {at: [front, rear], closes: [journals], after: [shaft]}
  tube: {closes: [rims]}
surfaces:
  rims: {on: tube, assembly: clean}
  journals: {on: shaft, at: [front, rear], assembly: dry}
fasteners:
  cap-bolts: {at: [front, rear], count: 4, holds: [caps], torque: 60 lbf·ft, threads: dry, lock: {value: none, because: stretch holds them}}
  dowels: {count: 2, holds: [caps], torque: snug, threads: dry, lock: {value: none, because: they are pressed in}}
fits:
  clearance: {at: [front, rear], between: [journals, caps], limits: 0.0015–0.0030 in, by: strip, using: [strip-green], when: {installed: [shaft, caps, tube], tight: [cap-bolts]}}
`;

const TWICE = `
parts:
  block: {given: true}
  shaft: {}
  caps: {at: [front, rear], closes: [journals], after: [shaft]}
  tube: {closes: [rims]}
surfaces:
  rims: {on: tube, assembly: clean}
  journals: {on: shaft, at: [front, rear], assembly: dry}
fasteners:
  cap-bolts: {at: [front, rear], count: 4, holds: [caps], torque: 60 lbf·ft, threads: dry, lock: {value: none, because: stretch holds them}}
  dowels: {count: 2, holds: [caps], torque: snug, threads: dry, lock: {value: none, because: they are pressed in}}
fits:
  clearance: {at: [front, rear], between: [journals, caps], limits: 0.0015–0.0030 in, by: strip, using: [strip-green], when: {installed: [shaft, caps, tube], tight: [cap-bolts, dowels]}}
`;

const NEVER = `
parts:
  block: {given: true}
  shaft: {}
  caps: {at: [front, rear], closes: [journals], after: [shaft]}
  tube: {closes: [rims]}
surfaces:
  rims: {on: tube, assembly: clean}
  journals: {on: shaft, at: [front, rear], assembly: dry}
fasteners:
  cap-bolts: {at: [front, rear], count: 4, holds: [caps], torque: 60 lbf·ft, threads: dry, lock: {value: none, because: stretch holds them}}
  dowels: {count: 2, holds: [caps], torque: snug, threads: dry, lock: {value: none, because: they are pressed in}}
fits:
  clearance: {at: [front, rear], between: [journals, caps], limits: 0.0015–0.0030 in, by: strip, using: [strip-green], when: {installed: [shaft, caps, tube], tight: []}}
`;

const SPARSE = `
parts:
  block: {given: true}
  shaft: {}
fits:
  play: {between: [shaft], limits: 0.004–0.008 in, using: [feeler-gauges]}
  clearance: {between: [shaft], limits: 0.0015–0.0030 in, by: strip, using: [strip-green]}
  float: {between: [shaft], limits: 0.004–0.008 in, using: [feeler-gauges], when: {installed: [shft], tight: [shft-nut]}}
  gap: {between: [shaft], limits: 0.0015–0.0030 in, by: strip, using: [strip-green], when: {installed: [shft]}}
`;

const GAUGED = `
parts:
  block: {given: true}
  shaft: {at: [left, right]}
  caps: {at: [front, rear], closes: [faces]}
surfaces:
  faces: {on: caps, at: [front, rear], assembly: clean}
fasteners:
  cap-bolts: {at: [front, rear], count: 4, holds: [caps], torque: 60 lbf·ft, threads: dry, lock: {value: none, because: stretch holds them}}
  crank-nut: {holds: [shaft], torque: 60 lbf·ft, threads: dry, lock: {value: none, because: it is staked by its shape}}
checks:
  turns: {expect: freely}
fits:
  play: {at: [front, rear], between: [shaft, faces], limits: 0.004–0.008 in, using: [feeler-gauges], when: {installed: [block, shaft, caps], tight: [cap-bolts, crank-nut]}}
  float: {between: [shaft], limits: 0.004–0.008 in, using: [feeler-gauges], when: {installed: [shaft]}}
`;

describe('a gauging strip', () => {
  tells(STRIP, [
    [
      'is crushed, and read with the caps off',
      'clean: rims; install: tube; install: shaft; clean: journals; lay: clearance with strip-green; install: caps; torque: dowels; torque: cap-bolts; loosen: cap-bolts, dowels; remove: caps; measure: clearance; clean: journals; install: caps; torque: dowels; torque: cap-bolts',
      SILENT,
    ],
    [
      'is read with the caps still on',
      'clean: rims; install: tube; install: shaft; clean: journals; lay: clearance with strip-green; install: caps; torque: dowels; torque: cap-bolts; measure: clearance; loosen: cap-bolts, dowels; remove: caps; clean: journals; install: caps; torque: dowels; torque: cap-bolts',
      `
install-order clearance: clearance is read from its strip while caps still cover it
  story: step 6 of procedure.md: in (install: caps)
  see engine.yaml:17: clearance is specified here`,
    ],
    [
      'is read with one cap still on',
      'clean: rims; install: tube; install: shaft; clean: journals; lay: clearance with strip-green; install: caps; torque: dowels; torque: cap-bolts; loosen: cap-bolts, dowels; remove: caps[front]; measure: clearance; remove: caps[rear]; clean: journals; install: caps; torque: dowels; torque: cap-bolts',
      `
install-order clearance: clearance is read from its strip while caps[rear] still cover it
  story: step 6 of procedure.md: in (install: caps)
  see engine.yaml:17: clearance is specified here`,
    ],
    [
      'is read that nobody laid',
      'clean: rims; install: tube; install: shaft; clean: journals; measure: clearance; install: caps; torque: dowels; torque: cap-bolts',
      `
measured-slack clearance: clearance is read from a strip that no step laid
  see engine.yaml:17: clearance is specified here`,
    ],
    [
      'is laid at one end and read at both',
      'clean: rims; install: tube; install: shaft; clean: journals; lay: clearance[front] with strip-green; install: caps; torque: dowels; torque: cap-bolts; loosen: cap-bolts, dowels; remove: caps; measure: clearance; clean: journals; install: caps; torque: dowels; torque: cap-bolts',
      `
measured-slack clearance[rear]: clearance[rear] is read from a strip that no step laid
  see engine.yaml:17: clearance is specified here`,
    ],
    [
      'is laid under bolts that were never brought up',
      'clean: rims; install: tube; install: shaft; clean: journals; lay: clearance with strip-green; install: caps; remove: caps; measure: clearance; clean: journals; install: caps; torque: dowels; torque: cap-bolts',
      `
measured-slack clearance: clearance is read from a strip that cap-bolts never crushed at final torque
  story: step 5 of procedure.md: gauging strip in it (lay: clearance)
  see engine.yaml:17: clearance is specified here`,
    ],
    [
      'is laid at one end, and crushed at neither',
      'clean: rims; install: tube; install: shaft; clean: journals; lay: clearance[front] with strip-green; install: caps; remove: caps; measure: clearance; clean: journals; install: caps; torque: dowels; torque: cap-bolts',
      `
measured-slack clearance: clearance is read from a strip that cap-bolts never crushed at final torque
  story: step 5 of procedure.md: gauging strip in it (lay: clearance)
  see engine.yaml:17: clearance is specified here`,
    ],
    [
      'is crushed at one end only',
      'clean: rims; install: tube; install: shaft; clean: journals; lay: clearance with strip-green; install: caps; torque: cap-bolts[rear]; loosen: cap-bolts; remove: caps; measure: clearance; clean: journals; install: caps; torque: dowels; torque: cap-bolts',
      `
measured-slack clearance[front]: clearance[front] is read from a strip that cap-bolts never crushed at final torque
  story: step 5 of procedure.md: gauging strip in it (lay: clearance)
  see engine.yaml:17: clearance is specified here`,
    ],
    [
      'is wiped away before it is read',
      'clean: rims; install: tube; install: shaft; clean: journals; lay: clearance with strip-green; install: caps; torque: dowels; torque: cap-bolts; loosen: cap-bolts, dowels; remove: caps; clean: journals; measure: clearance; install: caps; torque: dowels; torque: cap-bolts',
      `
measured-too-late clearance: clearance is read after its strip was taken away at step 11
  story: step 5 of procedure.md: gauging strip in it (lay: clearance)
  story: step 11 of procedure.md: no longer gauging strip in it (clean: journals)`,
    ],
    [
      'is wiped away at one end before it is read',
      'clean: rims; install: tube; install: shaft; clean: journals; lay: clearance with strip-green; install: caps; torque: dowels; torque: cap-bolts; loosen: cap-bolts, dowels; remove: caps; clean: journals[rear]; measure: clearance; clean: journals; install: caps; torque: dowels; torque: cap-bolts',
      `
measured-too-late clearance[rear]: clearance[rear] is read after its strip was taken away at step 11
  story: step 5 of procedure.md: gauging strip in it (lay: clearance)
  story: step 11 of procedure.md: no longer gauging strip in it (clean: journals)`,
    ],
  ]);
});

describe('a gauging strip that two fasteners crush', () => {
  tells(TWICE, [
    [
      'is laid under neither',
      'clean: rims; install: tube; install: shaft; clean: journals; lay: clearance with strip-green; install: caps; remove: caps; measure: clearance; clean: journals; install: caps; torque: dowels; torque: cap-bolts',
      `
measured-slack clearance: clearance is read from a strip that cap-bolts and dowels never crushed at final torque
  story: step 5 of procedure.md: gauging strip in it (lay: clearance)
  see engine.yaml:17: clearance is specified here`,
    ],
  ]);
});

describe('a gauging strip that nothing is said to crush', () => {
  tells(NEVER, [
    [
      'is laid and read',
      'clean: rims; install: tube; install: shaft; clean: journals; lay: clearance with strip-green; install: caps; torque: dowels; torque: cap-bolts; loosen: cap-bolts, dowels; remove: caps; measure: clearance; clean: journals; install: caps; torque: dowels; torque: cap-bolts',
      `
measured-slack clearance: clearance is read from a strip that nothing can have crushed: its \`when\` names no tight fasteners
  story: step 5 of procedure.md: gauging strip in it (lay: clearance)
  see engine.yaml:17: clearance is specified here`,
    ],
  ]);
});

describe('fits of which the specification says little, or what it does not hold', () => {
  tells(SPARSE, [
    [
      'are read',
      'measure: play, clearance, float, gap; install: shaft',
      `
spec-silent play: play does not say when it is measured; write when: {installed: [parts], tight: [fasteners]}
spec-silent clearance: clearance does not say when it is measured; write when: {installed: [parts], tight: [fasteners]}
unknown-item float: nothing is called shft; did you mean shaft?
  see engine.yaml:12: here too
  fix: Write shaft at all 2 places: "shaft" for "shft", "shaft" for "shft"
unknown-item float: nothing is called shft-nut; add it under fasteners:
measured-slack clearance: clearance is read from a strip that no step laid
  see engine.yaml:10: clearance is specified here
measured-slack gap: gap is read from a strip that no step laid
  see engine.yaml:12: gap is specified here`,
    ],
    [
      'are read from a strip that lies there',
      'lay: clearance with strip-green; measure: play, clearance, float; lay: gap with strip-green; measure: gap; install: shaft',
      `
spec-silent play: play does not say when it is measured; write when: {installed: [parts], tight: [fasteners]}
spec-silent clearance: clearance does not say when it is measured; write when: {installed: [parts], tight: [fasteners]}
unknown-item float: nothing is called shft; did you mean shaft?
  see engine.yaml:12: here too
  fix: Write shaft at all 2 places: "shaft" for "shft", "shaft" for "shft"
unknown-item float: nothing is called shft-nut; add it under fasteners:
strip-left-in clearance: clearance ends the build with its gauging strip still in it
  story: step 1 of procedure.md: gauging strip in it (lay: clearance)
  see engine.yaml:10: clearance is specified here
measured-slack clearance: clearance is read from a strip that nothing can have crushed: its \`when\` names no tight fasteners
  story: step 1 of procedure.md: gauging strip in it (lay: clearance)
  see engine.yaml:10: clearance is specified here
strip-left-in gap: gap ends the build with its gauging strip still in it
  story: step 3 of procedure.md: gauging strip in it (lay: gap)
  see engine.yaml:12: gap is specified here
measured-slack gap: gap is read from a strip that nothing can have crushed: its \`when\` names no tight fasteners
  story: step 3 of procedure.md: gauging strip in it (lay: gap)
  see engine.yaml:12: gap is specified here`,
    ],
  ]);
});

describe('play between shaft and caps', () => {
  tells(GAUGED, [
    [
      'is read when all is tight',
      'clean: faces; install: shaft; install: caps; torque: cap-bolts; torque: crank-nut; measure: play, float; check: turns',
      SILENT,
    ],
    [
      'is read before anything is in',
      'measure: play, float; clean: faces; install: shaft; install: caps; torque: cap-bolts; torque: crank-nut; check: turns',
      `
measured-slack play: play is measured while shaft is out and caps are out and cap-bolts are slack and crank-nut is slack
  see engine.yaml:17: play is specified here
measured-slack float: float is measured while shaft is out
  see engine.yaml:18: float is specified here`,
    ],
    [
      'is read at one end before the other is in',
      'clean: faces; install: shaft; install: caps[front]; torque: cap-bolts[front]; torque: crank-nut; measure: play[front]; measure: play[rear]; install: caps[rear]; torque: cap-bolts[rear]; measure: float; check: turns',
      `
measured-slack play[rear]: play[rear] is measured while caps[rear] are out and cap-bolts[rear] are slack
  see engine.yaml:17: play is specified here`,
    ],
    [
      'is read before the last torque',
      'clean: faces; install: shaft; install: caps; torque: cap-bolts to 30 lbf·ft; measure: play, float; torque: cap-bolts to 60 lbf·ft; torque: crank-nut; check: turns',
      `
measured-slack play: play is measured while cap-bolts are slack and crank-nut is slack
  see engine.yaml:17: play is specified here`,
    ],
    [
      'is read though the caps never go in, which is told as left out',
      'install: shaft; torque: crank-nut; measure: play, float; check: turns',
      `
left-out caps: caps are never installed
  see engine.yaml:8: caps belong in the engine
left-slack cap-bolts: cap-bolts end the build slack: no step torques them
  see engine.yaml:12: cap-bolts must be torqued`,
    ],
  ]);
});
