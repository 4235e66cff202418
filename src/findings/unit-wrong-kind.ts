/** A value in a unit of another kind than is due. */
import type {FindingKind} from './model.js';

export const unitWrongKind: FindingKind = {
  name: 'unit-wrong-kind',
  group: 'reading',
  severity: 'error',
  summary: 'A value in a unit of another kind',
  why: 'A pound is no torque: whether foot-pounds or inch-pounds were meant makes a factor of twelve.',
  source: 'NIST SP 811 (2008), appendix B.8: factors for pound-force foot and pound-force inch',
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
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lb\`
`,
    right: `
1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
`,
  },
  fromReading: true,
};
