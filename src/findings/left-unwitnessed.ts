import {reportUndone} from './left-undone.js';
import type {FindingKind} from './model.js';

export const leftUnwitnessed: FindingKind = {
  name: 'left-unwitnessed',
  group: 'left undone',
  severity: 'error',
  summary: 'A hold point ends the build without its second signature',
  why: 'The second pair of eyes is asked for where a mistake can no longer be seen afterwards.',
  source: '10 CFR 50 Appendix B, criterion X: mandatory hold points (from memory)',
  example: {
    engine: `
parts:
  block: {given: true}
  main-caps: {}
hold-points:
  bottom-end-closed: {asks: [main-caps], by: shop lead}
`,
    wrong: `
1. Set the caps in place. \`install: main-caps\`
`,
    right: `
1. Set the caps in place. \`install: main-caps\`
2. Have the shop lead look and sign. \`witness: bottom-end-closed by "shop lead"\`
`,
  },
  end(context) {
    for (const point of context.relations.holdPoints) {
      reportUndone(
        point,
        {
          fact: 'witnessed',
          never: 'is never witnessed',
          again: 'is witnessed too early',
          asked: `${point.id} asks for a second signature`,
        },
        context,
      );
    }
  },
};
