/** A system is filled while what closes it is out or slack, or a joint of it is not made up. */
import type {FactKind} from '../build/facts.js';
import type {Action} from '../build/program.js';
import {meetingPlaces, relatedTo} from '../build/relations.js';
import {placesOf} from '../spec/items.js';
import type {Fastener, Item, Located, Part, System} from '../spec/model.js';
import {isDone, tightAsAsked, verbFor} from './done.js';
import type {Context, FindingKind} from './model.js';
import {about, agreeing, inBuildOrder, itemAt, specified, storyOf, tagWhere} from './phrase.js';

export const leftFilledOpen: FindingKind = {
  name: 'left-filled-open',
  group: 'left undone',
  severity: 'error',
  summary: 'A system is filled while what closes it is out or slack, or a joint of it open',
  why: 'Coolant poured into a block with a plug out, or not yet drawn down, is on the floor, or in the sump.',
  source: 'common practice, no source',
  example: {
    engine: `
parts:
  block: {given: true}
  drain-tap: {}
systems:
  cooling: {joints: [], closed-by: [drain-tap], with: [coolant]}
`,
    wrong: `
1. Fill until coolant stands at the neck. \`fill: cooling with coolant\`
2. Screw in the drain tap. \`install: drain-tap\`
`,
    right: `
1. Screw in the drain tap. \`install: drain-tap\`
2. Fill until coolant stands at the neck. \`fill: cooling with coolant\`
`,
  },
  before: {
    fill(action, context) {
      for (const {value} of closersOf(action.item)) {
        const closer = context.book.spec.items.get(value);
        if (closer?.kind === 'fastener') slack(action, closer, placesOf(closer), context);
        else if (closer !== undefined) judge(action, closer, context);
      }
    },
  },
};

function closersOf({closedBy, joints}: System): readonly Located<string>[] {
  return [...closedBy, ...joints];
}

/** What is never put in, made up or tightened at all is left out, unsealed or slack, which is said there. */
function judge(action: Action<System>, closer: Item, context: Context): void {
  const {state, does} = context;
  const open = placesOf(closer).filter(
    (place) => !isDone(closer, place, state) && does(verbFor(closer), closer.id, place),
  );
  const [fact, word] =
    closer.kind === 'joint' ? (['sealed', 'open'] as const) : (['installed', 'out'] as const);
  report(action, closer, {open, fact, says: ` ${agreeing(closer, 'is', 'are')} ${word}`}, context);
  if (closer.kind === 'part') slackHolders(action, closer, context);
}

/** A cover that is on with its screws slack is no cover. */
function slackHolders(action: Action<System>, part: Part, context: Context): void {
  const on = placesOf(part).filter((place) => isDone(part, place, context.state));
  for (const fastener of relatedTo(context.relations.holders, part)) {
    // One that closes the system itself is told as such.
    if (closersOf(action.item).some(({value}) => value === fastener.id)) continue;
    slack(action, fastener, on.length === 0 ? [] : meetingPlaces(part, on, fastener), context, part);
  }
}

function slack(
  action: Action<System>,
  fastener: Fastener,
  places: readonly string[],
  context: Context,
  holding?: Part,
): void {
  const open = places.filter(
    (place) =>
      !tightAsAsked(fastener, place, context.state) && isTightenedLater(action, fastener, place, context),
  );
  const held = holding === undefined ? '' : `, which ${agreeing(fastener, 'holds', 'hold')} ${holding.id},`;
  const says = `${held} ${agreeing(fastener, 'is', 'are')} slack`;
  report(action, fastener, {open, fact: 'tight', says}, context);
}

/** What stays slack to the end is told there. */
function isTightenedLater(action: Action, {id}: Fastener, place: string, {program}: Context): boolean {
  return program.parts.some(({actions}) =>
    actions.some(
      (one) =>
        one.verb === 'torque' &&
        one.item.id === id &&
        one.places.includes(place) &&
        inBuildOrder(action, one) < 0,
    ),
  );
}

interface Open {
  readonly open: readonly string[];
  readonly fact: FactKind;
  /** How it is, behind its name. */
  readonly says: string;
}

function report(action: Action<System>, closer: Item, {open, fact, says}: Open, context: Context): void {
  if (open.length === 0) return;
  context.report({
    where: tagWhere(action),
    message: `${action.item.id} is filled while ${itemAt(closer, open)}${says}`,
    ...about(action.item, []),
    story: storyOf(open.map((place) => context.state.get(fact, closer.id, place))),
    related: [specified(closer)],
  });
}
