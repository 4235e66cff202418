/** A surface that goes together lubed is closed up without its lubricant, or with another one. */
import type {Action} from '../build/program.js';
import {closedBy, meetingPlaces} from '../build/relations.js';
import {placesOf} from '../spec/items.js';
import type {Surface} from '../spec/model.js';
import {lastPlace} from './last-place.js';
import type {Context, FindingKind} from './model.js';
import {about, closing, inNumber, itemAt, listed, specified, storyOf, tagWhere} from './phrase.js';
import {lubedAsAsked} from './surface-state.js';

export const lubeFirst: FindingKind = {
  name: 'lube-first',
  group: 'order',
  severity: 'error',
  summary: 'A surface that goes together lubed is closed up without its lubricant',
  why: 'The first turns of a rebuilt engine happen before the oil arrives. A bearing put together dry is scored by then.',
  source: 'common practice, no source',
  example: {
    engine: `
parts:
  block: {given: true}
  camshaft: {closes: [camshaft-bores]}
surfaces:
  camshaft-bores: {on: block, at: [front, middle, rear], assembly: lubed, lubricants: [assembly-lube]}
`,
    wrong: `
1. Wipe every bore. \`clean: camshaft-bores\`
2. Coat the two outer bores. \`lube: camshaft-bores[front, rear] with assembly-lube\`
3. Slide the camshaft in. \`install: camshaft\`
`,
    right: `
1. Wipe every bore. \`clean: camshaft-bores\`
2. Coat every bore. \`lube: camshaft-bores with assembly-lube\`
3. Slide the camshaft in. \`install: camshaft\`
`,
  },
  before: {install: closed},
  end: neverClosed,
};

function closed(action: Action, context: Context): void {
  const {item, places} = action;
  if (item.kind !== 'part') return;
  for (const surface of closedBy(context.relations, item)) {
    if (surface.kind !== 'surface' || surface.assembly?.value !== 'lubed') continue;
    const bad = meetingPlaces(item, places, surface).filter(
      (place) => !lubedAsAsked(context.state, surface, place),
    );
    if (bad.length === 0) continue;
    const facts = bad.map((place) => context.state.get('lubed', surface.id, place));
    context.reportIfItLasts(
      {
        where: tagWhere(action),
        message: `${itemAt(surface, bad)} ${cause(facts, surface)} when ${closing(item, surface)}`,
        ...about(surface, bad),
        story: storyOf(facts),
        related: [
          specified(
            surface,
            `${surface.id} ${inNumber(surface, '[goes|go]')} together lubed${withWhich(surface)}`,
          ),
        ],
        lacks: {item: surface.id, verbs: ['lube']},
      },
      places,
    );
  }
}

/** A surface that no part closes must carry its lubricant at the end. */
function neverClosed({relations, state, report}: Context): void {
  for (const surface of relations.surfaces) {
    if (surface.assembly?.value !== 'lubed' || relations.closers.has(surface.id)) continue;
    const bad = placesOf(surface).filter((place) => !lubedAsAsked(state, surface, place));
    if (bad.length === 0) continue;
    const where = lastPlace(surface, bad, ['lubed'], state, relations);
    report({
      where,
      message: `${itemAt(surface, bad)} ${inNumber(surface, '[ends|end]')} the build without ${surface.lubricants.length === 0 ? 'lubricant' : allowed(surface)}`,
      ...about(surface, bad),
      related: [specified(surface)],
      lacks: {item: surface.id, verbs: ['lube']},
    });
  }
}

function cause(facts: readonly ReturnType<Context['state']['get']>[], surface: Surface): string {
  const other = facts.find(({holds}) => holds)?.detail?.ids;
  if (other !== undefined)
    return `${inNumber(surface, '[carries|carry]')} ${listed(other, 'and')}, not ${allowed(surface)},`;
  const lost = facts.some(({undone}) => undone !== undefined);
  return `${inNumber(surface, '[is|are]')} ${lost ? 'no longer' : 'not'} lubed${withWhich(surface)}`;
}

function withWhich(surface: Surface): string {
  return surface.lubricants.length === 0 ? '' : ` with ${allowed(surface)}`;
}

function allowed(surface: Surface): string {
  return listed(surface.lubricants.map(({value}) => value));
}
