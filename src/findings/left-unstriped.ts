/** A fastener that ends the build without its witness mark, the stripe of paint that the specification asks for. */
import {placesOf} from '../spec/items.js';
import type {Fastener} from '../spec/model.js';
import {isTemporary} from '../spec/temporary.js';
import type {Fix} from '../text/edit.js';
import {reportOpen} from './left-undone.js';
import {stepBehind, titleOf} from './missing-step.js';
import type {Context, FindingKind} from './model.js';
import {inBuildOrder, itemAt} from './phrase.js';

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
      const open = placesOf(fastener).filter((place) => !context.state.holds('striped', fastener.id, place));
      const [end, bare] = fastener.count === 1 ? ['ends', 'is'] : ['end', 'are'];
      reportOpen(
        fastener,
        open,
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
function fixOf(fastener: Fastener, open: readonly string[], {state}: Context): Fix | undefined {
  const {id, name} = fastener;
  const steps = open.map((place) => {
    const [tight, locked] = [state.get('tight', id, place), state.get('locked', id, place)];
    if (!tight.holds || tight.detail?.final !== true || tight.by === undefined) return undefined;
    const lock = locked.holds ? locked.by : undefined;
    return lock !== undefined && inBuildOrder(tight.by, lock) < 0 ? lock.step : tight.by.step;
  });
  const [step] = steps;
  if (step === undefined || !steps.every((one) => one === step)) return undefined;
  const says = `Draw a stripe of paint across the ${name}.`;
  return stepBehind(step, {says, tag: `stripe: ${itemAt(fastener, open)}`}, titleOf('stripe', fastener));
}
