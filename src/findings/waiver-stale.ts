/** A waiver that silences nothing: `settle.ts` finds it when all waivers have been applied. */
import type {FindingKind} from './model.js';

export const waiverStale: FindingKind = {
  name: 'waiver-stale',
  group: 'people',
  severity: 'warning',
  summary: 'A waiver silences nothing',
  why: 'A waiver that has outlived its mistake waits to hide the next one.',
  source: 'common practice, no source',
  example: {
    engine: `
parts:
  block: {given: true}
  core-plugs: {closes: [plug-seats]}
surfaces:
  plug-seats: {on: block, assembly: clean}
`,
    wrong: `
1. Wipe the seats. \`clean: plug-seats\`
2. Drive in the plugs. \`install: core-plugs\` \`waive: clean-first by R. Tamsin because the seats were bored this morning\`
`,
    right: `
1. Wipe the seats. \`clean: plug-seats\`
2. Drive in the plugs. \`install: core-plugs\`
`,
  },
};
