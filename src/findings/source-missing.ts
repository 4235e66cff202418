/** A specified value for which no source is named. */
import type {FindingKind} from './model.js';

export const sourceMissing: FindingKind = {
  name: 'source-missing',
  group: 'reading',
  severity: 'warning',
  summary: 'A specified value without a source',
  why: 'An unsourced number is how errors are handed down: nobody can check it against the paper that it came from.',
  source: 'common practice, no source',
  example: {
    engine: `
parts:
  block: {given: true}
  sump: {closes: [sump-joint]}
joints:
  sump-joint: {between: [block, sump], seal: [liquid-gasket]}
`,
    shop: `
shop: {name: Example Works}
sources:
  house: {title: Example house notes, note: invented}
consumables:
  liquid-gasket: {use: sealant, cure: 24 h}
`,
    rightShop: `
shop: {name: Example Works}
sources:
  house: {title: Example house notes, note: invented}
consumables:
  liquid-gasket: {use: sealant, cure: {value: 24 h, source: house}}
`,
    wrong: `
1. Wipe both faces. \`clean: sump-joint\`
2. Run a bead. \`seal: sump-joint with liquid-gasket\`
3. Set the sump down. \`install: sump\`
4. Leave the joint alone. \`cure: sump-joint for 24 h\`
`,
    right: `
1. Wipe both faces. \`clean: sump-joint\`
2. Run a bead. \`seal: sump-joint with liquid-gasket\`
3. Set the sump down. \`install: sump\`
4. Leave the joint alone. \`cure: sump-joint for 24 h\`
`,
  },
  fromReading: true,
};
