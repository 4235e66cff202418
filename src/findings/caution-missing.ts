/** A step uses what may hurt somebody, and no caution of the procedure warns of it. */
import {type Part, whereIn} from '../build/program.js';
import type {Specification} from '../spec/model.js';
import {nearest} from '../text/nearest.js';
import {type Hazard, hazardsOf, hazardsSaid} from './hazards.js';
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
  part(part, {spec, worked, report}) {
    for (const {hazards, item, action, step} of worked.meetings(part)) {
      const open = hazards.filter(({cautions}) => cautions.length === 0);
      if (open.length === 0) continue;
      const slip = slipOf(open, part, spec);
      report({
        where: tagWhere(action),
        message: `${item.id} brings ${hazardsSaid(open)} at step ${step.step.number}, and no caution before it warns of ${open.length === 1 ? 'that' : 'them'}${slip ? `; did you mean ${slip.meant} where a caution says ${slip.word}?` : ''}`,
        item: item.id,
        step,
        related: open.flatMap(({where, value, first}) => [
          {where, says: `${value} is a hazard of ${item.id}`},
          ...(first === undefined ? [] : [{where: whereIn(step, first.span), says: OTHER}]),
        ]),
        ...(slip && {fix: slip.fix}),
      });
    }
  },
};

const OTHER = 'this caution stands in another section, and speaks of something else';

/** A hazard word of a caution that nothing of the specification brings, and that is near to one that is missing. */
function slipOf(open: readonly Hazard[], {procedure}: Part, spec: Specification) {
  const {file} = procedure.source;
  const own = procedure.steps.flatMap(({cautions}) => cautions.flatMap(({hazards}) => hazards));
  const known = new Set([...spec.items.values()].flatMap((item) => hazardsOf(item).map(({value}) => value)));
  const missing = open.map(({value}) => value);
  for (const {word, span} of own) {
    const meant = known.has(word) ? undefined : nearest(word, missing);
    if (meant === undefined) continue;
    return {word, meant, fix: {title: `Write ${meant} in the caution`, file, edits: [{span, text: meant}]}};
  }
  return undefined;
}
