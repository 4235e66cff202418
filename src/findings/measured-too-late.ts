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
      ...STRIP_STEPS.slice(7, 8),
      ...STRIP_STEPS.slice(6, 7),
      ...STRIP_STEPS.slice(8),
    ]),
    right: numbered(STRIP_STEPS),
  },
  before: {
    measure(action, {state, report}) {
      const {item, step} = action;
      const gone = action.places.flatMap((place) => {
        const fact = state.get('strip', item.id, place);
        return fact.undone === undefined ? [] : [{place, fact, undone: fact.undone}];
      });
      const [first] = gone;
      if (first === undefined) return;
      const places = gone.map(({place}) => place);
      report({
        where: tagWhere(action),
        message: `${itemAt(item, places)} ${inNumber(item, '[is read after its strip was|are read after their strip was]')} taken away at ${stepName(first.undone.step, step)}`,
        ...about(item, places),
        story: storyOf(gone.map(({fact}) => fact)),
      });
    },
  },
};
