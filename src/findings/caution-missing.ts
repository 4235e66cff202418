/** A step uses what may hurt somebody, and no caution of the procedure warns of it. */
import {whereIn} from '../build/program.js';
import {hazardsSaid} from './hazards.js';
import type {FindingKind} from './model.js';
import {tagWhere} from './phrase.js';

export const cautionMissing: FindingKind = {
  name: 'caution-missing',
  group: 'people',
  severity: 'error',
  summary: 'A step uses what may hurt somebody, and no caution warns of it',
  why: 'The sheet is all that the apprentice has in hand; a hazard known in the office protects nobody at the bench.',
  source: 'ANSI Z535.6-2011: hazards are stated where the procedure meets them',
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
2. Press the shells in. \`install: main-shells\`
`,
    right: `
> **Warning:** Grit flies from the wheel. Goggles on before you switch it on. \`hazard: eyes\`

1. Grind the locating lip flush. \`alter: main-shells by grind-off-lip\`
2. Press the shells in. \`install: main-shells\`
`,
  },
  part(part, {worked, report}) {
    for (const {hazards, item, action, step} of worked.meetings(part)) {
      const open = hazards.filter(({cautions}) => cautions.length === 0);
      if (open.length === 0) continue;
      report({
        where: tagWhere(action),
        message: `${item.id} brings ${hazardsSaid(open)} at step ${step.step.number}, and no caution before it warns of ${open.length === 1 ? 'that' : 'them'}`,
        item: item.id,
        step,
        related: open.flatMap(({where, value, first}) => [
          {where, says: `${value} is a hazard of ${item.id}`},
          ...(first === undefined ? [] : [{where: whereIn(step, first.span), says: OTHER}]),
        ]),
      });
    }
  },
};

const OTHER = 'this caution stands in another section, and speaks of something else';
