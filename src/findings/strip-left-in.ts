/** A gauging strip that was never wiped away. */
import {placesOf} from '../spec/items.js';
import {lastPlace} from './last-place.js';
import type {FindingKind} from './model.js';
import {about, inNumber, itemAt, specified, storyOf} from './phrase.js';
import {numbered, STRIP_ENGINE, STRIP_STEPS} from './strip-example.js';

export const stripLeftIn: FindingKind = {
  name: 'strip-left-in',
  group: 'order',
  severity: 'error',
  summary: 'A gauging strip is left in the bearing',
  why: 'What is left of the strip takes up the oil clearance that it was laid to measure.',
  source: 'common practice, no source',
  example: {
    engine: STRIP_ENGINE,
    wrong: numbered(STRIP_STEPS.slice(0, 5)),
    right: numbered(STRIP_STEPS),
  },
  end({state, relations, report}) {
    for (const fit of relations.fits) {
      const left = placesOf(fit).filter((place) => state.holds('strip', fit.id, place));
      if (left.length === 0) continue;
      const where = lastPlace(fit, left, ['strip'], state, relations);
      report({
        where,
        message: `${itemAt(fit, left)} ${inNumber(fit, '[ends the build with its gauging strip still in it|end the build with their gauging strip still in them]')}`,
        ...about(fit, left),
        story: storyOf(left.map((place) => state.get('strip', fit.id, place))),
        related: [specified(fit)],
      });
    }
  },
};
