/**
 * Checks, readings and signatures that moved across work on the same items: done as before, of an engine that is not
 * as it was before. So with temporary parts that go in or come out. The order of the steps says which work was crossed, and the ledger whether that made a difference.
 */
import type {FactKind} from '../build/facts.js';
import type {State} from '../build/state.js';
import type {Tag} from '../procedure/model.js';
import type {Verb} from '../procedure/verbs.js';
import type {Deed} from './deeds.js';
import {DONE, type Judge, type Sides} from './judge.js';
import type {Piece} from './model.js';
import {relatedTo} from './related.js';
import {tagRemark} from './remarks.js';
import type {BookSide} from './side.js';

export const orderChanges: Judge = (sides) => {
  const crossed = crossings(sides);
  if (crossed.length === 0) return [];
  const [was, is] = [
    standings(
      sides.before,
      crossed.map(({guard, work}) => [guard[0], work[0]]),
    ),
    standings(
      sides.now,
      crossed.map(({guard, work}) => [guard[1], work[1]]),
    ),
  ];
  const told = new Map<Deed, Told>();
  for (const [index, {guard, work}] of crossed.entries()) {
    if (was[index] === is[index]) continue;
    const one = told.get(guard[1]) ?? {guard, after: new Set(), before: new Set()};
    told.set(guard[1], one);
    const way = position(guard[1]) < position(work[1]) ? one.before : one.after;
    way.add(`${work[1].item} ${DONE[work[1].verb] ?? work[1].verb}`);
  }
  return [...told.values()].map(piece);
};

type Kept = Sides['deeds']['kept'][number];

interface Crossing {
  readonly guard: Kept;
  readonly work: Kept;
}

interface Told {
  readonly guard: Kept;
  /** What is done now before the guarding deed, and what after it, that was the other way round. */
  readonly after: Set<string>;
  readonly before: Set<string>;
}

const GUARDS: ReadonlySet<Verb> = new Set<Verb>(['check', 'measure', 'witness', 'inspect']);

/** Which fact of its item the work sets or takes away. */
const SETS: {readonly [verb in Verb]?: FactKind} = {
  install: 'installed',
  remove: 'installed',
  torque: 'tight',
  loosen: 'tight',
  lock: 'locked',
  stripe: 'striped',
  lube: 'lubed',
  seal: 'sealed',
  turn: 'turned',
  fill: 'filled',
  drain: 'filled',
};

/** Pairs of a guard and some work that stand in the other order now. */
function crossings({deeds: {kept}, now}: Sides): Crossing[] {
  const unsettled = outOfOrder(kept);
  const guards = unsettled.filter(([, deed]) => GUARDS.has(deed.verb) || isTemporary(deed, now));
  const works = unsettled.filter(([, deed]) => SETS[deed.verb] !== undefined);
  return guards.flatMap((guard) => {
    const related = isTemporary(guard[1], now) ? undefined : relatedTo(guard[1].item, now.run.relations);
    return works
      .filter((work) => guard[1].item !== work[1].item || !isTemporary(guard[1], now))
      .filter((work) => (related === undefined || related.has(work[1].item)) && isCrossed(guard, work))
      .map((work) => ({guard, work}));
  });
}

/** A pin holds what the specification does not say: whether it was in for some work may matter to any. */
function isTemporary({verb, item: id}: Deed, {run}: BookSide): boolean {
  const item = run.relations.spec.items.get(id);
  return (verb === 'install' || verb === 'remove') && item?.kind === 'part' && item.temporary;
}

function isCrossed(guard: Kept, work: Kept): boolean {
  return position(guard[0]) < position(work[0]) !== position(guard[1]) < position(work[1]);
}

/** Only deeds that some other one passed: where nothing moved there is none, whatever the size of the book. */
function outOfOrder(kept: readonly Kept[]): Kept[] {
  const inOrder = [...kept].sort((a, b) => position(a[0]) - position(b[0]));
  const places = inOrder.map(([, now]) => position(now));
  const least = [...places];
  for (let index = least.length - 2; index >= 0; index--)
    least[index] = Math.min(least[index] ?? 0, least[index + 1] ?? 0);
  let most = -1;
  return inOrder.filter((_, index) => {
    const at = places[index] ?? 0;
    const passed = most > at || (least[index] ?? at) < at;
    most = Math.max(most, at);
    return passed;
  });
}

/** By its step in the build, then by its place in the text: looking a tag up among those of its step takes too long. */
function position({step, tag}: Deed): number {
  return step.order * LONGEST_TEXT + tag.span.start;
}

/** No procedure that is read from disk has more characters. */
const LONGEST_TEXT = 4 * 1024 * 1024;

/** How the work's fact stands just before the guard, on one side; in the order in which they are asked for. */
function standings({run}: BookSide, wanted: readonly (readonly [guard: Deed, work: Deed])[]): string[] {
  const byTag = new Map<Tag, number[]>();
  for (const [index, [guard]] of wanted.entries())
    byTag.set(guard.tag, [...(byTag.get(guard.tag) ?? []), index]);
  const found: string[] = [];
  run.walk({
    before({tag}, state) {
      for (const index of byTag.get(tag) ?? []) {
        const work = wanted[index]?.[1];
        if (work !== undefined) found[index] = standing(work, state);
      }
    },
  });
  return found;
}

function standing({verb, item, place}: Deed, state: State): string {
  const kind = SETS[verb];
  const fact = kind === undefined ? undefined : state.get(kind, item, place);
  return fact?.holds === true ? `yes ${fact.detail?.final ?? ''}` : 'no';
}

function piece({guard: [was, is], after, before}: Told): Piece {
  const word = DONE[is.verb] ?? is.verb;
  const parts = [
    ...(before.size === 0 ? [] : [`before ${some(before)}`]),
    ...(after.size === 0 ? [] : [`after ${some(after)}`]),
  ];
  return {
    effect: 'changed',
    subject: is.item,
    item: is.item,
    place: is.place,
    aspect: is.verb,
    says: `${word} ${parts.join(' and ')} now, the other way round before`,
    before: [tagRemark(was)],
    now: [tagRemark(is)],
  };
}

const MOST_NAMED = 4;

function some(all: ReadonlySet<string>): string {
  const list = [...all];
  const left = list.length - MOST_NAMED;
  const named = list.slice(0, MOST_NAMED).map((one) => one.replace(' ', ' is '));
  return left > 0 ? `${named.join(', ')} and ${left} more` : named.join(', ');
}
