/** Cautions that stand farther now from the work that they warn of: what was read long before is not before one's eyes. */
import type {StepRef} from '../build/program.js';
import {stepName} from '../build/tell.js';
import {meetings} from '../findings/hazards.js';
import type {Caution, Procedure} from '../procedure/model.js';
import {counted} from '../text/counted.js';
import type {Sides} from './judge.js';
import type {Effect} from './model.js';
import {type BookSide, stepsIn} from './side.js';

/** A caution with the procedure that it stands in. */
export interface PlacedCaution {
  readonly procedure: Procedure;
  readonly caution: Caution;
}

/** From so many steps more between a caution and its work it counts as a weakening; fewer are a change of order. */
const FAR = 3;

/** Undefined where no step that was there before has come between; the first of what it warns of is named. */
export type Farther = (
  before: PlacedCaution,
  now: PlacedCaution,
) => {readonly effect: Effect; readonly says: string} | undefined;

/** What both sides' procedures bring is found once each, not for every caution. */
export function fartherIn(sides: Sides): Farther {
  const {nowOf} = sides.steps;
  const kept = new Set(nowOf.values());
  const works = worksIn(sides.before);
  return (before, now) => {
    const work = firstWork(before, works(before.procedure), sides.before);
    const workNow = work && nowOf.get(work);
    if (work === undefined || workNow === undefined || workNow.procedure !== now.procedure) return undefined;
    const old = new Set(between(before, work, sides.before).map((step) => nowOf.get(step)));
    const steps = between(now, workNow, sides.now);
    const added = steps.filter((step) => kept.has(step) && !old.has(step)).length;
    if (added === 0) return undefined;
    const farther = `${counted(added, 'step')} farther before ${stepName(workNow)}`;
    return {effect: added >= FAR ? 'weakened' : 'changed', says: `stands ${farther}, of which it warns`};
  };
}

/** By caution, the steps that bring a hazard of its, in order. */
type Works = ReadonlyMap<Caution, readonly StepRef[]>;

function worksIn(side: BookSide): (procedure: Procedure) => Works {
  const parts = new Map(side.run.program.parts.map((part) => [part.procedure, part]));
  const known = new Map<Procedure, Works>();
  return (procedure) => {
    const there = known.get(procedure);
    if (there !== undefined) return there;
    const works = new Map<Caution, StepRef[]>();
    const part = parts.get(procedure);
    for (const {hazards, step} of part ? meetings(part, side.book.spec) : []) {
      for (const {caution} of hazards.flatMap(({cautions}) => cautions))
        works.set(caution, [...(works.get(caution) ?? []), step]);
    }
    known.set(procedure, works);
    return works;
  };
}

/** The first step that brings a hazard of the caution; of one that names none, the step that it stands before. */
function firstWork({procedure, caution}: PlacedCaution, works: Works, side: BookSide): StepRef | undefined {
  const found = works.get(caution)?.find((step) => isAfter(step, caution));
  return found ?? stepsIn(side, procedure).find((step) => isAfter(step, caution));
}

function between({procedure, caution}: PlacedCaution, work: StepRef, side: BookSide): StepRef[] {
  return stepsIn(side, procedure).filter((step) => isAfter(step, caution) && step.order < work.order);
}

function isAfter({step}: StepRef, {span}: Caution): boolean {
  return span.start < step.headSpan.start;
}
