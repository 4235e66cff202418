import {reportUndone} from './left-undone.js';
import type {FindingKind} from './model.js';

export const leftUnfilled: FindingKind = {
  name: 'left-unfilled',
  group: 'left undone',
  severity: 'error',
  summary: 'A system is never filled',
  why: 'An engine started without oil or water is finished within the minute.',
  source: 'common practice, no source',
  example: {
    engine: `
systems:
  cooling: {joints: [], closed-by: [], with: [coolant]}
`,
    wrong: `
1. Set the engine upright.
`,
    right: `
1. Fill until coolant stands at the neck. \`fill: cooling with coolant\`
`,
  },
  end(context) {
    for (const system of context.relations.systems) {
      reportUndone(
        system,
        {
          fact: 'filled',
          never: '[is|are] never filled',
          again: '[is|are] emptied again',
          asked: `${system.id} is a system of this engine`,
        },
        context,
      );
    }
  },
};
