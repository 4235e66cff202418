/** A stamped number that nobody writes down. */
import type {Mark} from '../spec/model.js';
import type {Fix} from '../text/edit.js';
import {reportUndone} from './left-undone.js';
import {stepAfter} from './missing-place.js';
import {stepBehind, titleOf} from './missing-step.js';
import type {Context, FindingKind} from './model.js';

export const leftUnrecorded: FindingKind = {
  name: 'left-unrecorded',
  group: 'left undone',
  severity: 'error',
  summary: 'A mark is never recorded',
  why: 'An engine whose number was not compared with its plate may be another engine, with other parts in it.',
  source: 'common practice, no source',
  example: {
    engine: `
marks:
  engine-number: {stamped: front left of the block, matches: hull-plate-number}
  hull-plate-number: {stamped: plate on the engine bearer}
`,
    wrong: `
1. Write down the number on the block. \`record: engine-number\`
`,
    right: `
1. Write down the number on the block. \`record: engine-number\`
2. Write down the number on the plate. \`record: hull-plate-number\`
`,
  },
  end(context) {
    for (const mark of context.relations.marks) {
      reportUndone(
        mark,
        {
          fact: 'recorded',
          never: '[is|are] never written down',
          again: '[is|are] written down and lost again',
          asked: `${mark.id} is a mark of this engine`,
          fix: () => fixOf(mark, context),
        },
        context,
      );
    }
  },
};

/** Beside the number that must read the same: where else a mark can be read, nothing says. */
function fixOf(mark: Mark, context: Context): Fix | undefined {
  const {relations, state} = context;
  const other = relations.marks.find(
    ({id, matches}) => matches?.value === mark.id || mark.matches?.value === id,
  );
  if (other === undefined) return undefined;
  const needs = () => [state.get('recorded', other.id, '')];
  const step = stepAfter({item: mark, kind: 'recorded', places: ['']}, needs, context);
  const missing = {says: `Write down the ${mark.name}.`, tag: `record: ${mark.id}`};
  return step && stepBehind(step, missing, titleOf('record', mark));
}
