/** Figures that cannot be right: preload, wrenches, gauges, wire, pins, fits, threads. Every value is invented. */
import type {Case} from './cases.js';

const SHOP = `
shop: {name: Example Works}
source: house
sources:
  house: {title: Example house notes, note: invented}
tools:
  wrench-large: {range: 30–150 lbf·ft}
  wrench-small: {range: max 25 lbf·ft}
  dial: {gauge: true, resolution: 0.001 in}
  tenths: {gauge: true, resolution: 0.0001 in, accuracy: ±0.0004 in}
consumables:
  engine-oil: {use: lubricant}
  slick: {use: lubricant, k: 0.11}
  wire-020: {use: lock, lock: safety-wire, size: 0.020 in}
  wire-032: {use: lock, lock: safety-wire, size: 0.032 in}
  wire-metric: {use: lock, lock: safety-wire, size: 1.2 mm}
  pin-1-16: {use: lock, lock: cotter-pin, size: 1/16 in}
  pin-metric: {use: lock, lock: cotter-pin, size: 3.2 mm}
  strip-green: {use: strip, range: 0.001–0.003 in}
`;

/** One group of bolts on one part, with these fields beside. */
function bolts(fields: string): string {
  return `
parts:
  block: {given: true}
  pump: {}
fasteners:
  pump-bolts:
    holds: [pump]
${fields.trim().replace(/^ */gm, '    ')}
`;
}

const PLAIN = 'threads: dry\nlock: {value: none, because: stretch holds them}\n';
const FIVE = `thread: 3/8-16 UNC\ngrade: SAE 5\n${PLAIN}`;
const ON = '1. Offer the pump up. `install: pump`\n';
const SNUG = `${ON}2. Snug the bolts. \`torque: pump-bolts\`\n`;

const FIT = `
parts:
  block: {given: true}
  shaft: {}
fits:
  play: {between: [block, shaft], limits: LIMITS, using: [GAUGE], when: {installed: [shaft]}}
`;
const READ = '1. Set the shaft down. `install: shaft`\n2. Read the play. `measure: play`\n';

export const ENGINEERING_CASES: readonly Case[] = [
  {
    finding: 'preload-out-of-range',
    title: 'dry threads, too much, in metric',
    engine: bolts(`thread: M10\ngrade: '8.8'\ntorque: 70 N·m\n${PLAIN}`),
    shop: SHOP.replace('name: Example Works', 'name: Example Works, units: metric'),
    procedure: SNUG,
    says: [
      "engine.yaml:13:13 pump-bolts: 70 N·m (52 lbf·ft) on M10×1.5 with K = 0.20 (dry) is 104 % of the proof load of ISO 898-1 class 8.8 by F = T/(K·d), above 90 %, and 68–140 % with the scatter of a torque wrench; the maker's figure outranks this estimate",
    ],
  },
  {
    finding: 'preload-out-of-range',
    title: 'too little, with the nut factor of the shop',
    engine: bolts(`thread: 3/8-16 UNC\ngrade: SAE 8\ntorque: 11 lbf·ft\n${PLAIN.replace('dry', '[slick]')}`),
    shop: SHOP,
    procedure: `${ON}2. Wet the threads. \`lube: pump-bolts with slick\`\n3. Bring them up. \`torque: pump-bolts\`\n`,
    says: [
      "engine.yaml:13:13 pump-bolts: 11 lbf·ft (15 N·m) on 3/8-16 UNC with K = 0.11 (slick) is 34 % of the proof load of SAE J429 grade 8 by F = T/(K·d), below 50 %, and 26–43 % with the scatter of a torque wrench; the maker's figure outranks this estimate",
    ],
  },
  {
    finding: 'preload-out-of-range',
    title: 'a torque that the step alone states, emoji and CRLF',
    engine: bolts(`${FIVE}torque: 24 lbf·ft\n`),
    shop: SHOP,
    procedure: `1. 🔩 Offer the pump up. \`install: pump\`\r\n2. Bring them up. \`torque: pump-bolts to 45 lbf·ft\`\r\n`,
    says: [
      "8:42 pump-bolts: 45 lbf·ft (61 N·m) on 3/8-16 UNC with K = 0.20 (dry) is 109 % of the proof load of SAE J429 grade 5 by F = T/(K·d), above 90 %, and 71–148 % with the scatter of a torque wrench; the maker's figure outranks this estimate",
    ],
    also: ['value-disagrees'],
  },
  {
    finding: 'wrench-out-of-range',
    title: 'a pass below the wrench, and another wrench that would not do either',
    engine: bolts(`${PLAIN}torque: 60 lbf·ft\n`),
    shop: SHOP,
    procedure: `${ON}2. Bring them up. \`torque: pump-bolts to 60 lbf·ft in 20, 60 using wrench-large\`\n`,
    says: [
      '8:68 pump-bolts: 20 lbf·ft (27 N·m) is outside the working range of wrench-large, 30–150 lbf·ft (41–203 N·m)',
    ],
  },
  {
    finding: 'wrench-out-of-range',
    title: 'below a fifth of the largest value, where no lowest is marked',
    engine: bolts(`${PLAIN}torque: 4 lbf·ft\n`),
    shop: SHOP,
    procedure: `${ON}2. Bring them up. \`torque: pump-bolts to 4 lbf·ft using wrench-small\`\n`,
    says: [
      'engine.yaml:13:13 pump-bolts: 4 lbf·ft (5 N·m) is outside the working range of every torque wrench of the shop; the nearest is wrench-small, 5–25 lbf·ft (6.8–33.8 N·m)',
    ],
  },
  {
    finding: 'wrench-out-of-range',
    title: 'beyond every wrench, and one that would do',
    engine: bolts(`${PLAIN}torque: 200 lbf·ft\n`),
    shop: SHOP,
    procedure: `${ON}2. Go round once. \`torque: pump-bolts to 20 lbf·ft using wrench-large\`\n3. Bring them up. \`torque: pump-bolts to 200 lbf·ft using wrench-large\`\n`,
    says: [
      'engine.yaml:13:13 pump-bolts: 200 lbf·ft (271 N·m) is outside the working range of every torque wrench of the shop; the nearest is wrench-large, 30–150 lbf·ft (41–203 N·m)',
      '8:58 pump-bolts: 20 lbf·ft (27 N·m) is outside the working range of wrench-large, 30–150 lbf·ft (41–203 N·m); wrench-small, 5–25 lbf·ft (6.8–33.8 N·m), reaches it',
    ],
  },
  {
    finding: 'gauge-too-coarse',
    title: 'by the accuracy, which is the worse',
    engine: FIT.replace('LIMITS', '0.0010–0.0030 in').replace('GAUGE', 'tenths'),
    shop: SHOP,
    procedure: READ,
    says: [
      'engine.yaml:9:69 play: tenths is 2.5:1 to the limits 0.0010–0.0030 in (0.026–0.076 mm) (tolerance / (2 × accuracy), accuracy ±0.0004 in), and 4:1 is the least unless the maker names the gauge',
    ],
  },
  {
    finding: 'gauge-too-coarse',
    title: 'a limit that is only a largest value',
    engine: FIT.replace('LIMITS', 'max 0.002 in').replace('GAUGE', 'dial'),
    shop: SHOP,
    procedure: READ,
    says: [
      'engine.yaml:9:65 play: dial is 2:1 to the limits max 0.002 in (max 0.05 mm) (tolerance / resolution, resolution 0.001 in), and 4:1 is the least unless the maker names the gauge',
    ],
  },
  {
    finding: 'gauge-too-coarse',
    title: 'a gauge that the step alone names',
    engine: FIT.replace('LIMITS', '0.004–0.007 in').replace('using: [GAUGE], ', ''),
    shop: SHOP,
    procedure: READ.replace('measure: play', 'measure: play using dial'),
    says: [
      '8:40 play: dial is 3:1 to the limits 0.004–0.007 in (0.11–0.17 mm) (tolerance / resolution, resolution 0.001 in), and 4:1 is the least unless the maker names the gauge',
    ],
  },
  {
    finding: 'gauge-too-coarse',
    title: 'a strip that ends before the limits do',
    engine: FIT.replace('LIMITS', '0.0015–0.0040 in').replace(
      'using: [GAUGE]',
      'by: strip, using: [strip-green]',
    ),
    shop: SHOP,
    procedure: `1. Lay the strip. \`lay: play with strip-green\`\n2. Set the shaft down. \`install: shaft\`\n3. Read the play. \`measure: play\`\n`,
    says: [
      'engine.yaml:9:80 play: strip-green reads 0.001–0.003 in (0.03–0.07 mm) and cannot show the limits 0.0015–0.0040 in (0.039–0.101 mm)',
    ],
    also: ['measured-slack', 'strip-left-in'],
  },
  {
    finding: 'wire-size',
    title: 'too thin, in the specification',
    engine: bolts('torque: 22 lbf·ft\nthreads: dry\nhole: 0.062 in\nlock: wire-020\n'),
    shop: SHOP,
    procedure: `${ON}2. Bring them up. \`torque: pump-bolts\`\n3. Wire them. \`lock: pump-bolts with wire-020\`\n`,
    says: [
      'engine.yaml:14:11 pump-bolts: wire-020 of 0.020 in (0.51 mm) is too thin for a hole of 0.062 in (1.57 mm), which takes 0.032–0.060 in (0.82–1.52 mm) (wire by hole, AC 43.13-1B 7-124)',
    ],
  },
  {
    finding: 'wire-size',
    title: 'metric wire in the step, and a size in words',
    engine: bolts('torque: 22 lbf·ft\nthreads: dry\nhole: 0.047 in\nlock: safety-wire\n'),
    shop: SHOP,
    procedure: `${ON}2. Bring them up. \`torque: pump-bolts\`\n3. Wire two. \`lock: pump-bolts with wire-metric\`\n4. Wire the rest. \`lock: pump-bolts with safety-wire 0.060 in\`\n`,
    says: [
      '9:37 pump-bolts: wire-metric of 0.047 in (1.2 mm) is too thick for a hole of 0.047 in (1.19 mm), which takes 0.032–0.041 in (0.82–1.04 mm) (wire by hole, AC 43.13-1B 7-124)',
      '10:42 pump-bolts: safety-wire of 0.060 in (1.52 mm) is too thick for a hole of 0.047 in (1.19 mm), which takes 0.032–0.041 in (0.82–1.04 mm) (wire by hole, AC 43.13-1B 7-124)',
    ],
  },
  {
    finding: 'wire-size',
    title: 'a hole through which no wire goes',
    engine: bolts('torque: 22 lbf·ft\nthreads: dry\nhole: 0.012 in\nlock: safety-wire\n'),
    shop: SHOP,
    procedure: `${ON}2. Bring them up. \`torque: pump-bolts\`\n3. Wire them. \`lock: pump-bolts with wire-032\`\n`,
    says: [
      'engine.yaml:13:11 pump-bolts: no safety wire goes through a hole of 0.012 in (wire by hole, AC 43.13-1B 7-124); a hole for wire is 0.045 in or more',
    ],
  },
  {
    finding: 'wire-run',
    title: 'a bolt that stands alone, without runs',
    engine: bolts(
      'count: 3\ntorque: 22 lbf·ft\nthreads: dry\nlock: safety-wire\nlayout: {unit: in, a: [0, 0], b: [2, 0], c: [9, 0]}\n',
    ),
    procedure: `${ON}2. Bring them up. \`torque: pump-bolts\`\n3. Wire them. \`lock: pump-bolts with wire-032\`\n`,
    says: [
      'engine.yaml:14:11 pump-bolts: c is 7.00 in (177.8 mm) from its nearest neighbour, and beyond 6 in (150 mm) fasteners are not wired together (TM 10-3930-659-34 2-22); wire it to a tie point and write its run as one, unless the maker shows another run',
    ],
  },
  {
    finding: 'wire-run',
    title: 'a span in millimetres, and a run that is too long altogether',
    engine: bolts(
      'count: 10\ntorque: 22 lbf·ft\nthreads: dry\nlock: wire-032\nlayout: {unit: mm, a: [0, 0], b: [160, 0], c: [200, 0], d: [260, 0], e: [320, 0], f: [380, 0], g: [440, 0], h: [500, 0], i: [560, 0], j: [620, 0]}\nruns: [[a, b], [c, d, e, f, g, h, i, j]]\n',
    ),
    shop: SHOP,
    procedure: `${ON}2. Bring them up. \`torque: pump-bolts\`\n3. Wire them. \`lock: pump-bolts with wire-032\`\n`,
    says: [
      'engine.yaml:16:12 pump-bolts: the run a, b spans 6.299 in (160.0 mm), and beyond 6 in (150 mm) fasteners are not wired together (TM 10-3930-659-34 2-22), unless the maker shows another run',
      'engine.yaml:16:20 pump-bolts: the run c, d, e, f, g, h, i, j takes 45 in (1150 mm) of wire, and 24 in (610 mm) is the most (wire length, TM 10-3930-659-34 2-22), unless the maker shows another run',
    ],
  },
  {
    finding: 'cotter-size',
    title: 'too thin for the thread, without a hole',
    engine: bolts('thread: 1/2-20 UNF\ntorque: 40 lbf·ft\nthreads: dry\nlock: pin-1-16\n'),
    shop: SHOP,
    procedure: `${ON}2. Bring them up. \`torque: pump-bolts\`\n3. Pin them. \`lock: pump-bolts with pin-1-16\`\n`,
    says: [
      'engine.yaml:14:11 pump-bolts: pin-1-16 of 1/16 in (1.5875 mm) is too thin for 1/2-20 UNF, which takes 3/32 in (2.3812 mm) to 1/8 in (3.175 mm) (pin by hole and thread, ASME B18.8.1)',
    ],
  },
  {
    finding: 'cotter-size',
    title: 'a metric pin in a smaller hole, in the step',
    engine: bolts('thread: M10\ntorque: 40 lbf·ft\nthreads: dry\nhole: 2.5 mm\nlock: cotter-pin\n'),
    shop: SHOP,
    procedure: `${ON}2. Bring them up. \`torque: pump-bolts\`\n3. Pin them. \`lock: pump-bolts with pin-metric\`\n`,
    says: [
      '9:37 pump-bolts: pin-metric of 0.126 in (3.2 mm) is too thick for a hole of 0.098 in (2.5 mm) (pins in mm are named after their hole, ISO 1234)',
    ],
  },
  {
    finding: 'cotter-size',
    title: 'a hole too small for any pin that the thread takes',
    engine: bolts('thread: 1/2-20 UNF\ntorque: 40 lbf·ft\nthreads: dry\nhole: 0.078 in\nlock: pin-1-16\n'),
    shop: SHOP,
    procedure: `${ON}2. Bring them up. \`torque: pump-bolts\`\n3. Pin them. \`lock: pump-bolts with pin-1-16\`\n`,
    says: [
      'engine.yaml:14:11 pump-bolts: the largest pin that goes in is 1/16 in, less than the 3/32 in for 1/2 (pin by hole and thread, ASME B18.8.1); drill the hole for the larger pin',
    ],
  },
  {
    finding: 'fit-impossible',
    title: 'at one place, by nominal sizes',
    engine: `
parts:
  block: {given: true}
  shaft: {}
surfaces:
  bores: {on: block, at: [front, rear], assembly: clean, size: 2.5000 in}
  journals: {on: shaft, at: [front, rear], assembly: clean, sizes: {front: 2.4900 in, rear: 2.4975 in}}
fits:
  gap: {at: [front, rear], between: [bores, journals], limits: 0.0020–0.0035 in, when: {installed: []}}
`,
    shop: SHOP,
    procedure: '1. Read the gap. `measure: gap`\n',
    says: [
      'engine.yaml:12:64 gap[front]: the limits 0.0020–0.0035 in (0.051–0.088 mm) cannot come out of bores 2.5000 in (63.500 mm) and journals 2.4900 in (63.246 mm), which give clearance 0.00990–0.01010 in (0.252–0.256 mm) (hole less shaft)',
    ],
    also: ['left-out'],
  },
  {
    finding: 'thread-engagement',
    title: 'in aluminium',
    engine: bolts(`${FIVE}torque: 24 lbf·ft\nengagement: 0.5 in\ninto: aluminium\n`),
    shop: SHOP,
    procedure: SNUG,
    says: [
      "engine.yaml:16:17 pump-bolts: 0.5 in (13 mm) of 3/8-16 UNC in aluminium is less than the 0.647 in (16.43 mm) that the full strength of SAE J429 grade 5 takes (length of engagement, FED-STD-H28/2B); the maker's figure outranks this estimate",
    ],
  },
  {
    finding: 'grade-unknown',
    title: 'a grade that is none',
    engine: bolts(`thread: 3/8-16 UNC\ngrade: SAE 55\n${PLAIN}torque: 24 lbf·ft\n`),
    shop: SHOP,
    procedure: SNUG,
    says: [
      'engine.yaml:12:12 pump-bolts: "SAE 55" is not a grade in the tables; they have 1, 2, 4, 5, 5.2, 7, 8, 8.2, 4.6, 4.8, 5.6, 5.8, 6.8, 8.8, 9.8, 10.9, 12.9; or write yield 36 ksi',
    ],
  },
  {
    finding: 'grade-unknown',
    title: 'not where it is stated with its reason',
    engine: bolts(
      `thread: 3/8-16 UNC\ngrade: {value: SAE 55, because: a special of the works}\n${PLAIN}torque: 24 lbf·ft\n`,
    ),
    shop: SHOP,
    procedure: SNUG,
    says: [],
  },
];
