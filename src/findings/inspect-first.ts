/** A part that has run before goes in without having been looked at. */
import type {FindingKind} from './model.js';
import {about, inNumber, itemAt, specified, tagWhere} from './phrase.js';

export const inspectFirst: FindingKind = {
  name: 'inspect-first',
  group: 'order',
  severity: 'error',
  summary: 'A reused part goes in without having been inspected',
  why: 'A crack or a worn lobe is free to find on the bench and costs the engine on the water.',
  source: 'common practice, no source',
  example: {
    engine: `
parts:
  block: {given: true}
  camshaft: {reused: true}
`,
    wrong: `
1. Slide the camshaft in. \`install: camshaft\`
`,
    right: `
1. Look at every lobe and journal in good light. \`inspect: camshaft for pitting, scores\`
2. Slide the camshaft in. \`install: camshaft\`
`,
  },
  before: {
    install(action, {state, reportIfItLasts}) {
      const {item, places} = action;
      if (!item.reused) return;
      const bad = places.filter(
        (place) => !state.holds('inspected', item.id, place) && !state.holds('fresh', item.id, place),
      );
      if (bad.length === 0) return;
      reportIfItLasts(
        {
          where: tagWhere(action),
          message: `${itemAt(item, bad)} ${inNumber(item, '[is a reused part and goes in|are reused parts and go in]')} without inspection`,
          ...about(item, bad),
          related: [specified(item)],
          lacks: {item: item.id, verbs: ['inspect', 'renew']},
        },
        bad,
      );
    },
  },
};
