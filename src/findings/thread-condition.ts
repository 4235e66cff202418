/** A fastener comes to its final torque with its threads other than the torque was specified for. */

import {isFastenerAction, torqueNow} from '../build/effects.js';
import type {Fact} from '../build/facts.js';
import type {FindingKind} from './model.js';
import {about, itemAt, listed, specified, storyOf, tagWhere} from './phrase.js';

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
    torque(action, {state, relations, report}) {
      if (!isFastenerAction(action)) return;
      const {item, places} = action;
      const asked = item.threads?.value;
      if (asked === undefined || asked === 'unknown') return;
      const bad = places.filter((place) => {
        const {final} = torqueNow(action, place, state, relations);
        return final === true && !asSpecified(state.get('threads', item.id, place), asked);
      });
      if (bad.length === 0) return;
      const facts = bad.map((place) => state.get('threads', item.id, place));
      report({
        where: tagWhere(action),
        message: `${itemAt(item, bad)} ${item.count === 1 ? 'comes' : 'come'} to torque with ${condition(facts)}, and the torque is for ${wanted(asked)}`,
        ...about(item, bad),
        story: storyOf(facts),
        related: [specified(item, `${item.id} is specified with ${wanted(asked)}`)],
        lacks: {item: item.id, verbs: ['lube', 'lock']},
      });
    },
  },
};

type Asked = 'dry' | readonly string[];

function asSpecified(fact: Fact, asked: Asked): boolean {
  if (asked === 'dry') return !fact.holds;
  if (!fact.holds) return false;
  const used = fact.detail?.ids;
  return used === undefined || asked.some((id) => used.includes(id));
}

function condition(facts: readonly Fact[]): string {
  const used = facts.find(({holds}) => holds)?.detail?.ids;
  return used === undefined ? 'dry threads' : `${listed(used, 'and')} on the threads`;
}

function wanted(asked: Asked): string {
  return asked === 'dry' ? 'dry threads' : `${listed(asked)} on the threads`;
}
