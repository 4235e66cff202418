/** A shaft is turned with a gauging strip under it. */
import {meetingPlaces} from '../build/relations.js';
import type {FindingKind} from './model.js';
import {about, inNumber, itemAt, storyOf, tagWhere} from './phrase.js';
import {numbered, STRIP_ENGINE, STRIP_STEPS, withExtra} from './strip-example.js';

export const stripTurned: FindingKind = {
  name: 'strip-turned',
  group: 'order',
  severity: 'error',
  summary: 'A shaft is turned with a gauging strip under it',
  why: 'Turning smears the strip, and a smeared strip reads tighter than the bearing is.',
  source: 'TM 10-3930-659-34, section 2-24: do not turn the shaft',
  example: {
    engine: STRIP_ENGINE,
    wrong: withExtra(4, 'Turn the crankshaft once round. `turn: crankshaft`'),
    right: numbered(STRIP_STEPS),
  },
  before: {
    turn(action, {state, relations, report}) {
      const {item, places} = action;
      for (const fit of relations.fitsOf.get(item.id) ?? []) {
        const under = meetingPlaces(item, places, fit).filter((place) => state.holds('strip', fit.id, place));
        if (under.length === 0) continue;
        report({
          where: tagWhere(action),
          message: `${itemAt(fit, under)} ${inNumber(fit, '[has a gauging strip in it|have a gauging strip in them]')} when ${item.id} ${inNumber(item, '[is|are]')} turned`,
          ...about(fit, under),
          story: storyOf(under.map((place) => state.get('strip', fit.id, place))),
        });
      }
    },
  },
};
