/** Where a change points to among the steps, in words that begin with the name of step and file. */
import type {Remark} from '../build/found.js';
import {type StepRef, whereIn} from '../build/program.js';
import {stepName} from '../build/tell.js';
import type {Tag} from '../procedure/model.js';
import type {Span} from '../text/source.js';

/** At the tag, with its text; at `span` where a clause of it is meant. */
export function tagRemark(
  {step, tag}: {readonly step: StepRef; readonly tag: Tag},
  span: Span = tag.span,
): Remark {
  return {where: whereIn(step, span), says: `${stepName(step)}: ${tag.raw.trim()}`};
}

/** At the head of the step, with these words of it. */
export function stepRemark(step: StepRef, words: string = step.step.text): Remark {
  return {where: whereIn(step, step.step.headSpan), says: `${stepName(step)}: ${words}`};
}
