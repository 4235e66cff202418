/** A gauging strip is laid on a surface that is not clean, or not dry. */

import {meetingPlaces} from '../build/relations.js';
import type {FindingKind} from './model.js';
import {about, inNumber, itemAt, specified, storyOf, tagWhere} from './phrase.js';
import {numbered, STRIP_ENGINE, STRIP_STEPS, withExtra} from './strip-example.js';
import {surfaceClean, surfaceLubed} from './surface-state.js';

export const stripNotDry: FindingKind = {
  name: 'strip-not-dry',
  group: 'order',
  severity: 'error',
  summary: 'A gauging strip is laid on a surface that is not clean and dry',
  why: 'Oil dissolves the strip and lifts the shaft by its film: the reading says tight where the bearing is loose.',
  source: 'common practice, no source',
  example: {
    engine: STRIP_ENGINE,
    wrong: withExtra(1, 'Oil the journals. `lube: journals with assembly-lube`'),
    right: numbered(STRIP_STEPS),
  },
  before: {
    lay(action, {book, state, relations, report}) {
      const {item, places} = action;
      if (item.kind !== 'fit') return;
      for (const {value} of item.between) {
        const surface = book.spec.items.get(value);
        if (surface?.kind !== 'surface') continue;
        const bad = meetingPlaces(item, places, surface).filter(
          (place) => surfaceLubed(state, surface, place) || !surfaceClean(state, relations, surface, place),
        );
        if (bad.length === 0) continue;
        const wet = bad.some((place) => surfaceLubed(state, surface, place));
        report({
          where: tagWhere(action),
          message: `${item.id}: the strip is laid while ${itemAt(surface, bad)} ${inNumber(surface, wet ? '[carries|carry] lubricant' : '[is|are] not clean')}`,
          ...about(item, places),
          story: storyOf(
            bad.flatMap((place) => [
              state.get('clean', surface.id, place),
              state.get('lubed', surface.id, place),
            ]),
          ),
          related: [specified(surface)],
          lacks: {item: surface.id, verbs: ['clean']},
        });
      }
    },
  },
};
