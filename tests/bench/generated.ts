/**
 * Books made up by a seeded generator, of any number of steps, in the shape of the demonstration book: sections,
 * cautions, prose of a line or two, tags, and three items of the specification to every five steps.
 */
import {type Random, seeded} from '../help/random.js';

export interface GeneratedBook {
  readonly shop: string;
  readonly engine: string;
  /** What the engine extends: a specification that is too long for one file. */
  readonly bases: readonly string[];
  /** Texts of the procedures by file name, in build order. */
  readonly procedures: ReadonlyMap<string, string>;
}

/**
 * The same book for the same numbers. `stepsPerFile` of at least `steps` puts it all in one file. With `loops` there is
 * a rework loop to every hundred steps.
 */
export function generatedBook(
  steps: number,
  stepsPerFile: number,
  {loops = false, seed = 1}: {readonly loops?: boolean; readonly seed?: number} = {},
): GeneratedBook {
  const random = seeded(seed);
  const units = Math.ceil(steps / STEPS_PER_UNIT);
  const unitsPerFile = Math.max(1, Math.ceil(stepsPerFile / STEPS_PER_UNIT));
  const procedures = new Map<string, string>();
  for (let first = 0; first < units; first += unitsPerFile) {
    const numbers = Array.from({length: Math.min(unitsPerFile, units - first)}, (_, index) => first + index);
    const name = `${String(procedures.size + 1).padStart(4, '0')}-assembly.md`;
    procedures.set(name, procedureText(numbers, random, loops));
  }
  const [first = '', ...rest] = slices(units).map((some) => itemsText(some, loops));
  const build = `build: [${[...procedures.keys()].join(', ')}]\n`;
  return {shop: SHOP, engine: HEAD + first + build, bases: rest.map((text) => HEAD + text), procedures};
}

const STEPS_PER_UNIT = 5;

/** As many as go into one file of the specification. */
const UNITS_PER_FILE = 3_500;

/** Of these units one has a rework loop: one to a hundred steps. */
const UNITS_PER_LOOP = 20;

const SHOP = `shop: {name: Generated Works}
sources: {notes: {title: Generated notes, note: invented}}
source: notes
tools:
  soft-mallet: soft-faced mallet
  feeler-gauges: {name: feeler gauges, gauge: true}
  torque-wrench: {name: torque wrench, range: 5–80 lbf·ft, resolution: 1 lbf·ft, gauge: true}
consumables:
  solvent: {name: solvent, use: cleaner, hazards: [vapour]}
  assembly-lube: {name: assembly lube, use: lubricant}
  wire-032: {name: 0.032 in safety wire, use: lock, lock: safety-wire, size: 0.032 in}
practice:
  - every: fastener
    type: drilled-head
    is: {lock: safety-wire, threads: dry}
`;

/** The units of each file of the specification. */
function slices(units: number): number[][] {
  const all = Array.from({length: units}, (_, unit) => unit);
  return Array.from({length: Math.ceil(units / UNITS_PER_FILE)}, (_, index) =>
    all.slice(index * UNITS_PER_FILE, (index + 1) * UNITS_PER_FILE),
  );
}

const HEAD = 'engine: {id: generated, name: Generated engine}\nsource: notes\n';

function itemsText(units: readonly number[], loops: boolean): string {
  const each = (item: (unit: number) => string, some = units) =>
    some.map((unit) => `  ${item(unit)}\n`).join('');
  const fits = loops ? units.filter(hasLoop) : [];
  return `parts:
${units[0] === 0 ? '  block: {given: true}\n' : ''}${each((unit) => `part-${unit}: {closes: [face-${unit}], using: [soft-mallet]}`)}
surfaces:
${each((unit) => `face-${unit}: {on: block, assembly: lubed, lubricants: [assembly-lube]}`)}
fasteners:
${each(
  (unit) =>
    `bolts-${unit}: {type: drilled-head, count: 4, holds: [part-${unit}], thread: 5/16-18 UNC, grade: SAE 5, torque: 18 lbf·ft}`,
)}
${fits.length === 0 ? '' : `fits:\n${each((unit) => `play-${unit}: {between: [block, part-${unit}], limits: 0.003–0.009 in, rework: true, using: [feeler-gauges], when: {installed: [part-${unit}], tight: [bolts-${unit}]}}`, fits)}`}`;
}

function hasLoop(unit: number): boolean {
  return unit % UNITS_PER_LOOP === 0;
}

function procedureText(units: readonly number[], random: Random, loops: boolean): string {
  const front = '---\ntitle: Assembly\nrevision: A\ndate: 2026-01-15\nauthor: generator\n---\n';
  return `${front}\n${units.map((unit) => unitText(unit, random) + (loops && hasLoop(unit) ? loopText(unit) : '')).join('\n')}`;
}

function unitText(unit: number, random: Random): string {
  const aside = () => ASIDES[Math.floor(random() * ASIDES.length)] ?? '';
  return `## Assembly ${unit}

${aside()}

> **Warning:** The solvent burns and its vapour makes you drowsy. \`hazard: vapour\`

1. Wash the face with solvent and blow it dry. ${aside()} \`clean: face-${unit} with solvent\`
2. Brush lube on the whole face. ${aside()} \`lube: face-${unit} with assembly-lube\`
3. Tap the part onto its dowels. ${aside()} \`install: part-${unit} using soft-mallet\`
4. Bring the bolts up crosswise. \`torque: bolts-${unit} to 18 lbf·ft in 9, 18 using torque-wrench\`
5. Wire the bolts in pairs, pulling tight. ${aside()} \`lock: bolts-${unit} with wire-032\`
`;
}

/** Reads the play and, where it is out, has the part off, wipes it and goes back. The unit's bolts are wired by then. */
function loopText(unit: number): string {
  return `
6. Read the play. \`step: read-${unit}\` \`measure: play-${unit} within 0.003–0.009 in using feeler-gauges\`
7. Where it is out, fit another part: \`if: play-${unit} is out\`
   1. Slacken the bolts. \`loosen: bolts-${unit}\`
   2. Take the part off. \`remove: part-${unit}\`
   3. Wash the face again. \`clean: face-${unit} with solvent\`
   4. Coat it afresh. \`lube: face-${unit} with assembly-lube\`
   5. Fit the next size. \`renew: part-${unit}\` \`install: part-${unit} using soft-mallet\`
   6. Bring the bolts up. \`torque: bolts-${unit} to 18 lbf·ft in 9, 18 using torque-wrench\`
   7. Wire the bolts. \`lock: bolts-${unit} with wire-032\`
   8. Read it again. \`repeat: read-${unit}\`
`;
}

const ASIDES = [
  '',
  'Keep the rag away from the oil holes.',
  'The *long* one goes to the rear; it has a **white** paint mark.',
  'It should slide without force. If it does not, take it out and look for burrs before you try again.',
  'See the [drawing](drawing.png) on the wall.',
  'Have a second pair of hands for this.',
] as const;
