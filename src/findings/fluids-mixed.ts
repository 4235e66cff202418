/** A system is filled with one fluid while another is still in it. */
import {idsOf} from '../procedure/values.js';
import type {FindingKind} from './model.js';
import {listed, specified, storyOf, tagWhere} from './phrase.js';

const OIL = `
systems:
  oil: {joints: [], closed-by: [], with: [flushing-oil, engine-oil]}
`;

const SHOP = `
shop: {name: Example Works}
sources:
  house: {title: Example house notes, note: invented}
consumables:
  flushing-oil: {use: fluid}
  engine-oil: {use: lubricant}
`;

export const fluidsMixed: FindingKind = {
  name: 'fluids-mixed',
  group: 'order',
  severity: 'error',
  summary: 'A system is filled with one fluid while another is still in it',
  why: 'Flushing oil that nobody drained thins the oil on top of it, and the bearings run in on the mixture.',
  source: 'common practice, no source',
  example: {
    shop: SHOP,
    engine: OIL,
    wrong: `
1. Fill with flushing oil and motor for five minutes. \`fill: oil with flushing-oil\`
2. Fill with engine oil. \`fill: oil with engine-oil\`
`,
    right: `
1. Fill with flushing oil and motor for five minutes. \`fill: oil with flushing-oil\`
2. Drain the flushing oil. \`drain: oil\`
3. Fill with engine oil. \`fill: oil with engine-oil\`
`,
  },
  before: {
    fill(action, {state, report}) {
      const {item, places, tag} = action;
      const now = idsOf(tag, 'with');
      if (now.length === 0) return;
      const over = places.filter((place) => {
        const still = state.named('filled', item.id, place);
        return still.length > 0 && !still.some((id) => now.includes(id));
      });
      const [first] = over;
      if (first === undefined) return;
      const still = state.named('filled', item.id, first);
      const [goes, is] = [now.length > 1 ? 'go' : 'goes', still.length > 1 ? 'are' : 'is'];
      report({
        where: tagWhere(action),
        message: `${item.id}: ${listed(now, 'and')} ${goes} in while ${listed(still, 'and')} ${is} still in it; drain it first (\`drain: ${item.id}\`)`,
        item: item.id,
        story: storyOf(over.map((place) => state.get('filled', item.id, place))),
        related: [specified(item)],
      });
    },
  },
};
