/** Front matter that is missing, never closed, or lacks what the sheet prints. */
import type {FindingKind} from './model.js';

export const frontMatter: FindingKind = {
  name: 'front-matter',
  group: 'reading',
  severity: 'error',
  summary: 'The front matter of a procedure is missing, broken or incomplete',
  why: 'A sheet without title, revision and date cannot be told from the one that it replaces.',
  source: 'common practice, no source',
  example: {
    engine: `
parts:
  block: {given: true}
  main-caps: {}
fasteners:
  main-cap-bolts: {holds: [main-caps], torque: 85 lbf·ft, threads: dry, lock: {value: none, because: stretch holds them}}
`,
    wrong: `---
title: Main caps
revision: A
date: 1 March 2026
---

1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
`,
    right: `---
title: Main caps
revision: A
date: 2026-03-01
---

1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
`,
  },
  fromReading: true,
  fixIsSpelling: true,
};
