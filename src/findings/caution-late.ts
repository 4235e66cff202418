/** A caution stands below the first step that it is needed for. */
import {whereIn} from '../build/program.js';
import {meetings, standsBefore, warnings} from './hazards.js';
import type {FindingKind} from './model.js';
import {tagWhere} from './phrase.js';

export const cautionLate: FindingKind = {
  name: 'caution-late',
  group: 'people',
  severity: 'error',
  summary: 'A caution stands only after the first step that needs it',
  why: 'A warning that is read when the grit is in the eye has warned nobody.',
  source: 'MIL-DTL-87268D, 3.2.2.4 a: warnings and cautions come before the text that they apply to',
  example: {
    engine: `
parts:
  block: {given: true}
  main-shells: {alterations: [grind-off-lip]}
alterations:
  grind-off-lip: {of: [main-shells], does: grind the locating lip flush, hazards: [eyes]}
`,
    wrong: `
1. Grind the locating lip flush. \`alter: main-shells by grind-off-lip\`

> **Warning:** Grit flies from the wheel. Goggles on before you switch it on. \`hazard: eyes\`

2. Press the shells in. \`install: main-shells\`
`,
    right: `
> **Warning:** Grit flies from the wheel. Goggles on before you switch it on. \`hazard: eyes\`

1. Grind the locating lip flush. \`alter: main-shells by grind-off-lip\`
2. Press the shells in. \`install: main-shells\`
`,
  },
  book({program, book, report}) {
    for (const {procedure, nodes} of program.parts) {
      const warned = warnings(procedure);
      for (const {hazard, item, action, step} of meetings(nodes, book.spec)) {
        const cautions = warned.filter(({word}) => word === hazard.value);
        const [late] = cautions;
        if (late === undefined || cautions.some((one) => standsBefore(one, step))) continue;
        report({
          where: whereIn(step, late.span),
          message: `${item.id} brings the hazard ${hazard.value} at step ${step.step.number}, and the caution stands only after it`,
          item: item.id,
          step,
          related: [
            {where: tagWhere(action), says: 'the caution is needed before this'},
            {where: hazard.where, says: `${hazard.value} is a hazard of ${item.id}`},
          ],
        });
      }
    }
  },
};
