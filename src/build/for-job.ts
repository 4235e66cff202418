/**
 * A book as it holds for the job in it: options that the engine lacks taken out, sizes as it was ground, and the
 * alterations that its substitutes need put in as steps. A book without a job stays as it is.
 */
import type {Procedure, Step} from '../procedure/model.js';
import {withAlterations} from './alterations.js';
import type {Book} from './book.js';
import {specificationFor} from './job-specification.js';
import {frontCondition, holds} from './options.js';
import {withoutOptions} from './without-options.js';

export function forJob(book: Book, forSpecification = specificationFor): Book {
  const {job, spec: all} = book;
  if (job === undefined) return book;
  const options = new Set(job.options.map(({value}) => value));
  const own = forSpecification(job, all);
  const kept = book.procedures
    .filter(({front}) => holds(frontCondition(front, all), options))
    .map((procedure) => withoutOptions(procedure, {options, all, own}));
  return {...book, spec: own, procedures: withAlterations(kept, own, job).map(inOrder)};
}

/** Counts the steps anew in reading order. Their printed numbers stay, so that they mean the same on every job. */
function inOrder(procedure: Procedure): Procedure {
  const steps: Step[] = [];
  const counted = (step: Step): Step => {
    const index = steps.length;
    steps.push(step);
    const again = {...step, index, steps: step.steps.map(counted)};
    steps[index] = again;
    return again;
  };
  const sections = procedure.sections.map((section) => ({
    ...section,
    content: section.content.map((block) =>
      block.type === 'step' ? {...block, step: counted(block.step)} : block,
    ),
  }));
  return {...procedure, sections, steps};
}
