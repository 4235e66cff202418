/** Tags that state another value or material than the one specified: all that is told of it. Every value is invented. */
import {describe} from 'vitest';
import {SILENT, tellsOf} from '../help/stories.js';

const SHOP = `
shop: {name: Example Works}
source: house
sources:
  house: {title: Example house notes, note: invented}
tools:
  gauge: {gauge: true}
  dial: {gauge: true}
consumables:
  oil: {use: lubricant}
  water: {use: fluid}
  spirit: {use: fluid}
  paper: {use: gasket}
  paste: {use: sealant}
  strip: {use: strip, range: 0.001–0.003 in}
  broad-strip: {use: strip, range: 0.001–0.009 in}
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

const play = (rest: string) => `parts:
  block: {given: true}
fits:
  play: {between: [block], when: {installed: []}, ${rest}}
`;
const PLAY = play('limits: 0.004–0.008 in, using: [gauge]');

describe('a reading', () => {
  tellsOf(
    'value-disagrees',
    [
      [
        'within wider limits',
        PLAY,
        'measure: play within 0.003–0.008 in',
        `
value-disagrees play: play is measured within 0.003–0.008 in (0.08–0.20 mm), which is wider, and 0.004–0.008 in (0.11–0.20 mm) is specified
  see engine.yaml:7: play is specified here
  fix: Write 0.004–0.008 in: "0.004–0.008 in" for "0.003–0.008 in"`,
      ],
      [
        'within narrower limits',
        PLAY,
        'measure: play within 0.005–0.008 in',
        `
value-disagrees play: play is measured within 0.005–0.008 in (0.13–0.20 mm), and 0.004–0.008 in (0.11–0.20 mm) is specified
  see engine.yaml:7: play is specified here
  fix: Write 0.004–0.008 in: "0.004–0.008 in" for "0.005–0.008 in"`,
      ],
      [
        'within limits that are unknown',
        play('limits: unknown, using: [gauge]'),
        'measure: play within 0.003–0.008 in',
        SILENT,
      ],
      [
        'by another gauge',
        PLAY,
        'measure: play using dial',
        `
value-disagrees play: play is measured using dial, and gauge is specified
  see engine.yaml:7: play is specified here
  fix: Write gauge: "gauge" for "dial"`,
      ],
      ['by that gauge and another', PLAY, 'measure: play using dial, gauge', SILENT],
      [
        'by two others',
        PLAY,
        'measure: play using dial, strip',
        `
value-disagrees play: play is measured using dial, and gauge is specified
  see engine.yaml:7: play is specified here`,
      ],
      [
        'of another strip',
        play('limits: 0.001–0.003 in, by: strip, using: [strip]'),
        'lay: play with broad-strip',
        `
value-disagrees play: play is laid with broad-strip, and strip is specified
  see engine.yaml:7: play is specified here
  fix: Write strip: "strip" for "broad-strip"`,
      ],
      [
        'of a strip that is one of two',
        play('limits: 0.001–0.003 in, by: strip, using: [strip, gauge]'),
        'lay: play with broad-strip',
        `
value-disagrees play: play is laid with broad-strip, and strip or gauge is specified
  see engine.yaml:7: play is specified here`,
      ],
      ['of a part', PLAY, 'measure: block within 0.1–0.2 in using dial', SILENT],
      [
        'of a check',
        'checks:\n  drag: {limits: 2–4 lbf, using: [gauge]}\n',
        'check: drag within 2–5 lbf using dial',
        `
value-disagrees drag: drag is checked within 2–5 lbf (9–22 N), which is wider, and 2–4 lbf (9–17 N) is specified
  see engine.yaml:5: drag is specified here
  fix: Write 2–4 lbf: "2–4 lbf" for "2–5 lbf"
value-disagrees drag: drag is checked using dial, and gauge is specified
  see engine.yaml:5: drag is specified here
  fix: Write gauge: "gauge" for "dial"`,
      ],
    ],
    SHOP,
  );
});

const joint = (seal: string) => `parts:
  block: {given: true}
  cap: {closes: [face]}
joints:
  face: {between: [block, cap], seal: ${seal}}
systems:
  cooling: {joints: [face], with: [water], amount: 7 qt}
`;

describe('a material', () => {
  tellsOf(
    'value-disagrees',
    [
      ['that is unknown', joint('unknown'), 'seal: face with paste', SILENT],
      [
        'where none is specified',
        joint('{value: none, because: ground}'),
        'seal: face with paste',
        `
value-disagrees face: face is sealed with paste, and none is specified
  see engine.yaml:8: face is specified here`,
      ],
      [
        'in place of the only one',
        joint('[paper]'),
        'seal: face with paste',
        `
value-disagrees face: face is sealed with paste, and paper is specified
  see engine.yaml:8: face is specified here
  fix: Write paper: "paper" for "paste"`,
      ],
      [
        'in place of either',
        joint('[paper, oil]'),
        'seal: face with paste',
        `
value-disagrees face: face is sealed with paste, and paper or oil is specified
  see engine.yaml:8: face is specified here`,
      ],
      ['beside the only one', joint('[paper]'), 'seal: face with paste, paper', SILENT],
      ['that is not named', joint('[paper]'), 'seal: face with', SILENT],
      ['that is no name', joint('[paper]'), 'seal: face with , ,', SILENT],
      ['of a part that is sealed', joint('[paper]'), 'seal: block with paste', SILENT],
      ['and an amount of a part that is filled', joint('[paper]'), 'fill: block with spirit to 5 qt', SILENT],
      [
        'and an amount of a system',
        joint('[paper]'),
        'fill: cooling with spirit to 5 qt',
        `
value-disagrees cooling: cooling is filled with spirit, and water is specified
  see engine.yaml:10: cooling is specified here
  fix: Write water: "water" for "spirit"
value-disagrees cooling: cooling is filled to 5 US qt (4.7 L), and 7 US qt (6.6 L) is specified
  see engine.yaml:10: cooling is specified here
  fix: Write 7 US qt: "7 US qt" for "5 qt"`,
      ],
      [
        'that is another, and the right one',
        joint('[paper]'),
        'fill: cooling with spirit, water to 7 qt',
        SILENT,
      ],
    ],
    SHOP,
  );
});
