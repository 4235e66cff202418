/**
 * Books made up by a seeded generator, of any number of steps, in the shape of the demonstration book: sections,
 * cautions, prose of a line or two, tags, and three items of the specification to every five steps.
 */
import {type Random, seeded} from '../help/random.js';

export interface GeneratedBook {
  readonly shop: string;
  readonly engine: string;
  /** Texts of the procedures by file name, in build order. */
  readonly procedures: ReadonlyMap<string, string>;
}

/** The same book for the same numbers. `stepsPerFile` of at least `steps` puts it all in one file. */
export function generatedBook(steps: number, stepsPerFile: number, seed = 1): GeneratedBook {
  const random = seeded(seed);
  const units = Math.ceil(steps / STEPS_PER_UNIT);
  const unitsPerFile = Math.max(1, Math.ceil(stepsPerFile / STEPS_PER_UNIT));
  const procedures = new Map<string, string>();
  for (let first = 0; first < units; first += unitsPerFile) {
    const numbers = Array.from({length: Math.min(unitsPerFile, units - first)}, (_, index) => first + index);
    const name = `${String(procedures.size + 1).padStart(4, '0')}-assembly.md`;
    procedures.set(name, procedureText(numbers, random));
  }
  return {shop: SHOP, engine: engineText(units, [...procedures.keys()]), procedures};
}

const STEPS_PER_UNIT = 5;

const SHOP = `shop: {name: Generated Works}
sources: {notes: {title: Generated notes, note: invented}}
source: notes
tools:
  soft-mallet: soft-faced mallet
  torque-wrench: {name: torque wrench, range: 10–80 lbf·ft, resolution: 1 lbf·ft, gauge: true}
consumables:
  solvent: {name: solvent, use: cleaner, hazards: [vapour]}
  assembly-lube: {name: assembly lube, use: lubricant}
  wire-032: {name: 0.032 in safety wire, use: lock, lock: safety-wire, size: 0.032 in}
practice:
  - every: fastener
    type: drilled-head
    is: {lock: safety-wire, threads: dry}
`;

function engineText(units: number, files: readonly string[]): string {
  const each = (item: (unit: number) => string) =>
    Array.from({length: units}, (_, unit) => `  ${item(unit)}\n`).join('');
  return `engine: {id: generated, name: Generated engine}
source: notes
parts:
  block: {given: true}
${each((unit) => `part-${unit}: {closes: [face-${unit}], using: [soft-mallet]}`)}
surfaces:
${each((unit) => `face-${unit}: {on: block, assembly: lubed, lubricants: [assembly-lube]}`)}
fasteners:
${each(
  (unit) =>
    `bolts-${unit}: {type: drilled-head, count: 4, holds: [part-${unit}], thread: 5/16-18 UNC, grade: SAE 5, torque: 18 lbf·ft}`,
)}
build: [${files.join(', ')}]
`;
}

function procedureText(units: readonly number[], random: Random): string {
  const front = '---\ntitle: Assembly\nrevision: A\ndate: 2026-01-15\nauthor: generator\n---\n';
  return `${front}\n${units.map((unit) => unitText(unit, random)).join('\n')}`;
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

const ASIDES = [
  '',
  'Keep the rag away from the oil holes.',
  'The *long* one goes to the rear; it has a **white** paint mark.',
  'It should slide without force. If it does not, take it out and look for burrs before you try again.',
  'See the [drawing](drawing.png) on the wall.',
  'Have a second pair of hands for this.',
] as const;
