/** A procedure as it holds for an engine with some options: the steps of the others taken out, their numbers kept. */
import type {Block, Procedure, Section, Step, Tag, Target} from '../procedure/model.js';
import {topSteps} from '../procedure/values.js';
import type {Item, Specification} from '../spec/model.js';
import {type Condition, sectionConditions, tagCondition} from './options.js';

/** What the engine has: its options, and the specification with and without what the others bring. */
export interface Fitting {
  readonly options: ReadonlySet<string>;
  readonly all: Specification;
  readonly own: Specification;
}

/** Where steps drop out a block says which, so that a gap in the numbers is no riddle. */
export function withoutOptions(procedure: Procedure, fitting: Fitting): Procedure {
  const sections = sectionConditions(procedure).flatMap(([section, condition]): Section[] => {
    const missing = unmet(condition, fitting);
    if (missing === undefined) {
      const content = section.content.map((block) =>
        block.type === 'step' ? stepOrGap(block.step, fitting) : block,
      );
      return [{...section, only: [], content: gathered(content)}];
    }
    const gaps = topSteps({sections: [section]}).map((step) => leftOut(step, missing));
    return gaps.length === 0 ? [] : [{...section, only: [], content: gathered(gaps)}];
  });
  return {...procedure, sections};
}

/** One gap for neighbours that are left out for the same reason. */
function gathered(blocks: readonly Block[]): Block[] {
  const kept: Block[] = [];
  for (const next of blocks) {
    const last = kept.at(-1);
    if (next.type === 'left-out' && last?.type === 'left-out' && sameOptions(last, next)) {
      const span = {start: last.span.start, end: next.span.end};
      kept[kept.length - 1] = {...last, span, steps: [...last.steps, ...next.steps]};
    } else kept.push(next);
  }
  return kept;
}

function sameOptions(one: Gap, other: Gap): boolean {
  return String(one.options) === String(other.options);
}

type Gap = Extract<Block, {readonly type: 'left-out'}>;

function stepOrGap(step: Step, fitting: Fitting): Block {
  const missing = missingFor(step, fitting);
  return missing === undefined ? {type: 'step', step: keptStep(step, fitting)} : leftOut(step, missing);
}

function leftOut({span, number}: Step, options: readonly string[]): Gap {
  return {type: 'left-out', span, steps: [number], options};
}

/** The options for want of which the step drops out; undefined where it stays. */
function missingFor({tags}: Step, fitting: Fitting): readonly string[] | undefined {
  const missing = unmet(tagCondition(tags), fitting);
  if (missing !== undefined) return missing;
  // Without what it hangs on, a branch would be followed always.
  const hangsOn = tags.find(({verb}) => verb === 'if')?.targets[0];
  return hangsOn && lacking(hangsOn, fitting)?.only.map(({value}) => value);
}

function keptStep(step: Step, fitting: Fitting): Step {
  const below = gathered(step.steps.map((sub) => stepOrGap(sub, fitting)));
  return {
    ...step,
    tags: step.tags.flatMap((tag) => keptTag(tag, fitting)),
    steps: below.flatMap((block) => (block.type === 'step' ? [block.step] : [])),
    more: [...step.more, ...below.filter((block) => block.type === 'left-out')],
  };
}

/** Without the targets that this engine does not have. A tag that loses none stays the object that it is. */
function keptTag(tag: Tag, fitting: Fitting): Tag[] {
  if (tag.verb === 'only') return [];
  const targets = tag.targets.filter((target) => lacking(target, fitting) === undefined);
  if (targets.length === tag.targets.length) return [tag];
  return targets.length === 0 ? [] : [{...tag, targets}];
}

/** The item of the specification that this engine does not have. */
function lacking({id}: Target, {all, own}: Fitting): Item | undefined {
  return own.items.has(id) ? undefined : all.items.get(id);
}

function unmet(condition: Condition, {options}: Fitting): readonly string[] | undefined {
  return condition.find((group) => !group.some((id) => options.has(id)));
}
