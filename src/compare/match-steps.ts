/** Which step of the new side is which of the old: procedure by procedure in order, then what moved between them. */
import type {StepRef} from '../build/program.js';
import {baseName} from '../build/tell.js';
import type {Procedure} from '../procedure/model.js';
import {align} from './align.js';
import {assign} from './assign.js';
import {dice, type Features, featuresOf} from './likeness.js';
import type {StepPair} from './model.js';
import {type BookSide, stepsIn} from './side.js';

/** Which steps and procedures of both sides belong together. */
export interface Matched {
  /** In the order of the new side, dropped steps where they stood. */
  readonly pairs: readonly StepPair[];
  /** By step of the old side. */
  readonly nowOf: ReadonlyMap<StepRef, StepRef>;
  /** By procedure of the old side; one without a fellow is missing. */
  readonly procedures: ReadonlyMap<Procedure, Procedure>;
}

/** `idNow` gives the new name of an item of the old side. */
export function matchSteps(before: BookSide, now: BookSide, idNow: (id: string) => string): Matched {
  const features = new Map<StepRef, Features>();
  for (const step of before.run.program.steps) features.set(step, featuresOf(step.step, idNow));
  for (const step of now.run.program.steps)
    features.set(
      step,
      featuresOf(step.step, (id) => id),
    );
  const known = (steps: readonly StepRef[]) => steps.flatMap((step) => features.get(step) ?? []);

  const procedures = pairedProcedures(before, now, features);
  const nowOf = new Map<StepRef, StepRef>();
  for (const [old, fresh] of procedures) {
    const [a, b] = [stepsIn(before, old), stepsIn(now, fresh)];
    for (const [i, j] of align(known(a), known(b))) join(nowOf, a[i], b[j]);
  }
  const inOrder = new Set(nowOf.keys());
  const taken = new Set(nowOf.values());
  const a = before.run.program.steps.filter((step) => !nowOf.has(step));
  const b = now.run.program.steps.filter((step) => !taken.has(step));
  for (const [i, j] of assign(known(a), known(b))) join(nowOf, a[i], b[j]);
  return {nowOf, procedures, pairs: inReadingOrder(before, now, nowOf, inOrder)};
}

function join(map: Map<StepRef, StepRef>, before: StepRef | undefined, now: StepRef | undefined): void {
  if (before !== undefined && now !== undefined) map.set(before, now);
}

/** By their place below the folder that both sides share, then by their title, then by what they do. */
function pairedProcedures(
  before: BookSide,
  now: BookSide,
  features: ReadonlyMap<StepRef, Features>,
): Map<Procedure, Procedure> {
  const pairs = new Map<Procedure, Procedure>();
  const taken = new Set<Procedure>();
  const pairUp = (same: (a: Procedure, b: Procedure) => boolean) => {
    for (const old of before.book.procedures) {
      if (pairs.has(old)) continue;
      const fresh = now.book.procedures.find((one) => !taken.has(one) && same(old, one));
      if (fresh === undefined) continue;
      pairs.set(old, fresh);
      taken.add(fresh);
    }
  };
  const deeds = (side: BookSide, procedure: Procedure) =>
    stepsIn(side, procedure).flatMap((step) => features.get(step)?.deeds ?? []);
  pairUp((a, b) => a.source.file === b.source.file);
  pairUp((a, b) => baseName(a.source.file) === baseName(b.source.file));
  pairUp((a, b) => a.front.title !== '' && a.front.title === b.front.title);
  pairUp((a, b) => dice(deeds(before, a), deeds(now, b)) >= SAME_PROCEDURE);
  return pairs;
}

/** Share of deeds in common from which a file under another name and title is taken for the same procedure. */
const SAME_PROCEDURE = 0.6;

function inReadingOrder(
  before: BookSide,
  now: BookSide,
  nowOf: ReadonlyMap<StepRef, StepRef>,
  inOrder: ReadonlySet<StepRef>,
): StepPair[] {
  const beforeOf = new Map([...nowOf].map(([a, b]) => [b, a]));
  const dropped = droppedAfter(before, nowOf);
  const lead = dropped.get(undefined) ?? [];
  return [
    ...lead,
    ...now.run.program.steps.flatMap((step): StepPair[] => {
      const old = beforeOf.get(step);
      const own: StepPair =
        old === undefined ? {now: step, moved: false} : {before: old, now: step, moved: !inOrder.has(old)};
      return [own, ...(dropped.get(step) ?? [])];
    }),
  ];
}

/** Dropped steps by the new step that stands where the last kept one before them stood. */
function droppedAfter(
  before: BookSide,
  nowOf: ReadonlyMap<StepRef, StepRef>,
): Map<StepRef | undefined, StepPair[]> {
  const dropped = new Map<StepRef | undefined, StepPair[]>();
  let last: StepRef | undefined;
  for (const step of before.run.program.steps) {
    const fellow = nowOf.get(step);
    if (fellow === undefined) dropped.set(last, [...(dropped.get(last) ?? []), {before: step, moved: false}]);
    else last = fellow;
  }
  return dropped;
}
