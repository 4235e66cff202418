/** Orders that cannot be followed: items that wait for each other, joints closed from outside, tightening orders. */
import type {Problem} from '../../text/problem.js';
import type {Where} from '../../text/source.js';
import {itemsOfKind, placesOf} from '../items.js';
import type {Fastener, Item, ItemKind, Located, Part, Specification} from '../model.js';
import {contradiction} from './contradiction.js';

type Spec = Pick<Specification, 'items'>;

/** In the order of the items, each at the value that is likelier wrong, with the other beside it. */
export function orderContradictions(spec: Spec): Problem[] {
  return [
    ...circles(spec),
    ...itemsOfKind(spec, 'part').flatMap((part) => closingFaults(part, spec)),
    ...itemsOfKind(spec, 'part').flatMap(stayFaults),
    ...itemsOfKind(spec, 'fastener').flatMap(tighteningFaults),
    ...itemsOfKind(spec, 'fastener').flatMap(runFaults),
  ];
}

/**
 * Items that come after each other in a circle, each circle once: parts and fasteners, and of what is made with them in,
 * checks, systems and hold points. A part may well come after a fit or a check that is made with it in place: that is a
 * trial fit, and no circle.
 */
function circles(spec: Spec): Problem[] {
  const waiting = new Map<string, readonly Located<string>[]>();
  for (const kinds of [FITTED, MADE]) {
    for (const item of spec.items.values()) {
      const after = kinds.has(item.kind) ? firstsOf(item) : [];
      const held = after.filter(({value}) => kinds.has(spec.items.get(value)?.kind));
      if (held.length > 0) waiting.set(item.id, held);
    }
  }
  release(waiting);
  return circlesIn(waiting).flatMap(circleProblem);
}

type Kinds = ReadonlySet<ItemKind | undefined>;

const FITTED: Kinds = new Set(['part', 'fastener'] as const);
const MADE: Kinds = new Set(['check', 'system', 'hold-point'] as const);

function firstsOf(item: Item): readonly Located<string>[] {
  if (item.kind === 'hold-point') return item.asks;
  return 'after' in item ? item.after : [];
}

/** What is there from the start is not put in for a while. */
function stayFaults(part: Part): Problem[] {
  if (!part.given || !part.temporary) return [];
  return [contradiction(part, part.where, `${part.id} is given, and temporary`, 'take one of the two out')];
}

/**
 * Takes out everything that waits for none that waits (topological order, A. B. Kahn, Comm. ACM 5 (1962) 558; from
 * memory). What is left hangs on a circle; a search for circles alone would take too long in a book of strangers.
 */
function release(waiting: Map<string, readonly Located<string>[]>): void {
  const waiters = new Map<string, string[]>();
  const left = new Map<string, number>();
  const free: string[] = [];
  for (const [id, after] of waiting) {
    const held = after.filter(({value}) => waiting.has(value));
    for (const {value} of held) {
      const those = waiters.get(value);
      if (those) those.push(id);
      else waiters.set(value, [id]);
    }
    left.set(id, held.length);
    if (held.length === 0) free.push(id);
  }
  for (let id = free.pop(); id !== undefined; id = free.pop()) {
    waiting.delete(id);
    for (const waiter of waiters.get(id) ?? []) {
      const count = (left.get(waiter) ?? 0) - 1;
      left.set(waiter, count);
      if (count === 0) free.push(waiter);
    }
  }
}

interface Link {
  readonly from: string;
  readonly to: Located<string>;
}

/**
 * Whatever is left waits for one that is left, so going on from any must come round. Of its ways only the first
 * is followed: of circles that share parts some show only once the others are cut.
 */
function circlesIn(waiting: ReadonlyMap<string, readonly Located<string>[]>): Link[][] {
  const walkOf = new Map<string, string>();
  return [...waiting.keys()].flatMap((start) => {
    const path: Link[] = [];
    let id: string | undefined = start;
    while (id !== undefined && !walkOf.has(id)) {
      walkOf.set(id, start);
      const to: Located<string> | undefined = waiting.get(id)?.find(({value}) => waiting.has(value));
      if (to !== undefined) path.push({from: id, to});
      id = to?.value;
    }
    // A walk that ends in an earlier one has come to a circle that is known.
    const round = walkOf.get(id ?? '') === start ? path.findIndex(({from}) => from === id) : -1;
    return round < 0 ? [] : [path.slice(round)];
  });
}

/** Of a circle longer than this, people want to see where it starts. */
const SHOWN = 12;

function circleProblem(circle: readonly Link[]): Problem[] {
  const [first, ...others] = circle;
  if (first === undefined) return [];
  const names = [...circle.map(({from}) => from), first.from];
  const shown = names.length > SHOWN ? [...names.slice(0, SHOWN - 2), '…', first.from] : names;
  return [
    {
      name: 'spec-contradiction',
      where: first.to.where,
      says: `no part of the circle can be the first: ${shown.join(' after ')}`,
      hint: 'take out the one that need not wait',
      item: first.from,
      related: others
        .slice(0, SHOWN)
        .map(({from, to}) => ({where: to.where, says: `${from} after ${to.value}`})),
    },
  ];
}

/** A part closes a joint only by being one of those that meet in it, or carrying a surface that does. */
function closingFaults(part: Part, spec: Spec): Problem[] {
  return part.closes.flatMap(({value, where}) => {
    const joint = spec.items.get(value);
    if (joint?.kind !== 'joint' || joint.between.length === 0) return [];
    if (joint.between.some((side) => side.value === part.id || isOn(spec.items.get(side.value), part)))
      return [];
    const says = `${part.id} closes ${value}, which is not between it and anything`;
    const related = [{where: joint.where, says: `${value} is here`}];
    return [{...contradiction(part, where, says, `add ${part.id} to its between`), related}];
  });
}

function isOn(item: Item | undefined, part: Part): boolean {
  return item?.kind === 'surface' && item.on?.value === part.id;
}

/** Layout and order must name every fastener, of the whole group or of one place, once. */
function tighteningFaults(fastener: Fastener): Problem[] {
  const {layout, order, id, where} = fastener;
  // People draw the whole pattern, or that of one place which is the same at each of them.
  const each = fastener.count / placesOf(fastener).length;
  const numbers = [...new Set([fastener.count, each])].filter(Number.isInteger);
  const problems: Problem[] = [];
  if (layout.length > 0 && !numbers.includes(layout.length)) {
    const says = `the layout of ${id} shows ${layout.length} where there are ${numbers.join(', or a place has ')}`;
    problems.push(contradiction(fastener, where, says, 'show every one of them'));
  }
  if (order.length === 0) return problems;
  return [...problems, ...orderFaults(fastener, numbers, where)];
}

function orderFaults(fastener: Fastener, numbers: readonly number[], where: Where): Problem[] {
  const {layout, order, id} = fastener;
  const due = numbers.includes(order.length) ? order.length : fastener.count;
  const known = layout.length > 0 ? layout.map((one) => one.id) : numbered(due);
  const [have, named] = [new Set(known), new Set<string>()];
  const says: string[] = [];
  for (const one of order) {
    if (!have.has(one)) says.push(`the order of ${id} names ${one}, which it has not`);
    else if (named.has(one)) says.push(`the order of ${id} names ${one} twice`);
    named.add(one);
  }
  for (const one of have) if (!named.has(one)) says.push(`the order of ${id} leaves out ${one}`);
  return says.map((text) => contradiction(fastener, where, text, 'name every one of them once'));
}

/** Runs of wire must go through every fastener of the layout, each once. */
function runFaults(fastener: Fastener): Problem[] {
  const {layout, runs, id} = fastener;
  const [first] = runs;
  if (first === undefined) return [];
  const hint = 'name every one of the layout once';
  const known = new Set(layout.map((one) => one.id));
  const named = new Set<string>();
  const problems: Problem[] = [];
  for (const {value, where} of runs) {
    for (const one of value) {
      if (!known.has(one))
        problems.push(
          contradiction(fastener, where, `a run of ${id} names ${one}, which its layout has not`, hint),
        );
      else if (named.has(one))
        problems.push(contradiction(fastener, where, `the runs of ${id} go through ${one} twice`, hint));
      named.add(one);
    }
  }
  const left = [...known].filter((one) => !named.has(one));
  if (left.length === 0) return problems;
  const says = `the runs of ${id} leave out ${left.join(', ')}`;
  return [...problems, contradiction(fastener, first.where, says, hint)];
}

function numbered(count: number): string[] {
  return Array.from({length: count}, (_, index) => String(index + 1));
}
