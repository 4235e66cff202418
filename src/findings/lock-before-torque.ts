/** A lock goes on on the wrong side of the final torque. */
import {goesOnFirst} from '../build/locks.js';
import type {Action} from '../build/program.js';
import {idsOf} from '../procedure/values.js';
import {locksOf} from '../spec/locks.js';
import type {Fastener} from '../spec/model.js';
import {tightAsAsked} from './done.js';
import type {Context, FindingKind} from './model.js';
import {about, agreeing, itemAt, listed, specified, storyOf, tagWhere} from './phrase.js';

export const lockBeforeTorque: FindingKind = {
  name: 'lock-before-torque',
  group: 'order',
  severity: 'error',
  summary: 'A lock goes on before the final torque, or too late for its kind',
  why: 'Wire or a pin put on before the last pass has to come off again or locks a slack bolt; threadlocker run in after it holds nothing.',
  source: 'FAA AC 43.13-1B, 7-122: safetying does not hold torque',
  example: {
    engine: `
parts:
  block: {given: true}
  main-caps: {}
fasteners:
  main-cap-bolts: {holds: [main-caps], torque: 85 lbf·ft, threads: dry, lock: safety-wire}
`,
    wrong: `
1. Set the caps in place. \`install: main-caps\`
2. Run the bolts down. \`torque: main-cap-bolts to snug\`
3. Wire the bolts in pairs. \`lock: main-cap-bolts with wire-032\`
4. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
`,
    right: `
1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
3. Wire the bolts in pairs. \`lock: main-cap-bolts with wire-032\`
`,
  },
  before: {
    lock(action, context) {
      if (action.item.kind === 'fastener') judge(action, action.item, context);
    },
  },
};

function judge(action: Action, fastener: Fastener, context: Context): void {
  const named = idsOf(action.tag, 'with');
  const words = named.length > 0 ? named : locksOf(fastener);
  const {spec} = context.book;
  const early = words.filter((word) => goesOnFirst(spec, word));
  // Of several that are asked for, a tag that names none does not say which it means.
  if (named.length === 0 && words.length > 1) return;
  if (early.length > 0) judgeFirst(action, fastener, early, context);
  if (early.length < words.length || words.length === 0) judgeLast(action, fastener, context);
}

/** A fastener that is never torqued at all is left slack, which is another finding. */
function judgeFirst(action: Action, fastener: Fastener, words: readonly string[], context: Context): void {
  if (!hasTorque(fastener)) return;
  const bad = action.places.filter((place) => tightAsAsked(fastener, place, context.state));
  const says = `${agreeing(fastener, 'is', 'are')} already at final torque, and ${listed(words, 'and')} ${words.length === 1 ? 'goes' : 'go'} on before it`;
  tell(action, fastener, {bad, says}, context);
}

function judgeLast(action: Action, fastener: Fastener, context: Context): void {
  const {state, does} = context;
  const bad = action.places.filter(
    (place) => !tightAsAsked(fastener, place, state) && does('torque', fastener.id, place),
  );
  tell(
    action,
    fastener,
    {bad, says: `${agreeing(fastener, 'is', 'are')} locked before the final torque`},
    context,
  );
}

interface Wrong {
  readonly bad: readonly string[];
  readonly says: string;
}

function tell(action: Action, fastener: Fastener, {bad, says}: Wrong, {state, report}: Context): void {
  if (bad.length === 0) return;
  report({
    where: tagWhere(action),
    message: `${itemAt(fastener, bad)} ${says}`,
    ...about(fastener, bad),
    story: storyOf(bad.map((place) => state.get('tight', fastener.id, place))),
    related: [specified(fastener)],
  });
}

function hasTorque({torque}: Fastener): boolean {
  return torque !== undefined && torque.value !== 'none' && torque.value !== 'unknown';
}
