import {reportUndone} from './left-undone.js';
import type {FindingKind} from './model.js';

export const leftUnrecorded: FindingKind = {
  name: 'left-unrecorded',
  group: 'left undone',
  severity: 'error',
  summary: 'A mark is never recorded',
  why: 'An engine whose number was not compared with its plate may be another engine, with other parts in it.',
  source: 'common practice, no source',
  example: {
    engine: `
marks:
  engine-number: {stamped: front left of the block, matches: hull-plate-number}
  hull-plate-number: {stamped: plate on the engine bearer}
`,
    wrong: `
1. Write down the number on the block. \`record: engine-number\`
`,
    right: `
1. Write down the number on the block. \`record: engine-number\`
2. Write down the number on the plate. \`record: hull-plate-number\`
`,
  },
  end(context) {
    for (const mark of context.relations.marks) {
      reportUndone(
        mark,
        {
          fact: 'recorded',
          never: 'is never written down',
          again: 'is written down and lost again',
          asked: `${mark.id} is a mark of this engine`,
        },
        context,
      );
    }
  },
};
