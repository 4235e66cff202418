/** An item that does not say what its kind must say, or that nothing asks for. */
import type {FindingKind} from './model.js';
import {unaskedAlterations} from './unasked-alteration.js';

export const specSilent: FindingKind = {
  name: 'spec-silent',
  group: 'reading',
  severity: 'error',
  summary: 'The specification leaves out what an item must say, or says `unknown`',
  why: 'What the specification never asks for, nobody can miss: a fastener without a word on its lock goes in without one.',
  source: 'common practice, no source',
  example: {
    engine: `
parts:
  block: {given: true}
  main-caps: {}
fasteners:
  main-cap-bolts: {holds: [main-caps], torque: 85 lbf·ft, threads: dry}
`,
    rightEngine: `
parts:
  block: {given: true}
  main-caps: {}
fasteners:
  main-cap-bolts: {holds: [main-caps], torque: 85 lbf·ft, threads: dry, lock: {value: none, because: stretch holds them}}
`,
    wrong: `
1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
`,
    right: `
1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
`,
  },
  fromReading: true,
  book: unaskedAlterations,
};
