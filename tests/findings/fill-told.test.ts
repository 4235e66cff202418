/** A system that is filled too early: open, slack or uncured, and all that is told of it. Common practice, no source. */
import {describe} from 'vitest';
import {tells} from '../help/stories.js';

const NONE = 'lock: {value: none, because: stretch holds it}';

describe('a system that is filled', () => {
  tells(
    `
parts:
  block: {given: true}
  cover: {}
  lid: {}
joints:
  joint: {between: [block, lid], seal: [liquid-gasket]}
fasteners:
  nut: {holds: [cover], torque: 10 lbf·ft, threads: dry, ${NONE}}
  stud: {holds: [joint, lid], torque: 10 lbf·ft, threads: dry, ${NONE}}
systems:
  water: {joints: [joint], closed-by: [cover, tapp, block], with: [coolant]}
`,
    [
      [
        'with its cover on and slack',
        'clean: joint; seal: joint with liquid-gasket; install: lid; torque: stud; cure: joint for 24 h; install: cover; fill: water with coolant; torque: nut',
        `
wrong-kind stud: joint is a joint where a part is due
  see engine.yaml:10: joint is here
unknown-item water: nothing is called tapp; add it under parts: or fasteners:
left-filled-open water: water is filled while nut, which holds cover, is slack
  see engine.yaml:12: nut is specified here`,
      ],
      [
        'with its cover on and slack to the end, and another nut tightened after it',
        'clean: joint; seal: joint with liquid-gasket; install: lid; cure: joint for 24 h; install: cover; fill: water with coolant; torque: stud',
        `
wrong-kind stud: joint is a joint where a part is due
  see engine.yaml:10: joint is here
unknown-item water: nothing is called tapp; add it under parts: or fasteners:
left-slack nut: nut ends the build slack: no step torques it
  see engine.yaml:12: nut must be torqued
  fix: Write the missing step: torque nut: "\\n6. Tighten the nut. \`torque: nut to 10 lbf·ft\`" after "…: cover\`"`,
      ],
      [
        'with its cover off',
        'clean: joint; seal: joint with liquid-gasket; install: lid; torque: stud; cure: joint for 24 h; fill: water with coolant; install: cover; torque: nut',
        `
wrong-kind stud: joint is a joint where a part is due
  see engine.yaml:10: joint is here
unknown-item water: nothing is called tapp; add it under parts: or fasteners:
left-filled-open water: water is filled while cover is out
  see engine.yaml:7: cover is specified here`,
      ],
      [
        'before its joint has cured',
        'clean: joint; seal: joint with liquid-gasket; install: lid; torque: stud; install: cover; torque: nut; fill: water with coolant; cure: joint for 24 h',
        `
wrong-kind stud: joint is a joint where a part is due
  see engine.yaml:10: joint is here
unknown-item water: nothing is called tapp; add it under parts: or fasteners:
loaded-before-cure joint: joint is not cured when water is filled: liquid-gasket needs 24 h
  story: step 2 of procedure.md: sealed (seal: joint)
  see shop.yaml:15: liquid-gasket is specified here
  see engine.yaml:10: joint is specified here`,
      ],
      [
        'before its joint is made up',
        'install: lid; torque: stud; install: cover; torque: nut; fill: water with coolant; clean: joint; seal: joint with liquid-gasket; cure: joint for 24 h',
        `
wrong-kind stud: joint is a joint where a part is due
  see engine.yaml:10: joint is here
unknown-item water: nothing is called tapp; add it under parts: or fasteners:
left-filled-open water: water is filled while joint is open
  see engine.yaml:10: joint is specified here`,
      ],
    ],
  );
});

describe('a system of which a joint is none', () => {
  tells(
    `
parts:
  block: {given: true}
systems:
  water: {joints: [block, jointt], closed-by: [], with: [coolant]}
`,
    [
      [
        'is filled',
        'fill: water with coolant',
        `
wrong-kind water: block is a part where a joint is due
  see engine.yaml:6: block is here
unknown-item water: nothing is called jointt; add it under joints:`,
      ],
    ],
  );
});
