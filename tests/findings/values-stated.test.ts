/** Numbers of the prose against what the tags of the step stand for: whose value, and who states it. Values are invented. */
import {describe} from 'vitest';
import {SILENT, tellsOfText} from '../help/stories.js';

const SHOP = `
shop: {name: Example Works}
sources:
  house: {title: Example house notes, note: invented}
tools:
  gauge: {name: gauge, gauge: true}
consumables:
  slow: {use: sealant, cure: 24 h}
  quick: {use: sealant, cure: 2 h}
  paper: {use: gasket}
  water: {use: fluid}
`;

const ENGINE = `
parts:
  block: {given: true}
  cover: {closes: [slow-joint, either-joint, paper-joint, dry-joint, lost-joint]}
joints:
  slow-joint: {between: [block, cover], seal: [slow]}
  either-joint: {between: [block, cover], seal: [slow, quick]}
  paper-joint: {between: [block, cover], seal: [paper]}
  dry-joint: {between: [block, cover], seal: {value: none, because: ground faces}}
  lost-joint: {between: [block, cover], seal: [nobody]}
fasteners:
  nut: {holds: [cover], torque: 40 lbf·ft, threads: dry, lock: {value: none, because: stretch}}
  studs: {holds: [cover], torque: 40 lbf·ft, angle: 90°, threads: dry, lock: {value: none, because: stretch}}
  bolts: {holds: [cover], torque: 40 lbf·ft, passes: [20 lbf·ft, 40 lbf·ft], threads: dry, lock: {value: none, because: stretch}}
fits:
  play: {between: [block, cover], limits: 0.004–0.008 in, using: [gauge]}
systems:
  cooling: {joints: [paper-joint], with: [water], amount: 7 qt}
`;

const step = (prose: string, tag: string) => `1. ${prose} \`${tag}\`\n`;

describe('the prose is held against', () => {
  tellsOfText('prose-', {engine: ENGINE, shop: SHOP}, [
    [
      'the cure of the sealant of a joint',
      step('Leave it for 12 h.', 'cure: slow-joint'),
      `
prose-disagrees slow-joint: slow-joint: the prose says 12 h, the specification 24 h
  see procedure.md:7: the tag
  see shop.yaml:8: slow-joint is specified here
  fix: Write 24 h: "24 h" for "12 h"`,
    ],
    ['either cure of a joint, the longer', step('Leave it for 24 h.', 'cure: either-joint'), SILENT],
    ['either cure of a joint, the shorter', step('Leave it for 2 h.', 'cure: either-joint'), SILENT],
    [
      'neither cure of a joint',
      step('Leave it for 12 h.', 'cure: either-joint'),
      `
prose-disagrees either-joint: either-joint: the prose says 12 h, the specification 24 h
  see procedure.md:7: the tag
  see shop.yaml:8: either-joint is specified here
  fix: Write 24 h: "24 h" for "12 h"`,
    ],
    [
      'the cure of a sealant',
      step('Leave it for 12 h.', 'cure: slow'),
      `
prose-disagrees slow: slow: the prose says 12 h, the specification 24 h
  see procedure.md:7: the tag
  see shop.yaml:8: slow is specified here
  fix: Write 24 h: "24 h" for "12 h"`,
    ],
    ['no cure of a gasket', step('Leave it for 12 h.', 'cure: paper-joint'), SILENT],
    ['no cure where there is no seal', step('Leave it for 12 h.', 'cure: dry-joint'), SILENT],
    ['no cure of a sealant that nobody knows', step('Leave it for 12 h.', 'cure: lost-joint'), SILENT],
    [
      'a time that the tag states',
      step('Leave it for 12 h.', 'cure: paper-joint for 24 h'),
      `
prose-disagrees paper-joint: paper-joint: the prose says 12 h, the tag 24 h
  see procedure.md:7: the tag
  fix: Write 24 h: "24 h" for "12 h"`,
    ],
    [
      'a time that the tag states, of a specified one',
      step('Leave it for 12 h.', 'cure: slow-joint for 48 h'),
      `
prose-disagrees slow-joint: slow-joint: the prose says 12 h, the tag 48 h
  see procedure.md:7: the tag
  fix: Write 48 h: "48 h" for "12 h"`,
    ],
    [
      'a time that the tag states in place of the specified one, which the prose has',
      step('Leave it for 24 h.', 'cure: slow-joint for 12 h'),
      `
prose-disagrees slow-joint: slow-joint: the prose says 24 h, the tag 12 h
  see procedure.md:7: the tag`,
    ],
    [
      'a time that the tag states in place of either',
      step('Leave it for 24 h.', 'cure: either-joint for 12 h'),
      `
prose-disagrees either-joint: either-joint: the prose says 24 h, the tag 12 h
  see procedure.md:7: the tag
  fix: Write 12 h: "12 h" for "24 h"`,
    ],
    [
      'nothing of a part that is tightened',
      step('Bring it to 30 lbf·ft.', 'torque: block to 40 lbf·ft'),
      SILENT,
    ],
    ['nothing of a part that is measured', step('Read 0.1–0.2 mm.', 'measure: block'), SILENT],
    [
      'nothing of a part that is measured within limits',
      step('Read 0.1–0.2 mm.', 'measure: block within 0.3–0.4 mm'),
      SILENT,
    ],
    [
      'the limits that the tag states',
      step('Read 0.004–0.008 in.', 'measure: play within 0.004–0.006 in'),
      `
prose-disagrees play: play: the prose says 0.004–0.008 in (0.11–0.20 mm), the tag 0.004–0.006 in (0.11–0.15 mm)
  see procedure.md:7: the tag`,
    ],
    [
      'the amount that the tag states',
      step('Fill in 7 qt.', 'fill: cooling to 6 qt'),
      `
prose-disagrees cooling: cooling: the prose says 7 US qt (6.6 L), the tag 6 US qt (5.7 L)
  see procedure.md:7: the tag`,
    ],
    [
      'no torque where the tag says an angle alone',
      step('Turn on from 30 lbf·ft.', 'torque: studs turn 90°'),
      SILENT,
    ],
    [
      'a torque that the tag states with an angle',
      step('Turn on from 30 lbf·ft.', 'torque: studs to 40 lbf·ft turn 90°'),
      `
prose-disagrees studs: studs: the prose says 30 lbf·ft (41 N·m), the tag 40 lbf·ft (54 N·m)
  see procedure.md:7: the tag
  fix: Write 40 lbf·ft: "40 lbf·ft" for "30 lbf·ft"`,
    ],
    [
      'no angle where the tag stops at a torque',
      step('Then turn 60°.', 'torque: studs to 40 lbf·ft'),
      SILENT,
    ],
    [
      'an angle that the tag states',
      step('Then turn 60°.', 'torque: studs to 40 lbf·ft turn 80°'),
      `
prose-disagrees studs: studs: the prose says 60°, the tag 80°
  see procedure.md:7: the tag
  fix: Write 80°: "80°" for "60°"`,
    ],
    [
      'a pass that the tag states',
      step('Bring them to 40 lbf·ft.', 'torque: bolts to 20 lbf·ft'),
      `
prose-disagrees bolts: bolts: the prose says 40 lbf·ft (54 N·m), the tag 20 lbf·ft (27 N·m)
  see procedure.md:7: the tag`,
    ],
    ['nothing of a part that is filled', step('Fill in 5 qt.', 'fill: block to 7 qt'), SILENT],
    [
      'nothing of an item that nobody knows',
      step('Bring it to 30 lbf·ft.', 'torque: nobody to 40 lbf·ft'),
      SILENT,
    ],
    ['nothing of a step that states no values', step('Carry it 5 qt.', 'install: cover'), SILENT],
  ]);
});

/** Passes that are listed without a unit. */
describe('the passes are held against', () => {
  const NUT_SPECIFIED = `
prose-disagrees nut: nut: the prose has passes of 20 and 30, the specification 40 lbf·ft
  see procedure.md:7: the tag
  see engine.yaml:15: nut is specified here`;

  tellsOfText('prose-', {engine: ENGINE, shop: SHOP}, [
    ['the torque that is specified', step('Passes of 20 and 30.', 'torque: nut'), NUT_SPECIFIED],
    [
      'the torque that the tag states',
      step('Passes of 20 and 30.', 'torque: nut to 40 lbf·ft'),
      `
prose-disagrees nut: nut: the prose has passes of 20 and 30, the tag 40 lbf·ft
  see procedure.md:7: the tag`,
    ],
    ['the torque, at which they end', step('Passes of 20 and 40.', 'torque: nut'), SILENT],
    ['the torque, at which they end in the other unit', step('Passes of 20 and 54.', 'torque: nut'), SILENT],
    ['the passes that are specified', step('Passes of 20 and 40.', 'torque: bolts'), SILENT],
    [
      'the passes that are specified, of which one is another',
      step('Passes of 30, then\n   40.', 'torque: bolts'),
      `
prose-disagrees bolts: bolts: the prose has passes of 30, then 40, the specification 40 lbf·ft in passes of 20 lbf·ft, 40 lbf·ft
  see procedure.md:8: the tag
  see engine.yaml:17: bolts is specified here`,
    ],
    ['nothing where one number is no list', step('Passes of 30.', 'torque: nut'), SILENT],
    ['nothing where the first is no number', step('Passes of 2,0 and 30.', 'torque: nut'), SILENT],
    ['nothing where they are of something else', step('Passes of 2 and 3 strokes.', 'torque: nut'), SILENT],
    ['nothing where two are tightened', step('Passes of 20 and 30.', 'torque: nut, bolts'), SILENT],
  ]);
});
