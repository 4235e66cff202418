/** A part of engine.yaml or shop.yaml that has another form than the schema asks for. */
import type {FindingKind} from './model.js';

export const specForm: FindingKind = {
  name: 'spec-form',
  group: 'reading',
  severity: 'error',
  summary: 'A part of engine.yaml or shop.yaml has another form than the schema asks for',
  why: 'A mistyped key is a rule that nobody applies: what the specification meant to ask for, no procedure is held to.',
  source: 'common practice, no source',
  example: {
    engine: `
parts:
  block: {given: true}
  main-caps: {}
fasteners:
  main-cap-bolts: {holds: [main-caps], torque: 85 lbf·ft, thread-state: dry, lock: {value: none, because: stretch holds them}}
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
};
