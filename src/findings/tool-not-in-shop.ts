/** A tag uses a tool that shop.yaml does not list. */
import type {FindingKind} from './model.js';

export const toolNotInShop: FindingKind = {
  name: 'tool-not-in-shop',
  group: 'materials and tools',
  severity: 'error',
  summary: 'A tag uses a tool that the shop does not have',
  why: 'The list of tools on the sheet is what gets laid out; a tool that is not in the shop is replaced by whatever is at hand.',
  source: 'common practice, no source',
  example: {
    engine: `
parts:
  block: {given: true}
  camshaft: {}
`,
    wrong: `
1. Tap the camshaft home. \`install: camshaft using brass-drift\`
`,
    right: `
1. Tap the camshaft home. \`install: camshaft using soft-mallet\`
`,
  },
  fromReading: true,
};
