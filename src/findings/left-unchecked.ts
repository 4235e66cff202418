import {reportUndone} from './left-undone.js';
import type {FindingKind} from './model.js';

export const leftUnchecked: FindingKind = {
  name: 'left-unchecked',
  group: 'left undone',
  severity: 'error',
  summary: 'A check is never made',
  why: 'A shell that stands off its saddle turns the engine stiffly once; after that it turns the shell.',
  source: 'common practice, no source',
  example: {
    engine: `
checks:
  shells-seated: {expect: each shell lies fully in its saddle}
`,
    wrong: `
1. Set the engine upright.
`,
    right: `
1. Look along every saddle from both ends. \`check: shells-seated\`
`,
  },
  end(context) {
    for (const check of context.relations.checks) {
      reportUndone(
        check,
        {
          fact: 'checked',
          never: '[is|are] never checked',
          again: '[is|are] checked too early',
          asked: `${check.id} is a check of this engine`,
        },
        context,
      );
    }
  },
};
