/** A branch hangs on a reading that nobody has taken yet. */

import {whereIn} from '../build/program.js';
import {isDone} from './done.js';
import {LOOP_ENGINE, LOOP_RIGHT} from './loop-example.js';
import type {FindingKind} from './model.js';
import {about, inNumber, itemAt, specified} from './phrase.js';

export const unmeasuredBranch: FindingKind = {
  name: 'unmeasured-branch',
  group: 'order',
  severity: 'error',
  summary: 'A branch hangs on a fit or check that has not been read yet',
  why: 'An apprentice who is asked whether a reading is out, and has none, guesses.',
  source: 'common practice, no source',
  example: {
    engine: LOOP_ENGINE,
    wrong: LOOP_RIGHT.replace('2. Read the end play. `measure: end-play using feeler-gauges`\n', ''),
    right: LOOP_RIGHT,
  },
  branch({when, step}, {state, report}) {
    const {item, places, tag} = when;
    const open = places.filter((place) => !isDone(item, place, state));
    if (open.length === 0) return;
    report({
      where: whereIn(step, tag.span),
      message: `${itemAt(item, open)} ${inNumber(item, '[is|are]')} not read before the branch that hangs on it`,
      ...about(item, open),
      step,
      related: [specified(item)],
      lacks: {item: item.id, verbs: ['measure', 'check']},
    });
  },
};
