import {reportUndone} from './left-undone.js';
import type {FindingKind} from './model.js';

export const leftUnmeasured: FindingKind = {
  name: 'left-unmeasured',
  group: 'left undone',
  severity: 'error',
  summary: 'A fit ends the build unmeasured, or changed since it was measured',
  why: 'A clearance that nobody read is a guess, and one read before the shells were changed is a reading of another engine.',
  source: 'common practice, no source',
  example: {
    engine: `
parts:
  block: {given: true}
  crankshaft: {}
fits:
  end-play: {between: [block, crankshaft], limits: 0.003–0.009 in, using: [feeler-gauges], when: {installed: [crankshaft], tight: []}}
`,
    wrong: `
1. Lower the crankshaft in. \`install: crankshaft\`
`,
    right: `
1. Lower the crankshaft in. \`install: crankshaft\`
2. Pry the crankshaft to and fro and read its end play. \`measure: end-play using feeler-gauges\`
`,
  },
  end(context) {
    for (const fit of context.relations.fits) {
      reportUndone(
        fit,
        {
          fact: 'measured',
          never: 'is never measured',
          again: 'was measured before it was changed',
          asked: `${fit.id} is specified with limits`,
        },
        context,
      );
    }
  },
};
