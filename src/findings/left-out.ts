import {reportUndone} from './left-undone.js';
import type {FindingKind} from './model.js';

export const leftOut: FindingKind = {
  name: 'left-out',
  group: 'left undone',
  severity: 'error',
  summary: 'A part is not in the engine at the end of the build',
  why: 'The part left on the bench is found when the engine is run, or by what it lets through.',
  source: 'common practice, no source',
  example: {
    engine: `
parts:
  block: {given: true}
  core-plugs: {at: [front, middle, rear]}
`,
    wrong: `
1. Drive in the outer plugs. \`install: core-plugs[front, rear]\`
`,
    right: `
1. Drive in all three plugs. \`install: core-plugs\`
`,
  },
  end(context) {
    for (const part of context.relations.parts) {
      if (part.given || part.temporary) continue;
      reportUndone(
        part,
        {
          fact: 'installed',
          never: 'is never installed',
          again: 'ends the build out',
          asked: `${part.id} belongs in the engine`,
        },
        context,
      );
    }
  },
};
