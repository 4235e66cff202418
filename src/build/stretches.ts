/**
 * A book as tasks of a time plan: each procedure in stretches that end with a cure, and which of them must wait for
 * which. The specification says what bears on what; two stretches that touch nothing in common do not wait for each
 * other, but what fills the engine waits for all before it.
 */
import type {Procedure, Step, Tag} from '../procedure/model.js';
import {amountOf, tagsOf, topSteps} from '../procedure/values.js';
import type {Verb} from '../procedure/verbs.js';
import {si, upperOf} from '../quantity/convert.js';
import type {Quantity} from '../quantity/model.js';
import {unit} from '../quantity/units.js';
import type {Item, Located, Specification} from '../spec/model.js';
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
      const times = timesOf(procedure, steps, spec);
      const id = idOf(at + 1, times, parts.length);
      const after = new Set(before === undefined ? [] : [before]);
      for (const needed of neededFor(steps, spec)) after.add(last.get(needed) ?? '');
      after.delete('');
      // Whatever is filled must be whole, and more of that is known to the shop than to the specification.
      if (doesIn(steps, 'fill')) for (const one of stretches) after.add(one.id);
      stretches.push({id, sheet: at + 1, after: [...after], ...times});
      for (const touched of touchedBy(steps, spec)) last.set(touched, id);
      before = id;
    }
  });
  return stretches;
}

/** `4`, or `4.1–30` where the procedure has several. */
function idOf(sheet: number, {from, to}: Pick<Stretch, 'from' | 'to'>, parts: number): string {
  if (parts === 1) return `${sheet}`;
  return from === to ? `${sheet}.${from}` : `${sheet}.${from}–${to}`;
}

type Steps = readonly [Step, ...Step[]];

/** The outermost steps, parted behind those that leave something to cure. */
function partsOf(procedure: Procedure): readonly Steps[] {
  const parts: [Step, ...Step[]][] = [];
  let open: [Step, ...Step[]] | undefined;
  for (const step of topSteps(procedure)) {
    if (open === undefined) {
      open = [step];
      parts.push(open);
    } else open.push(step);
    if (curesOf(step).length > 0) open = undefined;
  }
  return parts;
}

/** The cures of a step and those below it that are always followed. */
function curesOf(step: Step): readonly Tag[] {
  const below = tagsOf(step, 'if').length > 0 ? [] : step.steps.flatMap(curesOf);
  return [...tagsOf(step, 'cure'), ...below];
}

function timesOf(procedure: Procedure, steps: Steps, spec: Specification) {
  const {time} = procedure.front;
  const share = countOf(steps) / Math.max(1, procedure.steps.length);
  const cures = steps.flatMap(curesOf);
  const waits = cures.flatMap((tag) => tag.targets.map(({id}) => cureTime(tag, id, spec)));
  const known = waits.filter((wait) => wait !== undefined);
  return {
    from: steps[0].number,
    to: (steps.at(-1) ?? steps[0]).number,
    hands: fromSi(time === undefined ? 0 : si(time) * share, unit('min'), 1),
    timed: time !== undefined,
    wait: longest(known),
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
  if (stated !== undefined) return upperOf(stated);
  const item = spec.items.get(id);
  const seal = item?.kind === 'joint' ? item.seal?.value : undefined;
  const materials = [id, ...(typeof seal === 'object' ? seal : [])].map((one) => spec.items.get(one));
  const cures = materials.map((one) => (one?.kind === 'consumable' ? one.cure?.value : undefined));
  return longest(cures.filter((cure) => cure !== undefined).map(upperOf));
}

function longest(times: readonly Quantity[]): Quantity | undefined {
  return times.toSorted((one, other) => si(other) - si(one))[0];
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

/** Engine items alone: two steps that use one oil do not wait for each other. The block is touched by everything. */
function touchedBy(steps: readonly Step[], spec: Specification): ReadonlySet<string> {
  const items = itemsIn(steps, spec);
  return new Set(items.filter((item) => item.kind !== 'consumable' && !isGiven(item)).map(({id}) => id));
}

/** What is dealt with, and what bears on it; where that is a surface, the part too that it is on. */
function neededFor(steps: readonly Step[], spec: Specification): ReadonlySet<string> {
  const items = itemsIn(steps, spec);
  const bearing = items.flatMap(bearingOn);
  const surfaces = bearing.map((id) => spec.items.get(id)).filter((item) => item?.kind === 'surface');
  return new Set([...items.map(({id}) => id), ...bearing, ...surfaces.flatMap(bearingOn)]);
}

function isGiven(item: Item): boolean {
  return item.kind === 'part' && item.given;
}

/** What must be as it should be before something is done to the item. */
function bearingOn(item: Item): readonly string[] {
  switch (item.kind) {
    case 'part':
      return ids(item.after, item.closes, item.seatsIn);
    case 'surface':
      return ids(item.on);
    case 'joint':
      return ids(item.between);
    case 'fastener':
      return ids(item.holds, item.after, item.lockAfter);
    case 'fit':
      return ids(
        item.between,
        item.taperOf,
        item.outOfRoundOf,
        item.disturbedBy,
        item.when?.installed,
        item.when?.tight,
      );
    case 'mark':
      return ids(item.matches);
    case 'hold-point':
      return ids(item.asks);
    case 'check':
      return ids(item.after, item.disturbedBy);
    case 'system':
      return ids(item.joints, item.closedBy, item.after);
    default:
      return [];
  }
}

function ids(...named: readonly (Located<string> | readonly Located<string>[] | undefined)[]): string[] {
  return named
    .flat()
    .filter((one) => one !== undefined)
    .map(({value}) => value);
}
