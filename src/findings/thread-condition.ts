/** A fastener is torqued with its threads other than the torque was specified for. */

import type {Detail, Fact} from '../build/facts.js';
import {lockKindOf} from '../build/locks.js';
import type {Action} from '../build/program.js';
import {isFastenerAction, torqueNow} from '../build/reached.js';
import {amountsAgree} from '../quantity/convert.js';
import type {Fastener} from '../spec/model.js';
import type {Context, FindingKind} from './model.js';
import {about, agreeing, inBuildOrder, itemAt, listed, specified, storyOf, tagWhere} from './phrase.js';

export const threadCondition: FindingKind = {
  name: 'thread-condition',
  group: 'order',
  severity: 'error',
  summary: 'Threads are dry, oiled or coated otherwise than the torque was specified for',
  why: 'The same torque pulls a third more on oiled threads than on dry ones. The figure is only worth what the threads are.',
  source: 'published friction factors: Shigley, Mechanical Engineering Design, 9th ed., Table 8-15',
  example: {
    engine: `
parts:
  block: {given: true}
  main-caps: {}
fasteners:
  main-cap-bolts: {holds: [main-caps], torque: 85 lbf·ft, threads: [engine-oil], lock: {value: none, because: stretch holds them}}
`,
    wrong: `
1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
`,
    right: `
1. Set the caps in place. \`install: main-caps\`
2. Oil the threads and under the heads. \`lube: main-cap-bolts with engine-oil\`
3. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
`,
  },
  before: {
    torque(action, context) {
      const {state, report} = context;
      if (!isFastenerAction(action)) return;
      const {item, places} = action;
      const asked = item.threads?.value;
      if (asked === undefined || asked === 'unknown') return;
      const bad = places.filter(
        (place) =>
          turnsThreads(action, place, context) && !asSpecified(state.get('threads', item.id, place), asked),
      );
      if (bad.length === 0) return;
      const facts = bad.map((place) => state.get('threads', item.id, place));
      report({
        where: tagWhere(action),
        message: `${itemAt(item, bad)} ${agreeing(item, 'comes', 'come')} to torque with ${condition(facts)}, and the torque is for ${wanted(asked)}`,
        ...about(item, bad),
        story: storyOf(facts),
        related: [specified(item, `${item.id} is specified with ${wanted(asked)}`)],
        // A threadlocker comes on with `lock`.
        lacks: {item: item.id, verbs: isLocker(asked, context) ? ['lube', 'lock'] : ['lube']},
      });
    },
  },
};

/**
 * The end of the torque, and where an angle ends it the torque before that: oil that comes after it comes too late.
 * What was judged there is not judged again at the angle, unless something else has come on the threads since.
 */
function turnsThreads(action: Action<Fastener>, place: string, {state, relations}: Context): boolean {
  const {item} = action;
  const now = torqueNow(action, place, state, relations);
  const before = state.get('tight', item.id, place);
  if (before.holds && isJoining(item, before.detail ?? {})) {
    const since = state.get('threads', item.id, place).by;
    return since !== undefined && before.by !== undefined && inBuildOrder(before.by, since) < 0;
  }
  return now.final === true || isJoining(item, now);
}

/** At the torque from which an angle is turned, so that it does not end there. */
function isJoining({torque: asked}: Fastener, {final, torque}: Detail): boolean {
  if (final === true || torque === undefined || typeof asked?.value !== 'object') return false;
  return amountsAgree(torque, asked.value);
}

function isLocker(asked: Asked, {book}: Context): boolean {
  return asked !== 'dry' && asked.some((id) => lockKindOf(book.spec, id) !== undefined);
}

type Asked = 'dry' | readonly string[];

function asSpecified(fact: Fact, asked: Asked): boolean {
  if (asked === 'dry') return !fact.holds;
  if (!fact.holds) return false;
  const used = fact.detail?.ids;
  return used === undefined || asked.some((id) => used.includes(id));
}

function condition(facts: readonly Fact[]): string {
  const coated = facts.find(({holds}) => holds);
  if (coated === undefined) return 'dry threads';
  const used = coated.detail?.ids;
  return used === undefined ? 'lubricant on the threads' : `${listed(used, 'and')} on the threads`;
}

function wanted(asked: Asked): string {
  return asked === 'dry' ? 'dry threads' : `${listed(asked)} on the threads`;
}
