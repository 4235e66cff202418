/** Something is laid, sealed, lubed or closed up on a surface that is not clean (or, where dry is asked, not dry). */

import type {Action} from '../build/program.js';
import {closedBy, meetingPlaces} from '../build/relations.js';
import type {State} from '../build/state.js';
import {stepName} from '../build/tell.js';
import type {Part, Surface} from '../spec/model.js';
import type {Context, FindingKind} from './model.js';
import {about, closing, inNumber, itemAt, specified, storyOf, tagWhere, targetWhere} from './phrase.js';
import {surfaceClean, surfaceLubed} from './surface-state.js';

export const cleanFirst: FindingKind = {
  name: 'clean-first',
  group: 'order',
  severity: 'error',
  summary: 'A surface is lubed, sealed or closed up that is not clean, or not dry where it must be',
  why: 'Grit under a shell scores the journal, oil on a plug seat lets the plug weep, and neither can be seen once the part is in.',
  source: 'common practice, no source',
  example: {
    engine: `
parts:
  block: {given: true}
  core-plugs: {at: [front, rear], closes: [plug-seats]}
surfaces:
  plug-seats: {on: block, at: [front, rear], assembly: dry}
`,
    wrong: `
1. Drive in both core plugs. \`install: core-plugs\`
`,
    right: `
1. Wipe both seats with solvent until the rag stays white. \`clean: plug-seats\`
2. Drive in both core plugs. \`install: core-plugs\`
`,
  },
  before: {
    lube: (action, context) => {
      if (action.item.kind === 'surface') judge(action, action.item, action.places, 'lubed', context);
    },
    seal: sealed,
    install(action, context) {
      closed(action, context);
      swarf(action, context);
    },
  },
};

function judge(
  action: Action,
  surface: Surface,
  places: readonly string[],
  done: string,
  {state, relations, report}: Context,
): void {
  const dirty = places.filter((place) => !surfaceClean(state, relations, surface, place));
  if (dirty.length === 0) return;
  const facts = dirty.map((place) => state.get('clean', surface.id, place));
  const again = facts.some(({undone}) => undone !== undefined);
  report({
    where: targetWhere(action),
    message: `${itemAt(surface, dirty)} ${inNumber(surface, `[is|are] ${done} but ${again ? '[is|are] no longer clean' : '[was|were] never cleaned'}`)}`,
    ...about(surface, dirty),
    story: storyOf(facts),
    related: [specified(surface)],
    lacks: {item: surface.id, verbs: ['clean']},
  });
}

function sealed(action: Action, {state, report}: Context): void {
  const {item, places} = action;
  const dirty = places.filter((place) => !state.holds('clean', item.id, place));
  if (dirty.length === 0) return;
  const facts = dirty.map((place) => state.get('clean', item.id, place));
  report({
    where: targetWhere(action),
    message: `${itemAt(item, dirty)} ${inNumber(item, '[is|are] sealed but [its|their] faces are not clean')}`,
    ...about(item, dirty),
    story: storyOf(facts),
    related: [specified(item)],
    lacks: {item: item.id, verbs: ['clean']},
  });
}

function closed(action: Action<Part>, context: Context): void {
  const {item, places} = action;
  for (const surface of closedBy(context.relations, item)) {
    if (surface.kind !== 'surface') continue;
    const asked = surface.assembly?.value;
    if (asked !== 'clean' && asked !== 'dry') continue;
    for (const [fault, bad] of faults(surface, meetingPlaces(item, places, surface), context)) {
      const facts = bad.flatMap((place) => [
        context.state.get('clean', surface.id, place),
        context.state.get('lubed', surface.id, place),
      ]);
      context.reportIfItLasts(
        {
          where: tagWhere(action),
          message: `${itemAt(surface, bad)} ${inNumber(surface, fault)} when ${closing(item, surface)}, and ${inNumber(surface, '[goes|go] together')} ${asked}`,
          ...about(surface, bad),
          story: storyOf(facts),
          related: [specified(surface)],
          lacks: {item: surface.id, verbs: ['clean']},
        },
        places,
      );
    }
  }
}

/** Oil or dust does a trial fit no harm; what cutting and grinding left behind scores both faces at once. */
function swarf(action: Action<Part>, {relations, state, report}: Context): void {
  const {item, places, step} = action;
  for (const surface of closedBy(relations, item)) {
    if (surface.kind !== 'surface') continue;
    // Lube over swarf was judged when it was put on.
    const cuts = meetingPlaces(item, places, surface).flatMap((place) => {
      const cut = surfaceLubed(state, surface, place) ? undefined : cutSince(state, surface, place);
      return cut === undefined ? [] : [{place, cut}];
    });
    const [first] = cuts;
    if (first === undefined) continue;
    const bad = cuts.map(({place}) => place);
    report({
      where: tagWhere(action),
      message: `${itemAt(surface, bad)} still ${inNumber(surface, '[carries|carry]')} what ${stepName(first.cut.step, step)} cut loose when ${closing(item, surface)}`,
      ...about(surface, bad),
      story: storyOf(bad.map((place) => state.get('clean', surface.id, place))),
      related: [specified(surface)],
    });
  }
}

/** The alteration whose swarf the surface has been carrying since. */
function cutSince(state: State, surface: Surface, place: string): Action | undefined {
  const {holds, undone} = state.get('clean', surface.id, place);
  return !holds && undone?.verb === 'alter' ? undone : undefined;
}

function faults(surface: Surface, places: readonly string[], {state, relations}: Context) {
  const oily = places.filter((place) => surfaceLubed(state, surface, place));
  const dirty = places.filter(
    (place) =>
      !oily.includes(place) &&
      cutSince(state, surface, place) === undefined &&
      !surfaceClean(state, relations, surface, place),
  );
  const all: [string, string[]][] = [
    ['still [carries|carry] lubricant', oily],
    ['[is|are] not clean', dirty],
  ];
  return all.filter(([, bad]) => bad.length > 0);
}
