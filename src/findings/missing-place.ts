/** Where a missing step goes: behind what it needs, and only where nothing that needs it has been done by then. */
import type {Fact, FactKind} from '../build/facts.js';
import type {Action, StepRef} from '../build/program.js';
import {meetingPlaces} from '../build/relations.js';
import type {Item, Located} from '../spec/model.js';
import type {Context} from './model.js';

/** What is missing: the fact that should hold of the item, and at which places it doesn't. */
export interface Missing {
  readonly item: Item;
  readonly kind: FactKind;
  readonly places: readonly string[];
}

/**
 * The step that makes the last of the facts hold that are needed at each place. Nothing where one of them does not hold,
 * or the places do not end at one step: then it takes more than one step, or another thing is mended first.
 */
export function stepAfter(
  missing: Missing,
  needs: (place: string) => readonly Fact[],
  context: Context,
): StepRef | undefined {
  const {item, kind, places} = missing;
  const lasts = places.map((place) => lastStep(needs(place)));
  const [step] = lasts;
  if (step === undefined || lasts.some((one) => one?.order !== step.order)) return undefined;
  const undone = places.map((place) => context.state.get(kind, item.id, place).undone?.step.order ?? -1);
  const since = Math.max(...undone);
  return since <= step.order && isFree(item, {since, until: step.order}, context) ? step : undefined;
}

/** The facts of another item at the places that meet this one. */
export function factsAt(
  kind: FactKind,
  other: Item,
  item: Item,
  place: string,
  {state}: Context,
): readonly Fact[] {
  return meetingPlaces(item, [place], other).map((at) => state.get(kind, other.id, at));
}

/** The step before this one in its section, between which and this one there is room. */
export function stepBefore({procedure, step}: StepRef, {program}: Context): StepRef | undefined {
  for (const {content} of procedure.sections) {
    const own = content.flatMap((block) => (block.type === 'step' ? [block.step] : []));
    const before = own[own.indexOf(step) - 1];
    if (before !== undefined) return program.steps.find((one) => one.step === before);
  }
  return undefined;
}

/** No step from when the item was undone, if it was, until where it is to be done again does what comes only after it. */
export function isFree(
  item: Item,
  {since, until}: {readonly since: number; readonly until: number},
  {program}: Context,
): boolean {
  if (item.only.length > 0) return false;
  const isBetween = ({order}: StepRef) => since < order && order <= until;
  for (const {actions, steps} of program.parts) {
    if (actions.some((action) => isBetween(action.step) && waitsFor(action, item))) return false;
    if (steps.some((one) => isBetween(one) && branchesOn(one, item))) return false;
  }
  return true;
}

function waitsFor({item, verb}: Action, missing: Item): boolean {
  const {id} = missing;
  const names = (list: readonly Located<string>[] | undefined) =>
    list?.some(({value}) => value === id) === true;
  switch (item.kind) {
    case 'part':
      return verb === 'install' && (names(item.after) || names(item.closes));
    case 'fastener':
      return (verb === 'torque' && names(item.after)) || (verb === 'lock' && names(item.lockAfter));
    case 'hold-point':
      return names(item.asks);
    case 'fit':
      return verb === 'measure' && (names(item.when?.tight) || names(item.when?.installed));
    case 'system':
      return (
        names(item.joints) ||
        names(item.closedBy) ||
        (verb === 'fill' && (names(item.after) || holdsOneOf(item.closedBy, missing)))
      );
    case 'check':
      return names(item.after);
    case 'joint':
      return item.id === id && verb === 'cure';
    default:
      return false;
  }
}

/** A cover must be tight before what it closes is filled. */
function holdsOneOf(closers: readonly Located<string>[], missing: Item): boolean {
  if (missing.kind !== 'fastener') return false;
  return missing.holds.some(({value}) => closers.some((closer) => closer.value === value));
}

function branchesOn({step}: StepRef, {id}: Item): boolean {
  return step.tags.some(({verb, targets}) => verb === 'if' && targets.some((target) => target.id === id));
}

function lastStep(facts: readonly Fact[]): StepRef | undefined {
  let last: StepRef | undefined;
  for (const {holds, by} of facts) {
    if (!holds || by === undefined) return undefined;
    if (last === undefined || by.step.order > last.order) last = by.step;
  }
  return last;
}

/** Some step says what is done where the reading is out. */
export function isAnswered(item: Item, {program}: Context): boolean {
  return program.steps.some((step) => branchesOn(step, item));
}
