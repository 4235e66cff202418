/** Looks through a procedure once, before its sheet is compiled, for what one step cannot know of the others. */
import type {Procedure, Step, Tag} from '../procedure/model.js';
import {amountOf, clauseOf, tagsOf} from '../procedure/values.js';
import type {Job} from '../spec/job.js';
import type {Specification} from '../spec/model.js';
import type {Context} from './context.js';
import {isLess} from './value.js';
import type {Words} from './words.js';

/** What the compiling of a procedure's sheet knows throughout. */
export function survey(
  procedure: Procedure,
  {spec, job}: {readonly spec: Specification; readonly job?: Job},
  words: Words,
): Context {
  return {
    spec,
    words,
    ...(job === undefined ? {} : {job}),
    steps: procedure.steps,
    stepNumbers: stepNumbers(procedure),
    looped: loopedSteps(procedure),
    firstSteps: firstSteps(procedure),
    steppedUp: fastenersWhere(procedure, (tag, id) => staysBelow(tag, id, spec)),
    turnedApart: turnedApart(procedure),
  };
}

function stepNumbers({steps}: Procedure): Map<string, string> {
  const numbers = new Map<string, string>();
  for (const {id, number} of steps) {
    if (id !== undefined && !numbers.has(id)) numbers.set(id, number);
  }
  return numbers;
}

/** Steps from the target of a `repeat:` up to the step that goes back. */
function loopedSteps({steps}: Procedure): Set<number> {
  const named = new Map(steps.map((step) => [step.id, step.index]));
  const looped = new Set<number>();
  for (const step of steps) {
    for (const {id} of tagsOf(step, 'repeat').flatMap(({targets}) => targets)) {
      for (let at = named.get(id) ?? step.index; at < step.index; at++) looped.add(at);
    }
  }
  return looped;
}

function firstSteps({steps}: Procedure): Map<string, number> {
  const first = new Map<string, number>();
  for (const step of steps) {
    for (const {id} of step.tags.flatMap(({targets}) => targets)) {
      if (!first.has(id)) first.set(id, step.index);
    }
  }
  return first;
}

/** Fasteners that a step turns on through an angle and another tightens first. */
function turnedApart(procedure: Procedure): Set<string> {
  const turned = fastenersWhere(procedure, statesOnlyTurn);
  const tightened = fastenersWhere(procedure, (tag) => !statesOnlyTurn(tag));
  return new Set([...turned].filter((id) => tightened.has(id)));
}

/** True for a torque tag that says how far to turn on, and no torque. */
export function statesOnlyTurn(tag: Tag): boolean {
  const states = (word: 'to' | 'in' | 'turn') => clauseOf(tag, word) !== undefined;
  return states('turn') && !states('to') && !states('in');
}

/** Whether a tag leaves the fastener below the torque that the specification ends at. */
function staysBelow(tag: Tag, id: string, spec: Specification): boolean {
  const stated = amountOf(tag, 'to');
  const item = spec.items.get(id);
  const final = item?.kind === 'fastener' ? item.torque?.value : undefined;
  return stated !== undefined && typeof final === 'object' && isLess(stated, final);
}

function fastenersWhere(procedure: Procedure, holds: (tag: Tag, id: string) => boolean): Set<string> {
  const torques = procedure.steps.flatMap((step: Step) => tagsOf(step, 'torque'));
  return new Set(torques.flatMap((tag) => tag.targets.map(({id}) => id).filter((id) => holds(tag, id))));
}
