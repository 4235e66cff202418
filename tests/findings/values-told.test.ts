/** Torques, passes and angles that a tag states otherwise than specified: all that is told of it. Every value is invented. */
import {describe} from 'vitest';
import {SILENT, tellsOf} from '../help/stories.js';

const SHOP = `
shop: {name: Example Works}
source: house
sources:
  house: {title: Example house notes, note: invented}
`;

const nut = (rest: string) => `parts:
  block: {given: true}
  cap: {}
fasteners:
  nut: {holds: [cap], threads: dry, lock: {value: none, because: stretch}, ${rest}}
`;
const NUT = nut('torque: 40 lbf·ft');
const RANGE = nut('torque: 38–42 lbf·ft');
const PASSES = nut('torque: 40 lbf·ft, passes: [20 lbf·ft, 30 lbf·ft, 40 lbf·ft]');
const SHORT = nut('torque: 40 lbf·ft, passes: [20 lbf·ft]');
const SNUG = nut('torque: snug');
const ANGLE = nut('torque: 40 lbf·ft, angle: 90°');
const UNKNOWN = nut('torque: unknown, passes: [20 lbf·ft, 40 lbf·ft]');

describe('a torque', () => {
  tellsOf(
    'value-disagrees',
    [
      [
        'above the specified one, though it is not the last',
        NUT,
        'torque: nut to 60 lbf·ft; loosen: nut; torque: nut to 60 lbf·ft; torque: nut to 40 lbf·ft',
        `
value-disagrees nut: nut is torqued to 60 lbf·ft (81 N·m), and 40 lbf·ft (54 N·m) is specified
  see engine.yaml:8: nut is specified here
  fix: Write 40 lbf·ft: "40 lbf·ft" for "60 lbf·ft"
value-disagrees nut: nut is torqued to 60 lbf·ft (81 N·m), and 40 lbf·ft (54 N·m) is specified
  see engine.yaml:8: nut is specified here
  fix: Write 40 lbf·ft: "40 lbf·ft" for "60 lbf·ft"`,
      ],
      [
        'below the specified one, which is not the last',
        NUT,
        'torque: nut to 20 lbf·ft; torque: nut to 40 lbf·ft',
        SILENT,
      ],
      [
        'below the specified one, which is the last',
        NUT,
        'torque: nut to 20 lbf·ft',
        `
value-disagrees nut: nut is torqued to 20 lbf·ft (27 N·m), and 40 lbf·ft (54 N·m) is specified
  see engine.yaml:8: nut is specified here
  fix: Write 40 lbf·ft: "40 lbf·ft" for "20 lbf·ft"`,
      ],
      [
        'up to the specified one and from below it, which is not the last',
        RANGE,
        'torque: nut to 30–42 lbf·ft; torque: nut to 38–42 lbf·ft',
        SILENT,
      ],
      [
        'of a nut that is to be snug',
        SNUG,
        'torque: nut to 40 lbf·ft',
        `
value-disagrees nut: nut is torqued to 40 lbf·ft (54 N·m), and snug is specified
  see engine.yaml:8: nut is specified here
  fix: Write snug: "snug" for "40 lbf·ft"`,
      ],
      [
        'in passes, of a nut that is to be snug',
        SNUG,
        'torque: nut in 20 lbf·ft, 40 lbf·ft',
        `
value-disagrees nut: nut is torqued to 40 lbf·ft (54 N·m), and snug is specified
  see engine.yaml:8: nut is specified here`,
      ],
      [
        'in passes that end at another',
        NUT,
        'torque: nut in 20 lbf·ft, 50 lbf·ft',
        `
value-disagrees nut: nut is torqued to 50 lbf·ft (68 N·m), and 40 lbf·ft (54 N·m) is specified
  see engine.yaml:8: nut is specified here`,
      ],
      [
        'behind passes that end at the specified one',
        NUT,
        'torque: nut to 50 lbf·ft in 20 lbf·ft, 30 lbf·ft, 40 lbf·ft',
        `
value-disagrees nut: nut is torqued to 50 lbf·ft (68 N·m), and 40 lbf·ft (54 N·m) is specified
  see engine.yaml:8: nut is specified here
  fix: Write 40 lbf·ft: "40 lbf·ft" for "50 lbf·ft"`,
      ],
      [
        'behind passes that end at it too',
        NUT,
        'torque: nut to 50 lbf·ft in 20 lbf·ft, 50 lbf·ft',
        `
value-disagrees nut: nut is torqued to 50 lbf·ft (68 N·m), and 40 lbf·ft (54 N·m) is specified
  see engine.yaml:8: nut is specified here`,
      ],
      [
        'behind passes that nobody can read',
        NUT,
        'torque: nut to 50 lbf·ft in twenty',
        `
value-disagrees nut: nut is torqued to 50 lbf·ft (68 N·m), and 40 lbf·ft (54 N·m) is specified
  see engine.yaml:8: nut is specified here
  fix: Write 40 lbf·ft: "40 lbf·ft" for "50 lbf·ft"`,
      ],
      ['that is unknown', UNKNOWN, 'torque: nut in 20 lbf·ft, 40 lbf·ft', SILENT],
      ['of a part', NUT, 'torque: cap to 50 lbf·ft in 20 lbf·ft, 50 lbf·ft turn 60°', SILENT],
    ],
    SHOP,
  );
});

describe('passes', () => {
  tellsOf(
    'value-disagrees',
    [
      [
        'of a nut of which no torque is known',
        nut('passes: [20 lbf·ft, 40 lbf·ft]'),
        'torque: nut in 10, 30 lbf·ft',
        SILENT,
      ],
      [
        'that are none, beside another torque',
        NUT,
        'torque: nut to 60 lbf·ft in steps',
        `
value-disagrees nut: nut is torqued to 60 lbf·ft (81 N·m), and 40 lbf·ft (54 N·m) is specified
  see engine.yaml:8: nut is specified here
  fix: Write 40 lbf·ft: "40 lbf·ft" for "60 lbf·ft"`,
      ],
      [
        'that are not said, beside another torque',
        NUT,
        'torque: nut to 60 lbf·ft in',
        `
value-disagrees nut: nut is torqued to 60 lbf·ft (81 N·m), and 40 lbf·ft (54 N·m) is specified
  see engine.yaml:8: nut is specified here
  fix: Write 40 lbf·ft: "40 lbf·ft" for "60 lbf·ft"`,
      ],
      ['as they are specified', PASSES, 'torque: nut in 20 lbf·ft, 30 lbf·ft, 40 lbf·ft', SILENT],
      [
        'of which one is another',
        PASSES,
        'torque: nut in 20 lbf·ft, 35 lbf·ft, 40 lbf·ft',
        `
value-disagrees nut: nut is torqued in passes of 20 lbf·ft (27 N·m), 35 lbf·ft (47 N·m), 40 lbf·ft (54 N·m), and 20 lbf·ft (27 N·m), 30 lbf·ft (41 N·m), 40 lbf·ft (54 N·m) are specified
  see engine.yaml:8: nut is specified here
  fix: Write 20 lbf·ft, 30 lbf·ft, 40 lbf·ft: "20 lbf·ft, 30 lbf·ft, 40 lbf·ft" for "20 lbf·ft, 35 lbf·ft, 40 lbf·ft"`,
      ],
      [
        'of which one is left out',
        PASSES,
        'torque: nut in 20 lbf·ft, 40 lbf·ft',
        `
value-disagrees nut: nut is torqued in passes of 20 lbf·ft (27 N·m), 40 lbf·ft (54 N·m), and 20 lbf·ft (27 N·m), 30 lbf·ft (41 N·m), 40 lbf·ft (54 N·m) are specified
  see engine.yaml:8: nut is specified here
  fix: Write 20 lbf·ft, 30 lbf·ft, 40 lbf·ft: "20 lbf·ft, 30 lbf·ft, 40 lbf·ft" for "20 lbf·ft, 40 lbf·ft"`,
      ],
      [
        'more than are specified',
        SHORT,
        'torque: nut in 20 lbf·ft, 40 lbf·ft',
        `
value-disagrees nut: nut is torqued in passes of 20 lbf·ft (27 N·m), 40 lbf·ft (54 N·m), and 20 lbf·ft (27 N·m) are specified
  see engine.yaml:8: nut is specified here
  fix: Write 20 lbf·ft: "20 lbf·ft" for "20 lbf·ft, 40 lbf·ft"`,
      ],
    ],
    SHOP,
  );
});

describe('an angle', () => {
  tellsOf(
    'value-disagrees',
    [
      ['as it is specified', ANGLE, 'torque: nut to 40 lbf·ft turn 90°', SILENT],
      [
        'below it, which is the last',
        ANGLE,
        'torque: nut to 40 lbf·ft turn 60°',
        `
value-disagrees nut: nut is turned 60° on, and 90° is specified
  see engine.yaml:8: nut is specified here
  fix: Write 90°: "90°" for "60°"`,
      ],
      [
        'below it, which is not the last',
        ANGLE,
        'torque: nut to 40 lbf·ft turn 60°; torque: nut to 40 lbf·ft turn 90°',
        SILENT,
      ],
      [
        'above it, though it is not the last',
        ANGLE,
        'torque: nut to 40 lbf·ft turn 120°; torque: nut to 40 lbf·ft turn 90°',
        `
value-disagrees nut: nut is turned 120° on, and 90° is specified
  see engine.yaml:8: nut is specified here
  fix: Write 90°: "90°" for "120°"`,
      ],
      [
        'up to it and from below it, which is not the last',
        nut('torque: 40 lbf·ft, angle: 80–90°'),
        'torque: nut to 40 lbf·ft turn 60–90°; torque: nut to 40 lbf·ft turn 80–90°',
        SILENT,
      ],
    ],
    SHOP,
  );
});
