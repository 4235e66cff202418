/** A fastener that ends the build without its witness mark, the stripe of paint that the specification asks for. */
import type {Fastener} from '../spec/model.js';
import {isTemporary} from '../spec/temporary.js';
import type {Fix} from '../text/edit.js';
import {tightAsAsked} from './done.js';
import {reportUndone} from './left-undone.js';
import {stepAfter} from './missing-place.js';
import {stepBehind, titleOf} from './missing-step.js';
import type {Context, FindingKind} from './model.js';
import {agreeing, itemAt} from './phrase.js';

export const leftUnstriped: FindingKind = {
  name: 'left-unstriped',
  group: 'left undone',
  severity: 'error',
  summary: 'A fastener ends the build without its stripe of paint',
  why: 'Without the stripe nobody can see later that a bolt was done, or that it has moved; one from before the last torque says what is no longer true.',
  source: 'common practice, no source',
  example: {
    engine: `
parts:
  block: {given: true}
  main-caps: {}
fasteners:
  main-cap-bolts: {holds: [main-caps], torque: 85 lbf·ft, threads: dry, lock: {value: none, because: stretch holds them}, stripe: true}
`,
    wrong: `
1. Set the caps in place. \`install: main-caps\`
2. Run the bolts down. \`torque: main-cap-bolts to snug\`
3. Draw a stripe across each head. \`stripe: main-cap-bolts\`
4. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
`,
    right: `
1. Set the caps in place. \`install: main-caps\`
2. Run the bolts down. \`torque: main-cap-bolts to snug\`
3. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
4. Draw a stripe across each head. \`stripe: main-cap-bolts\`
`,
  },
  end(context) {
    for (const fastener of context.relations.fasteners) {
      if (!fastener.stripe || isTemporary(fastener, context.spec)) continue;
      const end = agreeing(fastener, 'ends', 'end');
      const bare = agreeing(fastener, 'is', 'are');
      reportUndone(
        fastener,
        {
          fact: 'striped',
          also: ['tight', 'locked'],
          never: `${bare} never striped with paint, which the specification asks for`,
          again: `${end} the build without the stripe of paint`,
          asked: `${fastener.id} is specified with stripe: true`,
          fix: (places) => fixOf(fastener, places, context),
        },
        context,
      );
    }
  },
};

/** Written behind the torque, or behind the lock that goes on after it, where all places were done in that step. */
function fixOf(fastener: Fastener, open: readonly string[], context: Context): Fix | undefined {
  const {id, name} = fastener;
  const {state} = context;
  const needs = (place: string) => {
    const [tight, locked] = [state.get('tight', id, place), state.get('locked', id, place)];
    return [{...tight, holds: tightAsAsked(fastener, place, state)}, ...(locked.holds ? [locked] : [])];
  };
  const step = stepAfter({item: fastener, kind: 'striped', places: open}, needs, context);
  const says = `Draw a stripe of paint across the ${name}.`;
  return (
    step && stepBehind(step, {says, tag: `stripe: ${itemAt(fastener, open)}`}, titleOf('stripe', fastener))
  );
}
