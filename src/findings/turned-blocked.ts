/** A shaft is turned while a part that blocks it is in. */
import {meetingPlaces} from '../build/relations.js';
import type {FindingKind} from './model.js';
import {about, agreeing, itemAt, storyOf, tagWhere} from './phrase.js';

export const turnedBlocked: FindingKind = {
  name: 'turned-blocked',
  group: 'order',
  severity: 'error',
  summary: 'A shaft is turned while a part that blocks it is in',
  why: 'A locking pin that the shaft is turned against shears in its hole, or bends the hole.',
  source: 'common practice, no source',
  example: {
    engine: `
parts:
  block: {given: true}
  crankshaft: {}
  crank-pin: {temporary: true, blocks: [crankshaft]}
`,
    wrong: `
1. Lower the crankshaft in. \`install: crankshaft\`
2. Push the locking pin into the flange. \`install: crank-pin\`
3. Turn the crankshaft once round. \`turn: crankshaft\`
4. Draw the pin. \`remove: crank-pin\`
`,
    right: `
1. Lower the crankshaft in. \`install: crankshaft\`
2. Push the locking pin into the flange. \`install: crank-pin\`
3. Draw the pin. \`remove: crank-pin\`
4. Turn the crankshaft once round. \`turn: crankshaft\`
`,
  },
  before: {
    turn(action, {state, relations, report}) {
      const {item, places} = action;
      for (const part of relations.parts) {
        const named = part.blocks.find(({value}) => value === item.id);
        if (named === undefined) continue;
        const isIn = meetingPlaces(item, places, part).filter((place) =>
          state.holds('installed', part.id, place),
        );
        if (isIn.length === 0) continue;
        report({
          where: tagWhere(action),
          message: `${itemAt(item, places)} ${agreeing(item, 'is', 'are')} turned while ${itemAt(part, isIn)}, which ${agreeing(part, 'blocks', 'block')} it, ${agreeing(part, 'is', 'are')} in`,
          ...about(item, places),
          story: storyOf(isIn.map((place) => state.get('installed', part.id, place))),
          related: [{where: named.where, says: `${part.id} ${agreeing(part, 'blocks', 'block')} ${item.id}`}],
        });
      }
    },
  },
};
