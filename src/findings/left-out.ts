import {reportUndone} from './left-undone.js';
import type {FindingKind} from './model.js';
import {inNumber} from './phrase.js';

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
          never: '[is|are] never installed',
          again: '[ends|end] the build out',
          asked: `${part.id} ${inNumber(part, '[belongs|belong]')} in the engine`,
        },
        context,
      );
    }
  },
};
