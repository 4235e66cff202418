/** A name, in a tag or in the specification, that nothing bears. */
import type {FindingKind} from './model.js';

export const unknownItem: FindingKind = {
  name: 'unknown-item',
  group: 'reading',
  severity: 'error',
  summary: 'A name that the specification, or the procedure, does not know',
  why: 'Nothing can be checked of an item that nobody has specified, and a slip of the pen makes two items of one.',
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
2. Bring the bolts up. \`torque: main-cap-bolt to 85 lbf·ft\`
`,
    right: `
1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
`,
  },
  fromReading: true,
};
