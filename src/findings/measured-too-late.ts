/** A gauging strip is read after it was taken away. */
import {stepName} from '../build/tell.js';
import type {FindingKind} from './model.js';
import {about, inNumber, itemAt, storyOf, tagWhere} from './phrase.js';
import {numbered, STRIP_ENGINE, STRIP_STEPS} from './strip-example.js';

export const measuredTooLate: FindingKind = {
  name: 'measured-too-late',
  group: 'order',
  severity: 'error',
  summary: 'A gauging strip is read after it was taken away',
  why: 'A reading written down from memory is no reading.',
  source: 'common practice, no source',
  example: {
    engine: STRIP_ENGINE,
    wrong: numbered([
      ...STRIP_STEPS.slice(0, 6),
      STRIP_STEPS[7] ?? '',
      STRIP_STEPS[6] ?? '',
      ...STRIP_STEPS.slice(8),
    ]),
    right: numbered(STRIP_STEPS),
  },
  before: {
    measure(action, {state, report}) {
      const {item, places, step} = action;
      if (item.by !== 'strip') return;
      const gone = places.filter(
        (place) =>
          !state.holds('strip', item.id, place) && state.get('strip', item.id, place).undone !== undefined,
      );
      const undone = state.get('strip', item.id, gone[0] ?? '').undone;
      if (gone.length === 0 || undone === undefined) return;
      report({
        where: tagWhere(action),
        message: `${itemAt(item, gone)} ${inNumber(item, '[is read after its strip was|are read after their strip was]')} taken away at ${stepName(undone.step, step)}`,
        ...about(item, gone),
        story: storyOf(gone.map((place) => state.get('strip', item.id, place))),
      });
    },
  },
};
