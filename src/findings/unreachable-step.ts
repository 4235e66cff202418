/** A step that no way leads to. */
import {flowOf} from '../build/flow.js';
import {whereIn} from '../build/program.js';
import {LOOP_ENGINE, LOOP_RIGHT} from './loop-example.js';
import type {FindingKind} from './model.js';
import {inNumber, specified} from './phrase.js';
import {sidesOf} from './sides.js';

export const unreachableStep: FindingKind = {
  name: 'unreachable-step',
  group: 'order',
  severity: 'error',
  summary:
    'No way leads to a step: it stands after a repeat that is always taken, or hangs on a limit that there is not',
  why: 'Work written where nobody comes past is work left undone.',
  source: 'common practice, no source',
  example: {
    engine: LOOP_ENGINE,
    wrong: `${LOOP_RIGHT}   3. Wipe the crankshaft down before it goes back. \`clean: crankshaft\`\n`,
    right: LOOP_RIGHT,
  },
  branch({when, step}, {report}) {
    const {item, is, tag} = when;
    if (item.kind !== 'fit' && item.kind !== 'check') return;
    if (is === 'out' || is === 'in' || sidesOf(item).includes(is)) return;
    report({
      where: whereIn(step, tag.span),
      message: `${item.id} ${inNumber(item, '[has|have]')} no ${is === 'over' ? 'upper' : 'lower'} limit that ${inNumber(item, '[it|they]')} could be ${is}`,
      item: item.id,
      step,
      related: [specified(item)],
    });
  },
  book({program, report}) {
    for (const nodes of flowOf(program).unreachable) {
      const [{step}, ...more] = nodes;
      const last = more.at(-1)?.step;
      const which =
        last === undefined
          ? `step ${step.step.number} is`
          : `steps ${step.step.number} to ${last.step.number} are`;
      report({
        where: whereIn(step, step.step.headSpan),
        message: `${which} never reached: the repeat above is always taken`,
        step,
      });
    }
  },
};
