/** A tag in a paragraph, a bullet list or a caution: anywhere but in a step. */
import type {FindingKind} from './model.js';

export const tagOutsideStep: FindingKind = {
  name: 'tag-outside-step',
  group: 'reading',
  severity: 'error',
  summary: 'A tag stands where no step is',
  why: 'Only a step is ticked and signed. A tag in a paragraph, a bullet list or a caution looks checked and is not.',
  source: 'common practice, no source',
  example: {
    engine: `
parts:
  block: {given: true}
  main-caps: {}
fasteners:
  main-cap-bolts: {holds: [main-caps], torque: 85 lbf·ft, threads: dry, lock: {value: none, because: stretch holds them}}
`,
    wrong: `
1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`

The caps are numbered from the front. \`install: main-caps\`
`,
    right: `
1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`

The caps are numbered from the front.
`,
  },
  fromReading: true,
};
