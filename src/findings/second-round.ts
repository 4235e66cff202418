/**
 * What goes wrong only when a `repeat:` has gone back: the story of such a finding has something in it that stands below the
 * tag, or is the tag itself, and so cannot have happened the first time that the step is come to.
 */
import type {Found, Remark} from '../build/found.js';
import {type Action, type Node, type Program, type StepRef, whereIn} from '../build/program.js';
import {stepName} from '../build/tell.js';

/** A repeat and the step that it goes back to. */
interface Loop {
  readonly back: StepRef;
  readonly to: StepRef;
}

/** Says of a finding at an action that it is of the second time round, where it is. */
export function secondRound({parts}: Program): (found: Found, action: Action) => Found {
  const loops = parts.flatMap(({nodes}) => loopsIn(nodes, new Map()));
  if (loops.length === 0) return (found) => found;
  return (found, action) => {
    const {story = []} = found;
    const loop = loopOf(story, action, loops);
    if (loop === undefined) return found;
    const {back, to} = loop;
    const round = `${stepName(back, action.step)} goes back to ${stepName(to, action.step)}`;
    const says = `${stepName(back)}: back to ${stepName(to, back)}, for the second time round`;
    return {
      ...found,
      message: `${found.message}, the second time round, after ${round}`,
      story: [...story, {where: whereIn(back, back.step.span), says}],
    };
  };
}

/** In the order in which they go back. The steps that have a name so far are filled into `named`. */
function loopsIn(nodes: readonly Node[], named: Map<string, StepRef>): Loop[] {
  return nodes.flatMap(({step, below, repeat}) => {
    if (step.step.id !== undefined) named.set(step.step.id, step);
    const inside = loopsIn(below, named);
    const to = repeat && named.get(repeat.id);
    return to === undefined ? inside : [...inside, {back: step, to}];
  });
}

/** The first to go back, and so the shortest, that holds both the action and what stands below it in the story. */
function loopOf(story: readonly Remark[], {step, tag}: Action, loops: readonly Loop[]): Loop | undefined {
  const {file} = step.procedure.source;
  // What the tag itself did, it did the time before; unless it names several, and did it to another of them just now.
  const from = tag.targets.length > 1 ? tag.span.end : tag.span.start;
  const later = story.filter(({where}) => where.file === file && where.span.start >= from);
  if (later.length === 0) return undefined;
  const last = Math.max(...later.map(({where}) => where.span.start));
  return loops.find(
    ({back, to}) => back.procedure === step.procedure && to.order <= step.order && last < back.step.span.end,
  );
}
