/** A system is filled while a part that closes it is out, or a joint of it is not made up. */
import type {Action} from '../build/program.js';
import {placesOf} from '../spec/items.js';
import {isDone, verbFor} from './done.js';
import type {Context, FindingKind} from './model.js';
import {about, inNumber, itemAt, specified, storyOf, tagWhere} from './phrase.js';

export const leftFilledOpen: FindingKind = {
  name: 'left-filled-open',
  group: 'left undone',
  severity: 'error',
  summary: 'A system is filled while a part that closes it is out or a joint of it open',
  why: 'Coolant poured into a block with a plug out is on the floor, or in the sump.',
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
      if (action.item.kind !== 'system') return;
      for (const {value} of [...action.item.closedBy, ...action.item.joints]) judge(action, value, context);
    },
  },
};

/** What is never put in at all is left out or unsealed, which is said there. */
function judge(action: Action, id: string, {book, state, does, report}: Context): void {
  const closer = book.spec.items.get(id);
  if (closer === undefined) return;
  const open = placesOf(closer).filter(
    (place) => !isDone(closer, place, state) && does(verbFor(closer), closer.id, place),
  );
  if (open.length === 0) return;
  const fact = closer.kind === 'joint' ? 'sealed' : 'installed';
  report({
    where: tagWhere(action),
    message: `${action.item.id} is filled while ${itemAt(closer, open)} ${inNumber(closer, '[is|are]')} ${closer.kind === 'joint' ? 'open' : 'out'}`,
    ...about(action.item, []),
    story: storyOf(open.map((place) => state.get(fact, closer.id, place))),
    related: [specified(closer)],
  });
}
