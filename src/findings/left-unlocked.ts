/** A fastener that ends the build without the lock that the specification asks for. */
import {placesOf} from '../spec/items.js';
import {isLockKind, LOCK_KINDS} from '../spec/locks.js';
import type {Fastener} from '../spec/model.js';
import type {Fix} from '../text/edit.js';
import {lockedAsAsked} from './done.js';
import {reportOpen} from './left-undone.js';
import {stepBehind, titleOf} from './missing-step.js';
import type {Context, FindingKind} from './model.js';
import {itemAt} from './phrase.js';

export const leftUnlocked: FindingKind = {
  name: 'left-unlocked',
  group: 'left undone',
  severity: 'error',
  summary: 'A fastener ends the build without its lock',
  why: 'Vibration undoes what only friction holds. A bolt loose in the sump takes the oil pump or the crankshaft with it.',
  source: 'FAA AC 43.13-1B, 7-122: methods of safetying',
  example: {
    engine: `
parts:
  block: {given: true}
  oil-pump: {}
fasteners:
  oil-pump-bolts: {holds: [oil-pump], torque: 18 lbf·ft, threads: dry, lock: safety-wire}
`,
    wrong: `
1. Offer the pump up. \`install: oil-pump\`
2. Bring the bolts up. \`torque: oil-pump-bolts to 18 lbf·ft\`
`,
    right: `
1. Offer the pump up. \`install: oil-pump\`
2. Bring the bolts up. \`torque: oil-pump-bolts to 18 lbf·ft\`
3. Wire the bolts together. \`lock: oil-pump-bolts with wire-032\`
`,
  },
  end(context) {
    for (const fastener of context.relations.fasteners) {
      const open = placesOf(fastener).filter((place) => !lockedAsAsked(fastener, place, context.state));
      const [end, bare] = fastener.count === 1 ? ['ends', 'is'] : ['end', 'are'];
      reportOpen(
        fastener,
        open,
        {
          fact: 'locked',
          also: ['tight'],
          never: `${bare} never locked; the specification asks for ${fastener.lock?.value}`,
          again: `${end} the build unlocked`,
          asked: `${fastener.id} is specified with lock: ${fastener.lock?.value}`,
          fix: (places) => fixOf(fastener, places, context),
        },
        context,
      );
    }
  },
};

/** A lock that goes on after the tightening is written behind it, where all its places were tightened in one step. */
function fixOf(fastener: Fastener, open: readonly string[], context: Context): Fix | undefined {
  const {id, name, lock} = fastener;
  const tight = open.map((place) => context.state.get('tight', id, place));
  const [first] = tight;
  const step = first?.by?.step;
  const asked = lock?.value;
  if (step === undefined || asked === undefined || !goesOnAfter(asked, context)) return undefined;
  if (!tight.every((fact) => fact.holds && fact.detail?.final === true && fact.by?.step === step))
    return undefined;
  const tag = `lock: ${itemAt(fastener, open)} with ${asked}`;
  return stepBehind(step, {says: `Lock the ${name}.`, tag}, titleOf('lock', fastener));
}

function goesOnAfter(lock: string, {book: {spec}}: Context): boolean {
  const item = spec.items.get(lock);
  const kind = item?.kind === 'consumable' ? item.lock : lock;
  return kind !== undefined && isLockKind(kind) && LOCK_KINDS[kind].goesOn === 'after';
}
