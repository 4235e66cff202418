/** Prose against tags. */
import {EXAMPLE_SHOP} from '../help/example.js';
import {CAM, CAPS, FITS, GAUGED} from './case-engines.js';
import type {Case} from './cases.js';

const GERMAN_FIT = `
parts:
  block: {given: true}
  crankshaft: {}
fits:
  end-play: {between: [block, crankshaft], limits: 0.10–0.25 mm, using: [feeler-gauges], when: {installed: [crankshaft]}}
`;

export const PROSE_CASES: readonly Case[] = [
  {
    finding: 'prose-disagrees',
    title: 'a torque',
    engine: CAPS,
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up to 58 lbf·ft. \`torque: main-cap-bolts to 85 lbf·ft\`
`,
    says: [`8:26 main-cap-bolts: the prose says 58 lbf·ft (79 N·m), the tag 85 lbf·ft (115 N·m)`],
  },
  {
    finding: 'prose-disagrees',
    title: 'emoji before the number, CRLF',
    engine: CAPS,
    procedure: `1. Set the caps in place. \`install: main-caps\`\r
2. 🔩🔩 Bring the bolts to 58 lbf·ft. \`torque: main-cap-bolts\`\r
`,
    says: [`8:28 main-cap-bolts: the prose says 58 lbf·ft (79 N·m), the specification 85 lbf·ft (115 N·m)`],
  },
  {
    finding: 'prose-disagrees',
    title: 'after the tag, on a line of its own, in bold',
    engine: CAPS,
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
   All of them end at **80 lbf·ft**.
`,
    says: [`9:25 main-cap-bolts: the prose says 80 lbf·ft (108 N·m), the tag 85 lbf·ft (115 N·m)`],
  },
  {
    finding: 'prose-disagrees',
    title: 'in a further paragraph',
    engine: CAPS,
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`

   No bolt is left at 80 lbf·ft.
`,
    says: [`10:23 main-cap-bolts: the prose says 80 lbf·ft (108 N·m), the tag 85 lbf·ft (115 N·m)`],
  },
  {
    finding: 'prose-disagrees',
    title: 'limits in words',
    engine: FITS,
    shop: GAUGED,
    procedure: `1. Set the crankshaft down. \`install: crankshaft\`
2. Read the play: between 0.004 and 0.010 in. \`measure: end-play\`
3. Spin it with a drag of at most 8 lbf·ft. \`check: crank-drag\`
`,
    says: [
      `8:27 end-play: the prose says 0.004–0.010 in (0.11–0.25 mm), the specification 0.004–0.008 in (0.11–0.20 mm)`,
      `9:35 crank-drag: the prose says 8 lbf·ft (11 N·m), the specification max 5 lbf·ft (max 6.7 N·m)`,
    ],
  },
  {
    finding: 'prose-disagrees',
    title: 'a pass',
    engine: CAPS,
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Bring them up in passes of 35, 60 and 85 lbf·ft. \`torque: main-cap-bolts to 85 lbf·ft in 30, 60, 85\`
`,
    says: [
      `8:31 main-cap-bolts: the prose says 35 lbf·ft (47 N·m), the tag 85 lbf·ft (115 N·m) in passes of 30 lbf·ft, 60 lbf·ft, 85 lbf·ft`,
    ],
  },
  {
    finding: 'prose-disagrees',
    title: 'a sub-step has its own',
    engine: CAPS,
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up.
   1. Go to 30 lbf·ft. \`torque: main-cap-bolts to 30 lbf·ft\`
   2. Go to 80 lbf·ft. \`torque: main-cap-bolts to 85 lbf·ft\`
`,
    says: [`10:13 main-cap-bolts: the prose says 80 lbf·ft (108 N·m), the tag 85 lbf·ft (115 N·m)`],
  },
  {
    finding: 'prose-disagrees',
    title: 'passes in prose, without a unit',
    engine: CAPS,
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up in passes of 30, 65 and 85. \`torque: main-cap-bolts to 85 lbf·ft in 30, 60, 85\`
`,
    says: [
      '8:36 main-cap-bolts: the prose has passes of 30, 65 and 85, the tag 85 lbf·ft in passes of 30 lbf·ft, 60 lbf·ft, 85 lbf·ft',
    ],
  },
  {
    finding: 'prose-disagrees',
    title: 'passes in prose, without a unit, that agree in one unit or the other',
    engine: CAPS,
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up in passes of 30, 60 and 85. \`torque: main-cap-bolts to 85 lbf·ft in 30, 60, 85\`
3. Again, in passes of 41, 81, then 115. \`torque: main-cap-bolts to 85 lbf·ft in 30, 60, 85\`
4. And again, in passes of 50 and 85. \`torque: main-cap-bolts to 85 lbf·ft\`
5. And again, in passes of 2 and 3 strokes. \`torque: main-cap-bolts to 85 lbf·ft in 30, 60, 85\`
`,
    says: [],
    also: ['passes-not-rising'],
  },
  {
    finding: 'prose-disagrees',
    title: 'decimal comma in a German shop',
    engine: GERMAN_FIT,
    shop: EXAMPLE_SHOP.replace('name: Example Works', 'name: Example Works, language: de'),
    procedure: `1. Kurbelwelle einlegen. \`install: crankshaft\`
2. Axialspiel messen: 0,10–0,30 mm. \`measure: end-play\`
3. Nochmals: 0,10–0,25 mm. \`measure: end-play\`
`,
    says: [
      '8:23 end-play: the prose says 0.0040–0.0118 in (0.10–0.30 mm), the specification 0.0040–0.0098 in (0.10–0.25 mm)',
    ],
  },
  {
    finding: 'prose-disagrees',
    title: 'decimal comma in a shop of another language is no number',
    engine: GERMAN_FIT,
    procedure: `1. Set the crankshaft in. \`install: crankshaft\`
2. Read the end play: 0,10–0,30 mm. \`measure: end-play\`
`,
    says: [],
  },
  {
    finding: 'untagged-action',
    title: 'a step without a tag',
    engine: CAM,
    procedure: `1. Wipe out the camshaft bores. \`clean: camshaft-bores\`
2. Lube the camshaft bores.
3. Slide the camshaft in. \`install: camshaft\`
`,
    says: [`8:4 camshaft-bores: step 2 says "Lube the camshaft bores", and no tag of it says \`lube\``],
    also: ['lube-first'],
  },
  {
    finding: 'untagged-action',
    title: 'the second of two, emoji and CRLF',
    engine: CAM,
    procedure: `1. 🧽 Wipe out and oil the camshaft bores. \`clean: camshaft-bores\`\r
2. Slide the camshaft in. \`install: camshaft\`\r
`,
    says: [`7:20 camshaft-bores: step 1 says "oil the camshaft bores", and no tag of it says \`lube\``],
    also: ['lube-first'],
  },
  {
    finding: 'untagged-action',
    title: 'a long command, of which the beginning is shown',
    engine: CAM,
    procedure: `1. Wipe out and lube the bores. \`clean: camshaft-bores\` \`lube: camshaft-bores\`
2. Slide the camshaft in. \`install: camshaft\`
3. Turn it slowly by its own weight and by hand, as far as it goes.
4. Turn it slowly with the help of the timing pulley wheel by hand.
5. Turn it slowly with the help of the old bar by hand.
`,
    says: [
      '9:4 step 3 says "Turn it slowly by its own weight and by hand", and no tag of it says `turn`',
      '10:4 step 4 says "Turn it slowly with the help of the timing pull…", and no tag of it says `turn`',
      '11:4 step 5 says "Turn it slowly with the help of the old bar by…", and no tag of it says `turn`',
    ],
  },
  {
    finding: 'untagged-action',
    title: 'no item of that name',
    engine: CAM,
    procedure: `1. Wipe out the camshaft bores. \`clean: camshaft-bores\`
2. Smear lube all over the place. \`lube: camshaft-bores\`
3. Slide the camshaft in and torque the thing. \`install: camshaft\`
`,
    says: [`9:30 step 3 says "torque the thing", and no tag of it says \`torque\``],
  },
  {
    finding: 'untagged-action',
    title: 'a parent speaks for its sub-steps, not for the next step',
    engine: CAM,
    procedure: `1. Ready the bores.
   1. Wipe the camshaft bores. \`clean: camshaft-bores\`
   2. Lube the camshaft bores. \`lube: camshaft-bores\`
2. Slide the camshaft in. \`install: camshaft\`
3. Turn it twice.
`,
    says: [`11:4 step 3 says "Turn it twice", and no tag of it says \`turn\``],
  },
  {
    finding: 'untagged-action',
    title: 'what is no part of the engine, named in the front matter',
    engine: CAM,
    procedure: untagged(
      '[the drip pan, "Lamp glass"]',
      'Slide the drip pan into place. Wipe the lamp glass.',
      'Slide it in. `install: camshaft`',
    ),
    says: [],
  },
  {
    finding: 'untagged-action',
    title: 'front matter excuses no lock, no torque and no item',
    engine: CAM,
    procedure: untagged(
      '[drip pan, nuts]',
      'Slide the drip pan into place.',
      'Slide it in. Torque the drip pan nuts. `install: camshaft`',
      'Wipe the camshaft bores over the drip pan.',
      'Lock the nuts with cotter pins.',
      'Put the nuts on.',
    ),
    says: [
      '10:17 step 3 says "Torque the drip pan nuts", and no tag of it says `torque`',
      '11:4 camshaft-bores: step 4 says "Wipe the camshaft bores over the drip pan", and no tag of it says `clean`',
      '12:4 step 5 says "Lock the nuts with cotter pins", and no tag of it says `lock`',
    ],
  },
  {
    finding: 'untagged-action',
    title: 'front matter that excuses nothing, an item, or anything',
    engine: CAM,
    procedure: untagged('[drip pan, the camshaft, "the"]', 'Slide it in. `install: camshaft`'),
    says: [
      '5:12 untagged: drip pan excuses no command of this procedure; take it out',
      '5:22 untagged: the camshaft is camshaft of the specification, which a tag can speak of; take it out',
      '5:36 untagged: the could be anything; name the thing itself',
    ],
  },
];

/** A procedure of these steps behind the cleaning and the lube, with words that its front matter excuses. */
function untagged(words: string, ...steps: readonly string[]): string {
  const front = `---\ntitle: T\nrevision: A\ndate: 2026-01-15\nuntagged: ${words}\n---\n\n`;
  const first = 'Wipe out and lube the camshaft bores. `clean: camshaft-bores` `lube: camshaft-bores`';
  return front + [first, ...steps].map((step, index) => `${index + 1}. ${step}\n`).join('');
}
