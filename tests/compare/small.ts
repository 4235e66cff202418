/** A small clean book in which most verbs stand once, and how two of its revisions compare. */
import type {Book} from '../../src/build/book.js';
import {compareBooks} from '../../src/compare/compare.js';
import type {Comparison} from '../../src/compare/model.js';
import {check} from '../../src/findings/check.js';
import {book} from '../help/example.js';

export const SHOP = `
shop: {name: Example Works}
sources: {house: {title: House notes, note: invented}}
source: house
tools:
  soft-mallet: soft mallet
  dial: {name: dial indicator, gauge: true}
consumables:
  solvent: {use: cleaner, hazards: [fire]}
  oil: {use: lubricant}
  grease: {use: lubricant}
  gasket-goo: {use: sealant, cure: 24 h}
  wire-032: {use: lock, lock: safety-wire}
`;

export const ENGINE = `
parts:
  block: {given: true}
  cap: {closes: [face, joint], reused: true, using: [soft-mallet]}
surfaces:
  face: {on: cap, assembly: lubed, lubricants: [oil]}
joints:
  joint: {between: [block, cap], seal: [gasket-goo]}
fasteners:
  bolts: {count: 2, holds: [cap], torque: 40 lbf·ft, threads: dry, lock: safety-wire}
  studs: {count: 2, holds: [cap], torque: 12 lbf·ft, threads: dry, lock: {value: none, because: thread form}}
fits:
  play: {between: [block, cap], limits: 0.002–0.006 in, rework: true, using: [dial], when: {installed: [cap], tight: [bolts]}}
hold-points:
  closed: {asks: [bolts], by: shop lead}
marks:
  number: {stamped: pad}
barred:
  - {what: [grease], on: [face], because: it sets}
`;

export const STEPS = `
## Cap

> **Warning:** Solvent burns. \`hazard: fire\`

1. Look over the cap for cracks. \`inspect: cap for cracks, burrs\`
2. Wipe face and joint with solvent. \`clean: face, joint with solvent\`
3. Oil the face. \`lube: face with oil\`
4. Run a thin bead round the joint. \`seal: joint with gasket-goo\`
5. Tap the cap home. \`install: cap using soft-mallet\`
6. Tighten the bolts. \`torque: bolts to 40 lbf·ft in 20, 30, 40\`
7. Tighten the studs. \`torque: studs\`
8. Read the play. \`measure: play within 0.002–0.006 in using dial\` \`step: read-play\`
9. Where it is out: \`if: play is out\`
   1. Stop and find the shop lead.
10. Wire the bolts. \`lock: bolts with wire-032\`
11. Copy the number. \`record: number\`
12. Leave it for 24 h. \`cure: joint for 24 h\`
13. Have it signed. \`witness: closed by "shop lead"\`
`;

export function made(steps = STEPS, engine = ENGINE, shop = SHOP): Book {
  return book({shop, engine, procedures: {'01-cap.md': steps}});
}

export function compared(before: Book, now: Book): Comparison {
  const judge = (one: Book) => check(one).findings;
  return compareBooks(
    {book: before, jobs: [], findings: judge(before)},
    {book: now, jobs: [], findings: judge(now)},
    judge,
  );
}

export function said({changes}: Comparison): string[] {
  return changes.map(({effect, message}) => `${effect}: ${message}`);
}
