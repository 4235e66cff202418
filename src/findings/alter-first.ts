/** A part that must be altered before it fits this engine goes in as it came. */
import type {FindingKind} from './model.js';
import {about, inNumber, itemAt, listed, specified, storyOf, tagWhere} from './phrase.js';

export const alterFirst: FindingKind = {
  name: 'alter-first',
  group: 'order',
  severity: 'error',
  summary: 'A part goes in without the alteration that it needs',
  why: 'A shell from a related engine fits but for one lip. Put in as it came it stands off its saddle, and the bearing fails.',
  source: 'common practice, no source',
  example: {
    engine: `
parts:
  block: {given: true}
  main-shells: {alterations: [grind-off-lip]}
alterations:
  grind-off-lip: {of: [main-shells], does: grind the locating lip flush}
`,
    wrong: `
1. Press the shells into their saddles. \`install: main-shells\`
`,
    right: `
1. Grind the lip off each shell. \`alter: main-shells by grind-off-lip\`
2. Press the shells into their saddles. \`install: main-shells\`
`,
  },
  before: {
    install(action, {state, reportIfItLasts, book}) {
      const {item, places} = action;
      for (const {value, where} of item.alterations) {
        const bad = places.filter((place) => {
          const fact = state.get('altered', item.id, place);
          return !fact.holds || fact.detail?.ids?.includes(value) !== true;
        });
        if (bad.length === 0) continue;
        const alteration = book.spec.items.get(value);
        reportIfItLasts(
          {
            where: tagWhere(action),
            message: `${itemAt(item, bad)} ${inNumber(item, '[goes|go] in')} without ${listed([value])}`,
            ...about(item, bad),
            story: storyOf(bad.map((place) => state.get('altered', item.id, place))),
            related: [
              {where, says: `${item.id} needs ${value}`},
              ...(alteration === undefined ? [] : [specified(alteration)]),
            ],
            lacks: {item: item.id, verbs: ['alter']},
          },
          bad,
        );
      }
    },
  },
};
