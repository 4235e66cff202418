/** A clause that the verb of its tag does not take. */
import type {FindingKind} from './model.js';

export const clauseNotTaken: FindingKind = {
  name: 'clause-not-taken',
  group: 'reading',
  severity: 'error',
  summary: 'A tag has a clause that its verb does not take',
  why: 'A value in a clause that means nothing to the verb is read by nobody and checked by nobody.',
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
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft within 80–90 lbf·ft\`
`,
    right: `
1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
`,
  },
  fromReading: true,
  fixIsSpelling: true,
};
