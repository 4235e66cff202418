/** A verb said of an item of a kind that it cannot be done to. */
import type {FindingKind} from './model.js';

export const wrongKind: FindingKind = {
  name: 'wrong-kind',
  group: 'reading',
  severity: 'error',
  summary: 'A verb is said of a kind of item that it cannot be done to',
  why: 'A part is installed and a fastener torqued: where the two are mixed up, the specification and the step speak of different things.',
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
2. Bring the caps down. \`torque: main-caps to 85 lbf·ft\`
`,
    right: `
1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
`,
  },
  fromReading: true,
};
