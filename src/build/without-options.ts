/** A procedure as it holds for an engine with some options: the steps of the others taken out, their numbers kept. */
import type {Block, Procedure, Section, Step, Tag} from '../procedure/model.js';
import type {Specification} from '../spec/model.js';
import {type Condition, holds, sectionConditions, tagCondition} from './options.js';

/** What the engine has: its options, and the specification with and without what the others bring. */
export interface Fitting {
  readonly options: ReadonlySet<string>;
  readonly all: Specification;
  readonly own: Specification;
}

/** Where steps drop out a block says which, so that a gap in the numbers is no riddle. */
export function withoutOptions(procedure: Procedure, fitting: Fitting): Procedure {
  const conditions = sectionConditions(procedure);
  const sections = procedure.sections.flatMap((section, index): Section[] => {
    const condition = conditions[index] ?? [];
    if (holds(condition, fitting.options)) {
      return [{...section, only: [], content: keptBlocks(section.content, fitting)}];
    }
    const steps = section.content.flatMap((block) => (block.type === 'step' ? [block.step] : []));
    if (steps.length === 0) return [];
    return [{...section, only: [], content: [leftOut(steps, unmet(condition, fitting))]}];
  });
  return {...procedure, sections};
}

function keptBlocks(blocks: readonly Block[], fitting: Fitting): Block[] {
  const kept: Block[] = [];
  for (const block of blocks) {
    const next = block.type === 'step' ? stepOrGap(block.step, fitting) : block;
    const last = kept.at(-1);
    if (next.type === 'left-out' && last?.type === 'left-out' && sameOptions(last, next)) {
      kept[kept.length - 1] = {...last, steps: [...last.steps, ...next.steps]};
    } else kept.push(next);
  }
  return kept;
}

function stepOrGap(step: Step, fitting: Fitting): Block {
  const missing = missingFor(step, fitting);
  return missing === undefined ? {type: 'step', step: keptStep(step, fitting)} : leftOut([step], missing);
}

/** The options for want of which the step drops out; undefined where it stays. */
function missingFor(step: Step, fitting: Fitting): readonly string[] | undefined {
  const condition = tagCondition(step.tags);
  if (!holds(condition, fitting.options)) return unmet(condition, fitting);
  // Without what it hangs on, a branch would be followed always.
  const hangsOn = step.tags.find(({verb}) => verb === 'if')?.targets[0]?.id;
  if (hangsOn === undefined || !isGone(hangsOn, fitting)) return undefined;
  return fitting.all.items.get(hangsOn)?.only.map(({value}) => value) ?? [];
}

function keptStep(step: Step, fitting: Fitting): Step {
  const below = keptBlocks(
    step.steps.map((sub) => ({type: 'step', step: sub})),
    fitting,
  );
  return {
    ...step,
    tags: step.tags.flatMap((tag) => keptTag(tag, fitting)),
    steps: below.flatMap((block) => (block.type === 'step' ? [block.step] : [])),
    more: [...step.more, ...below.filter(({type}) => type === 'left-out')],
  };
}

/** Without the targets that this engine does not have. */
function keptTag(tag: Tag, fitting: Fitting): Tag[] {
  if (tag.verb === 'only') return [];
  const targets = tag.targets.filter(({id}) => !isGone(id, fitting));
  if (targets.length === tag.targets.length) return [tag];
  return targets.length === 0 ? [] : [{...tag, targets}];
}

function isGone(id: string, {all, own}: Fitting): boolean {
  return all.items.has(id) && !own.items.has(id);
}

function unmet(condition: Condition, {options}: Fitting): readonly string[] {
  return condition.find((group) => !group.some((id) => options.has(id))) ?? [];
}

function leftOut(steps: readonly Step[], options: readonly string[]): Block & {readonly type: 'left-out'} {
  const [first] = steps;
  const start = first?.span.start ?? 0;
  const end = steps.at(-1)?.span.end ?? start;
  return {type: 'left-out', span: {start, end}, steps: steps.map(({number}) => number), options};
}

function sameOptions(
  one: {readonly options: readonly string[]},
  other: {readonly options: readonly string[]},
) {
  return one.options.join(' ') === other.options.join(' ');
}
