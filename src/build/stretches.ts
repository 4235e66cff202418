/**
 * A book as tasks of a time plan: each procedure in stretches that end with a cure, and which of them must wait for
 * which. The specification says what bears on what; two stretches that touch nothing in common do not wait for each
 * other, but what fills the engine waits for all before it.
 */
import type {Procedure, Step, Tag} from '../procedure/model.js';
import {amountOf, tagsOf} from '../procedure/values.js';
import type {Verb} from '../procedure/verbs.js';
import {highOf, lowOf, si} from '../quantity/convert.js';
import type {Quantity} from '../quantity/model.js';
import {unit} from '../quantity/units.js';
import type {Item, Specification} from '../spec/model.js';
import {fromSi} from '../trade/result.js';
import type {Task} from '../trade/task-graph.js';
import type {Book} from './book.js';

export interface Stretch extends Task {
  /** Place of its procedure in the build, from 1. */
  readonly sheet: number;
  /** Numbers of its first and last step. */
  readonly from: string;
  readonly to: string;
  /** Ids of what cures at its end. */
  readonly curing: readonly string[];
  /** Whether the procedure says how long somebody works on it; `hands` is nought where it does not. */
  readonly timed: boolean;
  /** Whether something cures at its end of which nobody says for how long. */
  readonly waitUnknown: boolean;
}

/** In build order; a procedure without steps has none. */
export function stretchesOf({spec, procedures}: Pick<Book, 'spec' | 'procedures'>): readonly Stretch[] {
  // Whoever touches an item waits for the one before that did, so the last one is enough.
  const last = new Map<string, string>();
  const stretches: Stretch[] = [];
  procedures.forEach((procedure, at) => {
    const parts = partsOf(procedure);
    let before: string | undefined;
    for (const steps of parts) {
      const id = idOf(at + 1, steps, parts.length);
      const after = new Set(before === undefined ? [] : [before]);
      for (const needed of neededFor(steps, spec)) after.add(last.get(needed) ?? '');
      after.delete('');
      // Whatever is filled must be whole, and more of that is known to the shop than to the specification.
      if (doesIn(steps, 'fill')) for (const one of stretches) after.add(one.id);
      stretches.push({id, sheet: at + 1, after: [...after], ...timesOf(procedure, steps, spec)});
      for (const touched of touchedBy(steps, spec)) last.set(touched, id);
      before = id;
    }
  });
  return stretches;
}

/** `4`, or `4.1–30` where the procedure has several. */
function idOf(sheet: number, steps: readonly Step[], parts: number): string {
  const [first, last] = [steps[0]?.number, steps.at(-1)?.number];
  if (parts === 1) return `${sheet}`;
  return first === last ? `${sheet}.${first}` : `${sheet}.${first}–${last}`;
}

/** The outermost steps, parted behind those that leave something to cure. */
function partsOf({sections}: Procedure): Step[][] {
  const steps = sections.flatMap(({content}) =>
    content.flatMap((block) => (block.type === 'step' ? [block.step] : [])),
  );
  const parts: Step[][] = [];
  let open: Step[] = [];
  for (const step of steps) {
    open.push(step);
    if (curesOf(step).length === 0) continue;
    parts.push(open);
    open = [];
  }
  return open.length > 0 ? [...parts, open] : parts;
}

/** The cures of a step and those below it that are always followed. */
function curesOf(step: Step): readonly Tag[] {
  const below = tagsOf(step, 'if').length > 0 ? [] : step.steps.flatMap(curesOf);
  return [...tagsOf(step, 'cure'), ...below];
}

function timesOf(procedure: Procedure, steps: readonly Step[], spec: Specification) {
  const {time} = procedure.front;
  const share = countOf(steps) / Math.max(1, procedure.steps.length);
  const cures = steps.flatMap(curesOf);
  const waits = cures.flatMap((tag) => tag.targets.map(({id}) => cureTime(tag, id, spec)));
  const known = waits.filter((wait) => wait !== undefined).sort((one, other) => si(other) - si(one));
  return {
    from: steps[0]?.number ?? '',
    to: steps.at(-1)?.number ?? '',
    hands: fromSi(time === undefined ? 0 : si(time) * share, unit('min'), 1),
    timed: time !== undefined,
    wait: known[0],
    waitUnknown: known.length < waits.length,
    curing: [...new Set(cures.flatMap(({targets}) => targets.map(({id}) => id)))],
  };
}

function countOf(steps: readonly Step[]): number {
  return steps.reduce((sum, step) => sum + 1 + countOf(step.steps), 0);
}

/** As the tag says, else the time of the consumable, or the longest of those that may seal the joint. */
function cureTime(tag: Tag, id: string, spec: Specification): Quantity | undefined {
  const stated = amountOf(tag, 'for');
  if (stated !== undefined) return highOf(stated) ?? lowOf(stated);
  const item = spec.items.get(id);
  const seal = item?.kind === 'joint' && Array.isArray(item.seal?.value) ? item.seal.value : [];
  const times = [id, ...seal].flatMap((one) => {
    const material = spec.items.get(one);
    const cure = material?.kind === 'consumable' ? material.cure?.value : undefined;
    return cure === undefined ? [] : [highOf(cure) ?? lowOf(cure)];
  });
  return times.filter((time) => time !== undefined).sort((one, other) => si(other) - si(one))[0];
}

function doesIn(steps: readonly Step[], verb: Verb): boolean {
  return steps.some((step) => tagsOf(step, verb).length > 0 || doesIn(step.steps, verb));
}

function itemsIn(steps: readonly Step[], spec: Specification): Item[] {
  return steps.flatMap((step) => [
    ...step.tags.flatMap(({targets}) => targets.flatMap(({id}) => spec.items.get(id) ?? [])),
    ...itemsIn(step.steps, spec),
  ]);
}

/** Engine items alone: two steps that use one wrench, or one oil, do not wait for each other. */
function touchedBy(steps: readonly Step[], spec: Specification): ReadonlySet<string> {
  const own = itemsIn(steps, spec).filter(({kind}) => kind !== 'tool' && kind !== 'consumable');
  return new Set(own.filter((item) => !isGiven(item)).map(({id}) => id));
}

function neededFor(steps: readonly Step[], spec: Specification): ReadonlySet<string> {
  const needed = new Set<string>();
  for (const item of itemsIn(steps, spec)) {
    for (const id of [item.id, ...bearingOn(item)]) {
      const other = spec.items.get(id);
      if (other === undefined || isGiven(other)) continue;
      needed.add(id);
      if (other.kind === 'surface' && other.on !== undefined) needed.add(other.on.value);
    }
  }
  return needed;
}

/** The block is touched by everything. */
function isGiven(item: Item): boolean {
  return item.kind === 'part' && item.given;
}

/** What must be as it should be before something is done to the item. */
function bearingOn(item: Item): readonly string[] {
  const values = (list: readonly {readonly value: string}[]) => list.map(({value}) => value);
  switch (item.kind) {
    case 'part':
      return [...values(item.after), ...values(item.closes), ...(item.seatsIn ? [item.seatsIn.value] : [])];
    case 'joint':
      return values(item.between);
    case 'fastener':
      return values([...item.holds, ...item.after]);
    case 'fit':
      return values([
        ...item.between,
        ...item.taperOf,
        ...item.outOfRoundOf,
        ...item.disturbedBy,
        ...(item.when?.installed ?? []),
        ...(item.when?.tight ?? []),
      ]);
    case 'mark':
      return item.matches ? [item.matches.value] : [];
    case 'hold-point':
      return values(item.asks);
    case 'system':
      return values([...item.joints, ...item.closedBy, ...item.after]);
    case 'check':
      return values([...item.after, ...item.disturbedBy]);
    default:
      return [];
  }
}
