/** Two statements of the specification that cannot both hold. */
import type {FindingKind} from './model.js';

export const specContradiction: FindingKind = {
  name: 'spec-contradiction',
  group: 'reading',
  severity: 'error',
  summary: 'The specification says two things that cannot both be true',
  why: 'A procedure can follow only one of them, and whichever it follows, the other is broken.',
  source: 'common practice, no source',
  example: {
    engine: `
parts:
  block: {given: true}
  camshaft: {closes: [camshaft-bores]}
surfaces:
  camshaft-bores:
    on: block
    at: [front, middle, rear]
    assembly: clean
    sizes: {front: 2.125 in, middle: 2.145 in, rear: 2.065 in}
    order: falling
`,
    rightEngine: `
parts:
  block: {given: true}
  camshaft: {closes: [camshaft-bores]}
surfaces:
  camshaft-bores:
    on: block
    at: [front, middle, rear]
    assembly: clean
    sizes: {front: 2.125 in, middle: 2.105 in, rear: 2.065 in}
    order: falling
`,
    wrong: `
1. Wipe the bores. \`clean: camshaft-bores\`
2. Slide the camshaft in. \`install: camshaft\`
`,
    right: `
1. Wipe the bores. \`clean: camshaft-bores\`
2. Slide the camshaft in. \`install: camshaft\`
`,
  },
  fromReading: true,
};
