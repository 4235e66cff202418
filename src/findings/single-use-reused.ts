/** A part or fastener that serves once goes in, or comes to its final torque, a second time. */

import type {Action} from '../build/program.js';
import {torqueNow} from '../build/reached.js';
import type {Context, FindingKind} from './model.js';
import {about, agreeing, itemAt, specified, storyOf, tagWhere} from './phrase.js';

export const singleUseReused: FindingKind = {
  name: 'single-use-reused',
  group: 'order',
  severity: 'error',
  summary: 'A single-use part or fastener is used without being renewed',
  why: 'A crushed gasket, a stretched bolt or a flattened plug looks sound and has nothing left to give.',
  source: 'common practice, no source',
  example: {
    engine: `
parts:
  block: {given: true}
  core-plugs: {single-use: true}
`,
    wrong: `
1. Drive in the plugs. \`install: core-plugs\`
`,
    right: `
1. Take new plugs from the packet. \`renew: core-plugs\`
2. Drive in the plugs. \`install: core-plugs\`
`,
  },
  before: {
    install(action, context) {
      if (action.item.singleUse) judge(action, action.places, context);
    },
    torque(action, context) {
      if (!action.item.singleUse) return;
      const final = action.places.filter(
        (place) => torqueNow(action, place, context.state, context.relations).final === true,
      );
      judge(action, final, context);
    },
  },
};

function judge(action: Action, places: readonly string[], {state, reportIfItLasts}: Context): void {
  const {item, verb} = action;
  const used = places.filter((place) => !state.holds('fresh', item.id, place));
  if (used.length === 0) return;
  const facts = used.map((place) => state.get('fresh', item.id, place));
  const again = facts.some(({undone}) => undone !== undefined);
  const serve = agreeing(item, 'serves', 'serve');
  const how =
    verb === 'install'
      ? agreeing(item, 'goes in', 'go in')
      : agreeing(item, 'comes to its final torque', 'come to their final torque');
  reportIfItLasts(
    {
      where: tagWhere(action),
      message: `${itemAt(item, used)} ${serve} once, and ${how} ${again ? 'a second time' : 'without being renewed'}`,
      ...about(item, used),
      story: storyOf(facts),
      related: [specified(item)],
      lacks: {item: item.id, verbs: ['renew']},
    },
    used,
  );
}
