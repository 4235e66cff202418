/**
 * Clean books made up by a seeded generator out of the situations that the ledger judges: lubed bores by place,
 * a gauging-strip trial, a sealed and cured joint under a filled system, torque then angle on single-use bolts, a
 * reading with its rework loop, hold points, marks, cautions and bars.
 */
import {book} from '../help/example.js';
import {type Random, seeded} from '../help/random.js';

/** What one situation adds to the specification and to the procedure. */
interface Unit {
  readonly parts?: string;
  readonly surfaces?: string;
  readonly joints?: string;
  readonly fasteners?: string;
  readonly fits?: string;
  readonly checks?: string;
  readonly marks?: string;
  readonly holdPoints?: string;
  readonly systems?: string;
  readonly barred?: string;
  readonly alterations?: string;
  /** What the job fits in place of a part: `part: substitute`. */
  readonly substitute?: string;
  /** Steps without their numbers; a line that begins with a space or `>` goes in as it stands. */
  readonly steps: readonly string[];
}

/** The same book for the same seed: `count` situations, `perFile` of them to a procedure. */
export function generatedClean(seed: number, count: number, perFile = 5) {
  const random = seeded(seed);
  const units = Array.from({length: count}, (_, index) => anyUnit(index, random));
  const procedures: Record<string, string> = {};
  for (let first = 0; first < units.length; first += perFile) {
    const name = `${String(first / perFile + 1).padStart(3, '0')}-assembly.md`;
    procedures[name] = procedureText(units.slice(first, first + perFile));
  }
  const fitted = units.flatMap(({substitute}) => substitute ?? []);
  const job = fitted.length === 0 ? undefined : `substitutes: {${fitted.join(', ')}}\n`;
  return book({shop: SHOP, engine: engineText(units), procedures, job});
}

const SITUATIONS = [
  lubedBores,
  stripTrial,
  sealedJoint,
  angleBolts,
  reworkLoop,
  signedOff,
  fromAnotherEngine,
];

function anyUnit(index: number, random: Random): Unit {
  const make = SITUATIONS[Math.floor(random() * SITUATIONS.length)] ?? lubedBores;
  return make(String(index), random);
}

function lubedBores(n: string, random: Random): Unit {
  const places = PLACES[Math.floor(random() * PLACES.length)] ?? 'front, rear';
  return {
    parts: `shaft-${n}: {reused: true, turning: true, closes: [bores-${n}], using: [soft-mallet]}`,
    surfaces: `bores-${n}: {on: block, at: [${places}], assembly: lubed, lubricants: [assembly-lube]}`,
    barred: `{what: [grease], on: [bores-${n}], because: grease starves the bores of oil}`,
    steps: [
      `Look over the shaft for scores. \`inspect: shaft-${n} for scores\``,
      `Wipe every bore. \`clean: bores-${n} with solvent\``,
      `Coat every bore. \`lube: bores-${n} with assembly-lube\``,
      `Slide the shaft in, turning as it goes. \`install: shaft-${n} using soft-mallet\` \`turn: shaft-${n}\``,
    ],
  };
}

function stripTrial(n: string, random: Random): Unit {
  const torque = 40 + 5 * Math.floor(random() * 8);
  const bolts = `\`torque: cap-bolts-${n} to ${torque} lbf·ft in 20, 30, ${torque}\``;
  return {
    parts: `cap-${n}: {closes: [cap-face-${n}, journal-${n}]}`,
    surfaces: `cap-face-${n}: {on: cap-${n}, assembly: lubed, lubricants: [assembly-lube]}\n  journal-${n}: {on: block, assembly: lubed, lubricants: [assembly-lube]}`,
    fasteners: `cap-bolts-${n}: {count: 2, holds: [cap-${n}], torque: ${torque} lbf·ft, threads: [engine-oil], lock: safety-wire}`,
    fits: `clearance-${n}: {between: [cap-face-${n}, journal-${n}], limits: 0.0015–0.0030 in, by: strip, using: [strip-green], when: {installed: [cap-${n}], tight: [cap-bolts-${n}]}}`,
    steps: [
      `Wipe cap and journal dry. \`clean: cap-face-${n}, journal-${n} with solvent\``,
      `Lay the strip. \`lay: clearance-${n} with strip-green\``,
      `Oil the threads. \`lube: cap-bolts-${n} with engine-oil\``,
      `Set the cap on. \`install: cap-${n}\``,
      `Bring the bolts up in three passes. ${bolts}`,
      `Slacken the bolts. \`loosen: cap-bolts-${n}\``,
      `Lift the cap off. \`remove: cap-${n}\``,
      `Read the strip. \`measure: clearance-${n} within 0.0015–0.0030 in\``,
      `Wipe the strip away. \`clean: cap-face-${n}, journal-${n} with solvent\``,
      `Coat cap and journal. \`lube: cap-face-${n}, journal-${n} with assembly-lube\``,
      `Set the cap on. \`install: cap-${n}\``,
      `Bring the bolts up in three passes. ${bolts}`,
      `Wire the bolts. \`lock: cap-bolts-${n} with wire-032\``,
    ],
  };
}

function sealedJoint(n: string): Unit {
  return {
    parts: `cover-${n}: {closes: [joint-${n}]}`,
    joints: `joint-${n}: {between: [block, cover-${n}], seal: [liquid-gasket]}`,
    systems: `oil-${n}: {joints: [joint-${n}], closed-by: [cover-${n}], with: [engine-oil]}`,
    barred: `{what: [silicone-sealant], on: [joint-${n}], because: loose beads find the pickup}`,
    steps: [
      `Wipe both faces. \`clean: joint-${n} with solvent\``,
      `Run a thin bead round the cover. \`seal: joint-${n} with liquid-gasket\``,
      `Set the cover on. \`install: cover-${n}\``,
      `Leave it alone for 24 h. \`cure: joint-${n} for 24 h\``,
      `Fill with oil. \`fill: oil-${n} with engine-oil\``,
    ],
  };
}

function angleBolts(n: string): Unit {
  return {
    parts: `head-${n}: {}`,
    fasteners: `head-bolts-${n}: {count: 8, single-use: true, holds: [head-${n}], torque: 30 N·m, angle: 90°, threads: [engine-oil], lock: {value: none, because: stretch holds them}}`,
    steps: [
      `Take new bolts from the packet. \`renew: head-bolts-${n}\``,
      `Oil the threads. \`lube: head-bolts-${n} with engine-oil\``,
      `Lower the head on. \`install: head-${n}\``,
      `Bring the bolts to 30 N·m. \`torque: head-bolts-${n} to 30 N·m\``,
      `Turn each a quarter further. \`torque: head-bolts-${n} turn 90°\``,
    ],
  };
}

function reworkLoop(n: string): Unit {
  return {
    parts: `ring-${n}: {single-use: true}`,
    fits: `play-${n}: {between: [block, ring-${n}], limits: 0.05–0.20 mm, rework: true, using: [feeler-gauges], when: {installed: [ring-${n}], tight: []}}`,
    steps: [
      `Take a new ring. \`renew: ring-${n}\` \`install: ring-${n}\``,
      `Read the play. \`measure: play-${n} within 0.05–0.20 mm using feeler-gauges\` \`step: read-${n}\``,
      `Where it is out: \`if: play-${n} is out\``,
      `   1. Take the ring out. \`remove: ring-${n}\``,
      `   2. Fit the next size. \`renew: ring-${n}\` \`install: ring-${n}\``,
      `   3. Read again. \`repeat: read-${n}\``,
    ],
  };
}

function signedOff(n: string): Unit {
  return {
    marks: `number-${n}: {stamped: on the pad}`,
    checks: `turns-freely-${n}: {expect: turns by hand, hazards: [pinch]}`,
    holdPoints: `closed-${n}: {asks: [turns-freely-${n}], by: shop lead}`,
    steps: [
      `Write down the number. \`record: number-${n}\``,
      `> **Caution:** Gears pinch. Keep your fingers out. \`hazard: pinch\``,
      `Turn it by hand. \`check: turns-freely-${n}\``,
      `Have the shop lead sign. \`witness: closed-${n} by "shop lead"\``,
    ],
  };
}

/** Hot parts of a related engine, each to be altered before it fits, on bolts of which the strength is known. */
function fromAnotherEngine(n: string): Unit {
  return {
    parts: `guide-${n}: {at: [left, right], substitutes: {twin-guide-${n}: {alterations: [trim-${n}]}}}`,
    substitute: `guide-${n}: twin-guide-${n}`,
    alterations: `trim-${n}: {of: [guide-${n}], does: trim the lip}`,
    fasteners: `guide-bolts-${n}: {count: 4, holds: [guide-${n}], thread: 3/8-16 UNC, grade: SAE 5, hole: 0.047 in, engagement: 0.6 in, into: cast iron class 30, torque: 25 lbf·ft, threads: dry, lock: [tab-washer, safety-wire], stripe: true}`,
    steps: [
      `Trim the lip of both guides. \`alter: guide-${n} by trim-${n}\``,
      `Set the guides in. \`install: guide-${n}\``,
      `Bring the bolts up. \`torque: guide-bolts-${n} to 25 lbf·ft\``,
      `Bend the tabs up. \`lock: guide-bolts-${n} with tabs\``,
      `Wire the bolts. \`lock: guide-bolts-${n} with wire-032\``,
      `Stripe the heads. \`stripe: guide-bolts-${n} with paint-pen\``,
    ],
  };
}

const PLACES = ['front, rear', 'front, centre, rear', '1, 2, 3, 4'] as const;

const SHOP = `
shop: {name: Generated Works}
sources: {house: {title: Generated notes, note: invented}}
source: house
tools:
  soft-mallet: soft-faced mallet
  feeler-gauges: {name: feeler gauges, gauge: true}
consumables:
  solvent: {use: cleaner}
  assembly-lube: {use: lubricant}
  engine-oil: {use: lubricant}
  grease: {use: lubricant}
  liquid-gasket: {use: sealant, cure: 24 h}
  silicone-sealant: {use: sealant}
  wire-032: {use: lock, lock: safety-wire, size: 0.032 in}
  tabs: {use: lock, lock: tab-washer}
  paint-pen: {use: other}
  strip-green: {use: strip, range: 0.001–0.003 in}
`;

const SECTIONS = {
  parts: 'parts',
  surfaces: 'surfaces',
  joints: 'joints',
  fasteners: 'fasteners',
  fits: 'fits',
  checks: 'checks',
  marks: 'marks',
  'hold-points': 'holdPoints',
  systems: 'systems',
  alterations: 'alterations',
} as const satisfies Record<string, keyof Unit>;

function engineText(units: readonly Unit[]): string {
  const sections = Object.entries(SECTIONS).map(([key, field]) => {
    const lines = units.flatMap((unit) => (unit[field] === undefined ? [] : [`  ${unit[field]}\n`]));
    const given = key === 'parts' ? '  block: {given: true}\n' : '';
    return lines.length === 0 && given === '' ? '' : `${key}:\n${given}${lines.join('')}`;
  });
  const barred = units.flatMap(({barred: bar}) => (bar === undefined ? [] : [`  - ${bar}\n`]));
  return `${sections.join('')}${barred.length > 0 ? `barred:\n${barred.join('')}` : ''}`;
}

function procedureText(units: readonly Unit[]): string {
  let number = 0;
  const line = (step: string) => {
    if (step.startsWith('>')) return `\n${step}\n\n`;
    if (step.startsWith(' ')) return `${step.replace(/^ {3}/, ' '.repeat(String(number).length + 2))}\n`;
    number++;
    return `${number}. ${step}\n`;
  };
  return units.map(({steps}, index) => `\n## Unit ${index + 1}\n\n${steps.map(line).join('')}`).join('');
}
