/** A fastener that ends the build without the lock that the specification asks for. */
import {goesOnFirst, lockKindOf} from '../build/locks.js';
import {placesOf} from '../spec/items.js';
import {locksOf, lockText} from '../spec/locks.js';
import type {Fastener, Specification} from '../spec/model.js';
import {isTemporary} from '../spec/temporary.js';
import type {Fix} from '../text/edit.js';
import {lockedAsAsked} from './done.js';
import {reportOpen} from './left-undone.js';
import {stepBehind, titleOf} from './missing-step.js';
import type {Context, FindingKind} from './model.js';
import {agreeing, itemAt, listed} from './phrase.js';

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
      if (isTemporary(fastener, context.spec)) continue;
      const {id, lock} = fastener;
      const open = placesOf(fastener).filter((place) => !lockedAsAsked(fastener, place, context.state));
      // Where one of two locks is on, the other is told by its name.
      const byLack = new Map<string, string[]>();
      for (const place of open) {
        const lack = lacking(fastener, place, context);
        byLack.set(lack, [...(byLack.get(lack) ?? []), place]);
      }
      const asked = listed(locksOf(fastener), 'and');
      const end = agreeing(fastener, 'ends', 'end');
      const bare = agreeing(fastener, 'is', 'are');
      for (const [lack, places] of byLack) {
        reportOpen(
          fastener,
          places,
          {
            fact: 'locked',
            also: ['tight'],
            never:
              lack === ''
                ? `${bare} never locked; the specification asks for ${asked}`
                : `${end} the build without ${lack}; the specification asks for ${asked}`,
            again: `${end} the build unlocked`,
            asked: `${id} is specified with lock: ${lockText(lock?.value)}`,
            fix: (some) => fixOf(fastener, some, context),
          },
          context,
        );
      }
    }
  },
};

/** The locks that are not on though others are, in words; empty where none is. */
function lacking({id}: Fastener, place: string, {state}: Context): string {
  const {holds, detail} = state.get('locked', id, place);
  return holds ? listed(detail?.lacks ?? [], 'and') : '';
}

/** What goes on after the tightening is written behind it, where all its places were tightened in one step. */
function fixOf(fastener: Fastener, open: readonly string[], {state, book}: Context): Fix | undefined {
  const {id, name} = fastener;
  const [first] = open.map((place) => state.get('locked', id, place));
  const lacks = first?.holds ? (first.detail?.lacks ?? []) : locksOf(fastener);
  const tight = open.map((place) => state.get('tight', id, place));
  const step = tight[0]?.by?.step;
  if (step === undefined || lacks.length === 0 || fastener.lockAfter.length > 0) return undefined;
  if (!lacks.every((lock) => goesOnAfter(lock, book.spec))) return undefined;
  if (!tight.every((fact) => fact.holds && fact.detail?.final === true && fact.by?.step === step))
    return undefined;
  const tag = `lock: ${itemAt(fastener, open)} with ${lacks.join(', ')}`;
  return stepBehind(step, {says: `Lock the ${name}.`, tag}, titleOf('lock', fastener));
}

function goesOnAfter(lock: string, spec: Specification): boolean {
  return lockKindOf(spec, lock) !== undefined && !goesOnFirst(spec, lock);
}
