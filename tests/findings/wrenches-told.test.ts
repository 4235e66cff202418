/** Torques against the ranges of the wrenches of a shop: all that is told of it. Every value is invented. */
import {describe} from 'vitest';
import {SILENT, tellsOf} from '../help/stories.js';

const shop = (tools: string) => `
shop: {name: Example Works}
source: house
sources:
  house: {title: Example house notes, note: invented}
tools:
  hammer: {}
${tools}
consumables:
  oil: {use: lubricant}
`;
const half = '  half: {range: 30–150 lbf·ft}';
const small = '  small: {range: 5–35 lbf·ft}';
const BOTH = shop(`${half}\n${small}`);

const bolts = (rest: string, more = '') => `parts:
  block: {given: true}
  cap: {}
fasteners:
  bolts: {count: 2, holds: [cap], threads: dry, lock: {value: none, because: stretch}, ${rest}}
${more}`;
const drag = (rest: string) => `parts:
  block: {given: true}
checks:
  drag: {${rest}}
`;

/** Counted in newton metres, a wrench may seem to miss its own ends by a billionth of its range. */
const NOISE = [
  ['above its highest', '100.0000001'],
  ['below its lowest', '19.9999999'],
] as const;

describe('a torque at an end of its wrench', () => {
  tellsOf(
    'wrench-out-of-range',
    NOISE.map(([where, value]) => [
      `by so little ${where} that it is none`,
      bolts(`torque: ${value} lbf·ft`),
      'install: cap; torque: bolts',
      SILENT,
    ]),
    shop('  middle: {range: 20–100 lbf·ft}'),
  );
});

describe('a wrench that does not reach, of a shop with two that do', () => {
  tellsOf(
    'wrench-out-of-range',
    [
      [
        'is left to the shop',
        bolts('torque: 20 lbf·ft'),
        'install: cap; torque: bolts to 20 lbf·ft using half',
        `
wrench-out-of-range bolts: bolts: 20 lbf·ft (27 N·m) is outside the working range of half, 30–150 lbf·ft (41–203 N·m); small, 5–35 lbf·ft (7–47 N·m), reaches it
  see engine.yaml:8: bolts is specified here
  see shop.yaml:8: half is specified here`,
      ],
    ],
    shop(`${half}\n${small}\n  other: {range: 10–40 lbf·ft}`),
  );
});

describe('a torque that no wrench reaches', () => {
  tellsOf(
    'wrench-out-of-range',
    [
      [
        'lies above them all',
        bolts('torque: 200 lbf·ft'),
        'install: cap; torque: bolts',
        `
wrench-out-of-range bolts: bolts: 200 lbf·ft (271 N·m) is outside the working range of every torque wrench of the shop; the nearest is half, 30–150 lbf·ft (41–203 N·m)`,
      ],
      [
        'lies below them all',
        bolts('torque: 2 lbf·ft'),
        'install: cap; torque: bolts',
        `
wrench-out-of-range bolts: bolts: 2 lbf·ft (3 N·m) is outside the working range of every torque wrench of the shop; the nearest is small, 5–35 lbf·ft (7–47 N·m)`,
      ],
      [
        'is a largest one',
        bolts('torque: max 200 lbf·ft'),
        'install: cap; torque: bolts',
        `
wrench-out-of-range bolts: bolts: max 200 lbf·ft (max 271 N·m) is outside the working range of every torque wrench of the shop; the nearest is half, 30–150 lbf·ft (41–203 N·m)`,
      ],
      [
        'is a least one',
        bolts('torque: min 2 lbf·ft'),
        'install: cap; torque: bolts',
        `
wrench-out-of-range bolts: bolts: min 2 lbf·ft (min 3 N·m) is outside the working range of every torque wrench of the shop; the nearest is small, 5–35 lbf·ft (7–47 N·m)`,
      ],
      [
        'is a tolerance about it',
        bolts('torque: 160 ±20 lbf·ft'),
        'install: cap; torque: bolts',
        `
wrench-out-of-range bolts: bolts: 160 ±20 lbf·ft (190–244 N·m) is outside the working range of every torque wrench of the shop; the nearest is half, 30–150 lbf·ft (41–203 N·m)`,
      ],
      [
        'is a range of which one end is reached',
        bolts('torque: 140–160 lbf·ft'),
        'install: cap; torque: bolts',
        SILENT,
      ],
      [
        'is a pass of it alone',
        bolts('torque: 40 lbf·ft, passes: [3 lbf·ft, 40 lbf·ft]'),
        'install: cap; torque: bolts',
        `
wrench-out-of-range bolts: bolts: 3 lbf·ft (4 N·m) is outside the working range of every torque wrench of the shop; the nearest is small, 5–35 lbf·ft (7–47 N·m)`,
      ],
      [
        'and its last pass are one',
        bolts('torque: 200 lbf·ft, passes: [100 lbf·ft, 200 lbf·ft]'),
        'install: cap; torque: bolts',
        `
wrench-out-of-range bolts: bolts: 200 lbf·ft (271 N·m) is outside the working range of every torque wrench of the shop; the nearest is half, 30–150 lbf·ft (41–203 N·m)`,
      ],
      [
        'is told once, though the step names a wrench',
        bolts('torque: 300 lbf·ft, passes: [200 lbf·ft, 300 lbf·ft]'),
        'install: cap; torque: bolts using half',
        `
wrench-out-of-range bolts: bolts: 300 lbf·ft (407 N·m) is outside the working range of every torque wrench of the shop; the nearest is half, 30–150 lbf·ft (41–203 N·m)
wrench-out-of-range bolts: bolts: 200 lbf·ft (271 N·m) is outside the working range of every torque wrench of the shop; the nearest is half, 30–150 lbf·ft (41–203 N·m)`,
      ],
      ['is none', bolts('angle: 90°'), 'install: cap; torque: bolts', SILENT],
      ['is snug', bolts('torque: snug'), 'install: cap; torque: bolts', SILENT],
      [
        'is the end of a range, in another unit',
        bolts('torque: 203.3726923 N·m'),
        'install: cap; torque: bolts',
        SILENT,
      ],
    ],
    BOTH,
  );
});

describe('the nearest of two wrenches', () => {
  tellsOf(
    'wrench-out-of-range',
    [
      [
        'is the nearer by its share',
        bolts('torque: 30 lbf·ft'),
        'install: cap; torque: bolts',
        `
wrench-out-of-range bolts: bolts: 30 lbf·ft (41 N·m) is outside the working range of every torque wrench of the shop; the nearest is large, 40–150 lbf·ft (54.3–203.3 N·m)`,
      ],
    ],
    shop('  little: {range: 5–10 lbf·ft}\n  large: {range: 40–150 lbf·ft}'),
  );
  tellsOf(
    'wrench-out-of-range',
    [
      [
        'is the first where they are alike',
        bolts('torque: 30 lbf·ft'),
        'install: cap; torque: bolts',
        `
wrench-out-of-range bolts: bolts: 30 lbf·ft (41 N·m) is outside the working range of every torque wrench of the shop; the nearest is first, 5–10 lbf·ft (7–13 N·m)`,
      ],
    ],
    shop('  first: {range: 5–10 lbf·ft}\n  second: {range: 5–10 lbf·ft}'),
  );
});

describe('a step that names a wrench', () => {
  tellsOf(
    'wrench-out-of-range',
    [
      [
        'names one of two that reach it',
        bolts('torque: 40 lbf·ft'),
        'install: cap; torque: bolts using small, half',
        SILENT,
      ],
      [
        'names two that do not reach it',
        bolts('torque: 40 lbf·ft'),
        'install: cap; torque: bolts to 2 lbf·ft using small, half',
        `
wrench-out-of-range bolts: bolts: 2 lbf·ft (3 N·m) is outside the working range of small, 5–35 lbf·ft (7–47 N·m) or half, 30–150 lbf·ft (41–203 N·m)
  see engine.yaml:8: bolts is specified here
  see shop.yaml:9: small is specified here
  see shop.yaml:8: half is specified here`,
      ],
      [
        'names the wrong one',
        bolts('torque: 20 lbf·ft'),
        'install: cap; torque: bolts using half',
        `
wrench-out-of-range bolts: bolts: 20 lbf·ft (27 N·m) is outside the working range of half, 30–150 lbf·ft (41–203 N·m); small, 5–35 lbf·ft (7–47 N·m), reaches it
  see engine.yaml:8: bolts is specified here
  see shop.yaml:8: half is specified here
  fix: Use small: "small" for "half"`,
      ],
      [
        'names the wrong one and the other is barred',
        bolts('torque: 20 lbf·ft', 'barred:\n  - {what: [small], on: [bolts], because: it slips off}\n'),
        'install: cap; torque: bolts using half',
        `
wrench-out-of-range bolts: bolts: 20 lbf·ft (27 N·m) is outside the working range of half, 30–150 lbf·ft (41–203 N·m)
  see engine.yaml:8: bolts is specified here
  see shop.yaml:8: half is specified here`,
      ],
      [
        'names one twice that does not reach it',
        bolts('torque: 20 lbf·ft'),
        'install: cap; torque: bolts using half, half',
        `
wrench-out-of-range bolts: bolts: 20 lbf·ft (27 N·m) is outside the working range of half, 30–150 lbf·ft (41–203 N·m) or half, 30–150 lbf·ft (41–203 N·m); small, 5–35 lbf·ft (7–47 N·m), reaches it
  see engine.yaml:8: bolts is specified here
  see shop.yaml:8: half is specified here
  see shop.yaml:8: half is specified here`,
      ],
      [
        'names what is no wrench',
        bolts('torque: 20 lbf·ft'),
        'install: cap; torque: bolts using hammer',
        SILENT,
      ],
      [
        'goes through passes of which two are not reached',
        bolts('torque: 40 lbf·ft'),
        'install: cap; torque: bolts to 40 lbf·ft in 10 lbf·ft, 20 lbf·ft, 40 lbf·ft using half',
        `
wrench-out-of-range bolts: bolts: 10 lbf·ft (14 N·m) and 20 lbf·ft (27 N·m) are outside the working range of half, 30–150 lbf·ft (41–203 N·m)
  see engine.yaml:8: bolts is specified here
  see shop.yaml:8: half is specified here`,
      ],
      [
        'ends at a pass that is not reached',
        bolts('torque: 40 lbf·ft'),
        'install: cap; torque: bolts to 40 lbf·ft in 20 lbf·ft, 40 lbf·ft using small',
        `
wrench-out-of-range bolts: bolts: 40 lbf·ft (54 N·m) is outside the working range of small, 5–35 lbf·ft (7–47 N·m)
  see engine.yaml:8: bolts is specified here
  see shop.yaml:9: small is specified here`,
      ],
      ['reads a force with it', drag('limits: 2–4 lbf'), 'check: drag using half', SILENT],
      [
        'reads a torque with it',
        drag('limits: 2–4 lbf·ft'),
        'check: drag using half',
        `
wrench-out-of-range drag: drag: 2–4 lbf·ft (3–5 N·m) is outside the working range of half, 30–150 lbf·ft (41–203 N·m)
  see engine.yaml:7: drag is specified here
  see shop.yaml:8: half is specified here`,
      ],
      [
        'reads a torque with what its check names',
        drag('limits: 6–8 lbf·ft, using: [half]'),
        'check: drag',
        `
wrench-out-of-range drag: drag: 6–8 lbf·ft (8.2–10.8 N·m) is outside the working range of half, 30–150 lbf·ft (41–203 N·m); small, 5–35 lbf·ft (7–47 N·m), reaches it
  see engine.yaml:7: drag is specified here
  see shop.yaml:8: half is specified here`,
      ],
      [
        'reads a torque that nothing reaches',
        drag('limits: 200–220 lbf·ft, using: [half]'),
        'check: drag',
        `
wrench-out-of-range drag: drag: 200–220 lbf·ft (271.2–298.2 N·m) is outside the working range of half, 30–150 lbf·ft (41–203 N·m)
  see engine.yaml:7: drag is specified here
  see shop.yaml:8: half is specified here`,
      ],
    ],
    BOTH,
  );
});
