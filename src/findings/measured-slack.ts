/** A fit is read while what it must be read under is not in place or not tight. */
import type {Action} from '../build/program.js';
import {meetingPlaces} from '../build/relations.js';
import type {Fit, Located} from '../spec/model.js';
import {tightAsAsked} from './done.js';
import type {Context, FindingKind} from './model.js';
import {about, agreeing, inNumber, itemAt, listed, specified, storyOf, tagWhere} from './phrase.js';
import {numbered, STRIP_ENGINE, STRIP_STEPS, without} from './strip-example.js';

export const measuredSlack: FindingKind = {
  name: 'measured-slack',
  group: 'order',
  severity: 'error',
  summary: 'A fit is measured while what it is measured under is out or slack',
  why: 'A bore is round and a strip flat only under the torque that the engine runs with. Read slack, every clearance looks larger.',
  source: 'common practice, no source',
  example: {
    engine: STRIP_ENGINE,
    wrong: without(3),
    right: numbered(STRIP_STEPS),
  },
  before: {
    measure(action, context) {
      if (action.item.by === 'strip') crushed(action, context);
      else inPlace(action, context);
    },
  },
};

/** A strip has seen the torque, even if the caps are off again when it is read. */
function crushed(action: Action<Fit>, {state, report}: Context): void {
  const {item: fit} = action;
  // A strip wiped away before it was read is read too late, which is another finding.
  const bad = action.places.filter(
    (place) =>
      !state.holds('crushed', fit.id, place) && state.get('strip', fit.id, place).undone === undefined,
  );
  if (bad.length === 0) return;
  const laid = bad.some((place) => state.holds('strip', fit.id, place));
  report({
    where: tagWhere(action),
    message: `${itemAt(fit, bad)} ${inNumber(fit, '[is|are]')} read from a strip that ${laid ? uncrushed(fit) : 'no step laid'}`,
    ...about(fit, bad),
    story: storyOf(bad.map((place) => state.get('strip', fit.id, place))),
    related: [specified(fit)],
    lacks: {item: fit.id, verbs: ['lay']},
  });
}

function uncrushed(fit: Fit): string {
  const under = fit.when?.tight.map(({value}) => value) ?? [];
  if (under.length > 0) return `${listed(under, 'and')} never crushed at final torque`;
  return 'nothing can have crushed: its `when` names no tight fasteners';
}

function inPlace(action: Action<Fit>, context: Context): void {
  const {item: fit} = action;
  if (fit.when === undefined) return;
  const lacking = [...open(action, fit.when.installed, context), ...open(action, fit.when.tight, context)];
  if (lacking.length === 0) return;
  context.report({
    where: tagWhere(action),
    message: `${itemAt(fit, action.places)} ${inNumber(fit, '[is|are]')} measured while ${lacking.join(' and ')}`,
    ...about(fit, action.places),
    related: [specified(fit)],
  });
}

function open(action: Action, ids: readonly Located<string>[], {book, state, does}: Context): string[] {
  return ids.flatMap(({value}) => {
    const item = book.spec.items.get(value);
    if (item?.kind === 'part' && !item.given) {
      const out = meetingPlaces(action.item, action.places, item).filter(
        (place) => !state.holds('installed', item.id, place) && does('install', item.id, place),
      );
      return out.length === 0 ? [] : [`${itemAt(item, out)} ${agreeing(item, 'is', 'are')} out`];
    }
    if (item?.kind === 'fastener') {
      const slack = meetingPlaces(action.item, action.places, item).filter(
        (place) => !tightAsAsked(item, place, state) && does('torque', item.id, place),
      );
      return slack.length === 0 ? [] : [`${itemAt(item, slack)} ${agreeing(item, 'is', 'are')} slack`];
    }
    return [];
  });
}
