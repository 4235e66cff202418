/** What was put in for a while only is still in: at the end of the build, or behind a part that closes over it. */
import type {Action} from '../build/program.js';
import {meetingPlaces} from '../build/relations.js';
import {placesOf} from '../spec/items.js';
import type {Part} from '../spec/model.js';
import {lastPlace} from './last-place.js';
import type {Context, FindingKind} from './model.js';
import {about, inNumber, itemAt, specified, storyOf, tagWhere} from './phrase.js';

export const leftIn: FindingKind = {
  name: 'left-in',
  group: 'left undone',
  severity: 'error',
  summary: 'Something temporary is still in at the end of the build, or is closed over',
  why: 'A blanking plug behind a cover starves what it blanks; a locking pin left in its hole breaks at the first turn of the starter.',
  source: 'common practice, no source',
  example: {
    engine: `
parts:
  block: {given: true}
  timing-pin: {temporary: true}
  cam-gear: {after: [timing-pin]}
`,
    wrong: `
1. Push the pin into its hole. \`install: timing-pin\`
2. Push the gear on to the mark. \`install: cam-gear\`
`,
    right: `
1. Push the pin into its hole. \`install: timing-pin\`
2. Push the gear on to the mark. \`install: cam-gear\`
3. Draw the pin. \`remove: timing-pin\`
`,
  },
  before: {
    install: closedOver,
  },
  end({state, relations, report}) {
    for (const part of relations.parts) {
      if (!part.temporary) continue;
      const left = placesOf(part).filter((place) => state.holds('installed', part.id, place));
      if (left.length === 0) continue;
      const where = lastPlace(part, left, ['installed'], state, relations);
      report({
        where,
        message: `${itemAt(part, left)} ${inNumber(part, '[is|are]')} temporary, and still in at the end of the build`,
        ...about(part, left),
        story: storyOf(left.map((place) => state.get('installed', part.id, place))),
        related: [specified(part, `${part.id} ${inNumber(part, '[is|are]')} temporary`)],
      });
    }
  },
};

/** A plug whose seat the part closes cannot be got at any more. One that never comes out is told at the end. */
function closedOver(action: Action, context: Context): void {
  const {item, places} = action;
  if (item.kind !== 'part') return;
  const {state, relations, does, reportIfItLasts} = context;
  for (const plug of relations.parts) {
    if (!plug.temporary || plug.id === item.id || !closesOver(item, plug)) continue;
    const shut = meetingPlaces(item, places, plug).filter(
      (place) => state.holds('installed', plug.id, place) && does('remove', plug.id, place),
    );
    if (shut.length === 0) continue;
    reportIfItLasts(
      {
        where: tagWhere(action),
        message: `${itemAt(plug, shut)} ${inNumber(plug, '[is|are]')} temporary, and still in when ${itemAt(item, places)} ${inNumber(item, '[closes|close]')} over ${inNumber(plug, '[it|them]')}`,
        ...about(plug, shut),
        story: storyOf(shut.map((place) => state.get('installed', plug.id, place))),
        related: [specified(plug, `${plug.id} ${inNumber(plug, '[is|are]')} temporary`)],
      },
      places,
    );
  }
}

function closesOver(cover: Part, plug: Part): boolean {
  return cover.closes.some(({value}) => value === plug.seatsIn?.value);
}
