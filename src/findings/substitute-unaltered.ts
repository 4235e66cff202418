/** A part of another engine goes in without the alteration that it needs before it fits this one. */
import type {FindingKind} from './model.js';
import {about, inNumber, itemAt, storyOf, tagWhere} from './phrase.js';

export const substituteUnaltered: FindingKind = {
  name: 'substitute-unaltered',
  group: 'job',
  severity: 'error',
  summary: 'A job fits a part of another engine without the alteration that it needs',
  why: 'A bearing set of a related engine may differ by one locating lip. It goes in, stands off its saddle, and fails. An alteration that no step makes is put into the sheets of the job as a step of its own; one that the procedures make is left to them, and must then be made in every place, in time, and again on a part that is renewed.',
  source: 'common practice, no source',
  example: {
    engine: `
parts:
  block: {given: true}
  main-shells: {at: [upper, lower], substitutes: {twin-shells: {name: main shells of the twin, alterations: [grind-off-lip]}}}
alterations:
  grind-off-lip: {of: [main-shells], does: grind the locating lip flush}
`,
    wrong: `
1. Grind the lip off the lower shell. \`alter: main-shells[lower] by grind-off-lip\`
2. Press the shells into their saddles. \`install: main-shells\`
`,
    right: `
1. Press the shells into their saddles. \`install: main-shells\`
`,
    job: `
substitutes: {main-shells: twin-shells}
`,
  },
  before: {
    install(action, {book: {job}, state, reportIfItLasts}) {
      const {item, places} = action;
      const fitted = job?.substitutes.get(item.id);
      if (item.kind !== 'part' || fitted === undefined) return;
      const substitute = item.substitutes.get(fitted.value);
      for (const {value, where} of substitute?.alterations ?? []) {
        const bad = places.filter((place) => {
          const fact = state.get('altered', item.id, place);
          return !fact.holds || fact.detail?.ids?.includes(value) !== true;
        });
        if (bad.length === 0) continue;
        reportIfItLasts(
          {
            where: tagWhere(action),
            message: `${itemAt(item, bad)} ${inNumber(item, '[is|are]')} ${fitted.value} on this job, and ${inNumber(item, '[goes|go]')} in without ${value}`,
            ...about(item, bad),
            story: storyOf(bad.map((place) => state.get('altered', item.id, place))),
            related: [
              {where: fitted.where, says: `the job fits ${fitted.value}`},
              {where, says: `${fitted.value} needs ${value}`},
            ],
          },
          bad,
        );
      }
    },
  },
};
