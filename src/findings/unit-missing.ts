/** A value without its unit, in a tag or in the specification. */
import type {FindingKind} from './model.js';

export const unitMissing: FindingKind = {
  name: 'unit-missing',
  group: 'reading',
  severity: 'error',
  summary: 'A value without a unit',
  why: 'An 85 that one reader takes for lbf·ft and the next for N·m is a stretched bolt or a slack one.',
  source: 'NIST SP 811 (2008), section 7.1: the value of a quantity is a number and a unit together',
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
2. Bring the bolts up. \`torque: main-cap-bolts to 85\`
`,
    right: `
1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
`,
  },
  fromReading: true,
};
