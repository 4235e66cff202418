/** A tag that opens with a word which is no verb. */
import type {FindingKind} from './model.js';

export const unknownVerb: FindingKind = {
  name: 'unknown-verb',
  group: 'reading',
  severity: 'error',
  summary: `A tag whose verb is not one of the tool's`,
  why: 'A step with a mistyped verb does nothing for the engine, and what it should have done is then missed far below.',
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
2. Bring the bolts up. \`torq: main-cap-bolts to 85 lbf·ft\`
`,
    right: `
1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
`,
  },
  fromReading: true,
  fixIsSpelling: true,
};
