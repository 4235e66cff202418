/** Something goes in, on or off, or is tightened, locked, checked or filled, in the wrong order: before what must precede it, twice over, or without what it holds. */

import type {Action} from '../build/program.js';
import {closedBy, meetingPlaces, relatedTo} from '../build/relations.js';
import type {State} from '../build/state.js';
import {stepName} from '../build/tell.js';
import type {Fastener, Fit, Item, Part} from '../spec/model.js';
import {awaited, reportEarly, saysOnce} from './comes-first.js';
import type {Context, FindingKind} from './model.js';
import {about, agreeing, closing, inNumber, itemAt, specified, storyOf, tagWhere} from './phrase.js';
import {stillDone} from './still-done.js';
import {lockedEarly, tightenedEarly} from './tightened-early.js';

export const installOrder: FindingKind = {
  name: 'install-order',
  group: 'order',
  severity: 'error',
  summary: 'Something goes in, or is tightened, locked, checked or filled, before what must come first',
  why: 'What was forgotten behind a part that is already in means taking it out again, or leaving it forgotten.',
  source: 'common practice, no source',
  example: {
    engine: `
parts:
  block: {given: true}
  camshaft-bearings: {}
  camshaft: {after: [camshaft-bearings]}
`,
    wrong: `
1. Slide the camshaft in. \`install: camshaft\`
2. Press the bearings in. \`install: camshaft-bearings\`
`,
    right: `
1. Press the bearings in. \`install: camshaft-bearings\`
2. Slide the camshaft in. \`install: camshaft\`
`,
  },
  before: {
    install(action, context) {
      forgotten(action, context);
      coveredOver(action, context);
      unsealed(action, context);
      twice(action, context);
    },
    remove(action, context) {
      notIn(action, context);
      stillTight(action, context);
    },
    torque(action, context) {
      nothingHeld(action, context);
      tightenedEarly(action, context);
    },
    lock: lockedEarly,
    measure: stillCovered,
    check(action, context) {
      reportEarly(
        action,
        'checked',
        awaited(action.item, action.places, action.item.after, context),
        context,
      );
    },
    fill(action, context) {
      reportEarly(action, 'filled', awaited(action.item, action.places, action.item.after, context), context);
    },
  },
  repeat: stillDone,
};

/** What `after` names is done somewhere, but not yet. What is never done at all is another finding. */
function forgotten(action: Action<Part>, context: Context): void {
  const {item, places} = action;
  for (const {first, places: late, verb, where} of awaited(item, places, item.after, context)) {
    if (closesOver(item, first, context)) continue;
    context.reportIfItLasts(
      {
        where: tagWhere(action),
        message: `${itemAt(item, places)} ${agreeing(item, 'goes', 'go')} in before ${itemAt(first, late)}, which must be ${saysOnce(verb)} first`,
        ...about(item, places),
        related: [{where, says: `${item.id} ${inNumber(item, '[comes|come]')} after ${first.id}`}],
        lacks: {item: first.id, verbs: [verb]},
      },
      places,
    );
  }
}

/** What closes a surface of a part, and comes after it, leaves it no way in; in a trial fit either. */
function coveredOver(action: Action<Part>, context: Context): void {
  const {item, places} = action;
  const {state, relations, report} = context;
  const surfaces = relatedTo(relations.surfacesOn, item);
  for (const cover of new Set(surfaces.flatMap((surface) => relatedTo(relations.closers, surface)))) {
    if (!cover.after.some(({value}) => value === item.id)) continue;
    const shut = meetingPlaces(item, places, cover).filter((at) => state.holds('installed', cover.id, at));
    if (shut.length === 0) continue;
    report({
      where: tagWhere(action),
      message: `${itemAt(item, places)} ${inNumber(item, '[goes|go]')} in after ${itemAt(cover, shut)}, which ${inNumber(cover, '[closes|close]')} over ${inNumber(item, '[it|them]')} and ${inNumber(cover, '[is|are]')} in already`,
      ...about(item, places),
      story: storyOf(shut.map((place) => state.get('installed', cover.id, place))),
      related: [specified(cover, `${cover.id} ${inNumber(cover, '[comes|come]')} after ${item.id}`)],
    });
  }
}

/** It closes a surface of the other. */
function closesOver(cover: Part, {id}: Item, {relations}: Context): boolean {
  return closedBy(relations, cover).some((closed) => closed.kind === 'surface' && closed.on?.value === id);
}

function unsealed(action: Action<Part>, {relations, state, does, reportIfItLasts}: Context): void {
  const {item, places} = action;
  for (const joint of closedBy(relations, item)) {
    const open = meetingPlaces(item, places, joint).filter(
      (place) => !state.holds('sealed', joint.id, place) && does('seal', joint.id, place),
    );
    if (open.length === 0) continue;
    const facts = open.map((place) => state.get('sealed', joint.id, place));
    reportIfItLasts(
      {
        where: tagWhere(action),
        message: `${itemAt(joint, open)} ${inNumber(joint, '[is|are]')} not made up when ${closing(item, joint)}`,
        ...about(joint, open),
        story: storyOf(facts),
        related: [specified(joint)],
      },
      places,
    );
  }
}

function twice(action: Action, {state, report}: Context): void {
  const {item, places} = action;
  const already = places.filter((place) => state.holds('installed', item.id, place));
  if (already.length === 0) return;
  const by = state.get('installed', item.id, already[0] ?? '').by;
  const since = by === undefined ? '' : ` since ${stepName(by.step, action.step)}`;
  report({
    where: tagWhere(action),
    message: `${itemAt(item, already)} ${inNumber(item, '[goes in but is|go in but are]')} in already${since}`,
    ...about(item, already),
    story: storyOf(already.map((place) => state.get('installed', item.id, place))),
  });
}

function notIn(action: Action<Part>, {state, report}: Context): void {
  const {item, places} = action;
  if (item.given) return;
  const out = places.filter((place) => !state.holds('installed', item.id, place));
  if (out.length === 0) return;
  report({
    where: tagWhere(action),
    message: `${itemAt(item, out)} ${inNumber(item, '[comes out but is|come out but are]')} not in`,
    ...about(item, out),
    story: storyOf(out.map((place) => state.get('installed', item.id, place))),
    lacks: {item: item.id, verbs: ['install']},
  });
}

function stillTight(action: Action, {state, relations, report}: Context): void {
  const {item, places} = action;
  for (const fastener of relations.holders.get(item.id) ?? []) {
    const tight = meetingPlaces(item, places, fastener).filter((place) =>
      state.holds('tight', fastener.id, place),
    );
    if (tight.length === 0) continue;
    report({
      where: tagWhere(action),
      message: `${itemAt(fastener, tight)} ${agreeing(fastener, 'is', 'are')} still tight when ${item.id} ${agreeing(item, 'comes', 'come')} off`,
      ...about(fastener, tight),
      story: storyOf(tight.map((place) => state.get('tight', fastener.id, place))),
      related: [specified(fastener, `${fastener.id} ${agreeing(fastener, 'holds', 'hold')} ${item.id}`)],
    });
  }
}

function nothingHeld(action: Action<Fastener>, context: Context): void {
  const {item, places} = action;
  for (const {value} of item.holds) {
    const part = context.book.spec.items.get(value);
    if (part === undefined) continue;
    const out = meetingPlaces(item, places, part).filter((place) => missing(part.id, place, context));
    if (out.length === 0) continue;
    context.report({
      where: tagWhere(action),
      message: `${itemAt(part, out)} ${agreeing(part, 'is', 'are')} not in when ${item.id} ${agreeing(item, 'is', 'are')} torqued`,
      ...about(part, out),
      story: storyOf(out.map((place) => context.state.get('installed', part.id, place))),
      related: [specified(item, `${item.id} ${agreeing(item, 'holds', 'hold')} ${part.id}`)],
    });
  }
}

/** A strip is crushed under a part and read with the part off. */
function stillCovered(action: Action<Fit>, {book, state, report}: Context): void {
  const {item, places} = action;
  if (item.by !== 'strip' || item.when === undefined) return;
  for (const {value} of item.when.installed) {
    const part = book.spec.items.get(value);
    if (part?.kind !== 'part' || !part.closes.some((one) => isBetween(item, one.value))) continue;
    const on = meetingPlaces(item, places, part).filter((place) => state.holds('installed', part.id, place));
    if (on.length === 0) continue;
    report({
      where: tagWhere(action),
      message: `${itemAt(item, places)} ${inNumber(item, '[is read from its|are read from their]')} strip while ${itemAt(part, on)} still ${inNumber(part, '[covers|cover]')} ${inNumber(item, '[it|them]')}`,
      ...about(item, places),
      story: storyOf(on.map((place) => state.get('installed', part.id, place))),
      related: [specified(item)],
    });
  }
}

function isBetween({between}: Fit, id: string): boolean {
  return between.some(({value}) => value === id);
}

function missing(part: string, place: string, {state, does}: {state: State; does: Context['does']}): boolean {
  return !state.holds('installed', part, place) && does('install', part, place);
}
