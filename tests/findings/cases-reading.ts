/** What the readers of procedures report. */
import {EXAMPLE_SHOP} from '../help/example.js';
import {CAPS} from './case-engines.js';
import type {Case} from './cases.js';

export const READING_CASES: readonly Case[] = [
  {
    finding: 'tag-form',
    title: 'a verb without its colon',
    engine: CAPS,
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque main-cap-bolts to 85 lbf·ft\`
`,
    says: [`8:25 the colon after \`torque\` is missing`],
  },
  {
    finding: 'tag-form',
    title: 'emoji before the tag',
    engine: CAPS,
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. 🔩🔧 Bring them up. \`torque main-cap-bolts to 85 lbf·ft\`
`,
    says: [`8:25 the colon after \`torque\` is missing`],
  },
  {
    finding: 'tag-form',
    title: 'CRLF',
    engine: CAPS,
    procedure: `1. Set the caps in place. \`install: main-caps\`\r
2. Bring the bolts up. \`torque main-cap-bolts to 85 lbf·ft\`\r
`,
    says: [`8:25 the colon after \`torque\` is missing`],
  },
  {
    finding: 'tag-form',
    title: 'no target',
    engine: CAPS,
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: to 85 lbf·ft\`
`,
    says: [`8:25 \`torque\` names no target; write the id of a fastener after the colon`],
    also: ['left-slack'],
  },
  {
    finding: 'tag-form',
    title: 'a bracket left open',
    engine: CAPS,
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts[front to 85 lbf·ft\`
`,
    says: [`8:47 this bracket is never closed; close it with ]`],
    also: ['left-slack'],
  },
  {
    finding: 'unknown-verb',
    title: 'a slip of the pen',
    engine: CAPS,
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torqe: main-cap-bolts to 85 lbf·ft\`
`,
    says: [`8:25 "torqe" is no verb; did you mean torque?`],
    also: ['left-slack'],
  },
  {
    finding: 'unknown-verb',
    title: 'emoji and CRLF',
    engine: CAPS,
    procedure: `1. Set the caps in place. \`install: main-caps\`\r
2. 🔩 Bring the bolts up. \`torqe: main-cap-bolts to 85 lbf·ft\`\r
`,
    says: [`8:28 "torqe" is no verb; did you mean torque?`],
    also: ['left-slack'],
  },
  {
    finding: 'unknown-item',
    title: 'a slip of the pen',
    engine: CAPS,
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolt to 85 lbf·ft\`
`,
    says: [`8:33 main-cap-bolt is not in the specification; did you mean main-cap-bolts?`],
    also: ['left-slack'],
  },
  {
    finding: 'unknown-item',
    title: 'a place that it has not',
    engine: CAPS,
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts[front, center, rear] to 85 lbf·ft\`
`,
    says: [`8:55 main-cap-bolts has no place center; did you mean centre?`],
    also: ['left-slack'],
  },
  {
    finding: 'unknown-item',
    title: 'a material',
    engine: CAPS,
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
3. Lube the threads. \`lube: main-cap-bolts with engine-oyl\`
`,
    says: [`9:49 engine-oyl is not in the specification; did you mean engine-oil?`],
  },
  {
    finding: 'unknown-item',
    title: 'nothing like it',
    engine: CAPS,
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. 🔩 \`torque: main-cap-bolts to 85 lbf·ft\` \`install: harmonic-balancer\`
`,
    says: [
      `8:75 harmonic-balancer is not in the specification; add it to engine.yaml or shop.yaml, or correct the id`,
    ],
  },
  {
    finding: 'unknown-item',
    title: 'one slip, several times: one finding',
    engine: CAPS,
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
3. Slacken them. \`loosen: main-cap-bolt\`
4. Bring them up again. \`torque: main-cap-bolt to 85 lbf·ft\`
`,
    says: [`9:27 main-cap-bolt is not in the specification; did you mean main-cap-bolts?`],
  },
  {
    finding: 'unknown-item',
    title: 'every use agrees, and the definition has the slip',
    engine: CAPS.replace('  main-cap-bolts:', '  main-cap-bolt:'),
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 40 lbf·ft\`
3. Bring them up further. \`torque: main-cap-bolts to 85 lbf·ft\`
`,
    says: [
      'engine.yaml:9:3 main-cap-bolt is named nowhere, and every place that means it says main-cap-bolts; did you mean main-cap-bolts here?',
    ],
    also: ['left-slack'],
  },
  {
    finding: 'unknown-item',
    title: 'the uses do not agree, so the definition is taken to be right',
    engine: CAPS.replace('  main-cap-bolts:', '  main-cap-bolt:'),
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
3. Slacken them. \`loosen: main-cap-boltss\`
`,
    says: [
      '8:33 main-cap-bolts is not in the specification; did you mean main-cap-bolt?',
      '9:27 main-cap-boltss is not in the specification; did you mean main-cap-bolt?',
    ],
    also: ['left-slack'],
  },
  {
    finding: 'tool-not-in-shop',
    title: 'shop.yaml has the slip',
    engine: CAPS,
    shop: EXAMPLE_SHOP.replace('soft-mallet:', 'soft-malet:'),
    procedure: `1. Set the caps in place. \`install: main-caps using soft-mallet\`
2. Look at them. \`inspect: main-caps using soft-mallet\`
3. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
`,
    says: [
      'shop.yaml:6:3 soft-malet is named nowhere, and every place that means it says soft-mallet; did you mean soft-mallet here?',
    ],
  },
  {
    finding: 'install-manner',
    title: 'a slip in the specification is no fault of the step',
    engine: CAPS.replace('main-caps: {', 'main-caps: {using: [soft-malet], '),
    procedure: `1. Set the caps in place. \`install: main-caps using soft-mallet\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
`,
    says: [],
    also: ['unknown-item'],
  },
  {
    finding: 'unknown-item',
    title: 'a step to go back to',
    engine: CAPS,
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
3. Go back. \`repeat: bolts-up\`
`,
    says: [`9:22 no step of this procedure is named bolts-up; name the step with \`step: bolts-up\``],
  },
  {
    finding: 'wrong-kind',
    title: 'a part is torqued',
    engine: CAPS,
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Bring the caps down. \`torque: main-caps to 85 lbf·ft\`
`,
    says: [`8:34 main-caps is a part, and \`torque\` takes a fastener`],
    also: ['left-slack'],
  },
  {
    finding: 'wrong-kind',
    title: 'a part is named as a material',
    engine: CAPS,
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
3. Lube the threads. \`lube: main-cap-bolts with main-caps\`
`,
    says: [`9:49 main-caps is a part, and \`with\` takes a consumable`],
  },
  {
    finding: 'wrong-kind',
    title: 'a kind of lock is named as a lubricant',
    engine: CAPS,
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
3. Lube the threads. \`lube: main-cap-bolts with safety-wire\`
`,
    says: [`9:49 safety-wire is a kind of lock, and \`with\` takes a consumable`],
  },
  {
    finding: 'clause-not-taken',
    title: 'a torque with limits',
    engine: CAPS,
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft within 80–90 lbf·ft\`
`,
    says: [`8:61 \`torque\` takes no \`within\`; it takes \`using\`, \`to\`, \`in\`, \`turn\``],
  },
  {
    finding: 'clause-not-taken',
    title: 'CRLF',
    engine: CAPS,
    procedure: `1. Set the caps in place. \`install: main-caps\`\r
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft for 10 min\`\r
`,
    says: [`8:61 \`torque\` takes no \`for\`; it takes \`using\`, \`to\`, \`in\`, \`turn\``],
  },
  {
    finding: 'front-matter',
    title: 'none at all',
    engine: CAPS,
    procedure: `---
---
1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
`,
    says: [
      `1:1 title is missing; it takes the name of the procedure, in words`,
      `1:1 revision is missing; it takes a letter or a number, such as 3`,
      `1:1 date is missing; it takes a day as year, month and day: 2026-01-15`,
    ],
  },
  {
    finding: 'front-matter',
    title: 'a date as people say it',
    engine: CAPS,
    procedure: `---
title: Caps
revision: A
date: 1 March 2026
---

1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
`,
    says: [`4:7 date does not take "1 March 2026"; it takes a day as year, month and day: 2026-01-15`],
  },
  {
    finding: 'front-matter',
    title: 'a key mistyped, CRLF',
    engine: CAPS,
    procedure: `---\r
title: Caps\r
revison: A\r
date: 2026-03-01\r
---\r
\r
1. Set the caps in place. \`install: main-caps\`\r
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`\r
`,
    says: [
      `1:1 revision is missing; it takes a letter or a number, such as 3`,
      `3:1 "revison" is no key of the front matter; did you mean revision?`,
    ],
  },
  {
    finding: 'front-matter',
    title: 'never closed',
    engine: CAPS,
    procedure: `---
title: Caps
revision: A

1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
`,
    says: [`1:1 the front matter is never closed; end it with a line of three hyphens`],
  },
  {
    finding: 'tag-outside-step',
    title: 'in a paragraph',
    engine: CAPS,
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`

The caps are numbered. \`install: main-caps\`
`,
    says: [`10:25 \`install\` stands in prose between the steps; put it in an item of a numbered list`],
  },
  {
    finding: 'tag-outside-step',
    title: 'in a bullet list',
    engine: CAPS,
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`

- The caps are numbered. \`install: main-caps\`
`,
    says: [`10:27 \`install\` stands in a bullet list; put it in an item of a numbered list`],
  },
  {
    finding: 'tag-outside-step',
    title: 'in a caution, emoji before',
    engine: CAPS,
    procedure: `> **Caution:** 🔩 Heavy. \`install: main-caps\`

1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
`,
    says: [`7:27 \`install\` stands in a caution; put it in an item of a numbered list`],
  },
  {
    finding: 'unit-missing',
    title: 'a bare torque',
    engine: CAPS,
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85\`
`,
    says: [`8:51 85 has no unit where a torque is due; write it in lbf·ft, lbf·in or N·m`],
  },
  {
    finding: 'unit-missing',
    title: 'in engine.yaml',
    engine: CAPS.replace('85 lbf·ft', '85'),
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
`,
    says: [`engine.yaml:12:13 85 has no unit where a torque is due; write it in lbf·ft, lbf·in or N·m`],
  },
  {
    finding: 'unit-wrong-kind',
    title: 'pounds for a torque',
    engine: CAPS,
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lb\`
`,
    says: [`8:54 lb is a mass where a torque is due; write lbf·ft or lbf·in`],
  },
  {
    finding: 'unit-wrong-kind',
    title: 'emoji and CRLF',
    engine: CAPS,
    procedure: `1. Set the caps in place. \`install: main-caps\`\r
2. 🔩 Bring the bolts up. \`torque: main-cap-bolts to 85 ft\`\r
`,
    says: [`8:57 ft is a length where a torque is due; write lbf·ft`],
  },
  {
    finding: 'unit-wrong-kind',
    title: 'in engine.yaml',
    engine: CAPS.replace('85 lbf·ft', '85 mm'),
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
`,
    says: [`engine.yaml:12:16 mm is a length where a torque is due; write lbf·ft, lbf·in or N·m`],
  },
];
