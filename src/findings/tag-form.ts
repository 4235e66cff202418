/** A code span that is meant as a tag and cannot be read as one. */
import type {FindingKind} from './model.js';

export const tagForm: FindingKind = {
  name: 'tag-form',
  group: 'reading',
  severity: 'error',
  summary: 'A tag that cannot be read',
  why: 'A tag that the tool cannot read says nothing: its step is checked, ticked and printed without it.',
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
2. Bring the bolts up. \`torque main-cap-bolts to 85 lbf·ft\`
`,
    right: `
1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
`,
  },
  fromReading: true,
  fixIsSpelling: true,
};
