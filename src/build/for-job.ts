/**
 * A book as it holds for the job in it: options that the engine lacks taken out, sizes as it was ground, and the
 * alterations that its substitutes need put in as steps. A book without a job stays as it is.
 */
import type {Procedure, Step} from '../procedure/model.js';
import {withAlterations} from './alterations.js';
import type {Book} from './book.js';
import {specificationFor} from './job-specification.js';
import {frontCondition, holds} from './options.js';
import {relations} from './relations.js';
import {type Fitting, withoutOptions} from './without-options.js';

/** What is made for a job out of one thing each: the same for the same arguments, so that it may be kept. */
export interface ForJob {
  readonly specification: typeof specificationFor;
  readonly procedure: typeof procedureFor;
  readonly relations: typeof relations;
}

const AFRESH: ForJob = {specification: specificationFor, procedure: procedureFor, relations};

export function forJob(book: Book, make = AFRESH): Book {
  const {job, spec: all} = book;
  if (job === undefined) return book;
  const options = new Set(job.options.map(({value}) => value));
  const own = make.specification(job, all);
  const kept = book.procedures
    .filter(({front}) => holds(frontCondition(front, all), options))
    .map((procedure) => make.procedure(procedure, {options, all, own}));
  const altered = withAlterations(kept, make.relations(own), job);
  const procedures = altered.map((one, index) => (one === kept[index] ? one : inOrder(one)));
  return {...book, spec: own, procedures};
}

/** A procedure with what the engine's options leave of it. */
export function procedureFor(procedure: Procedure, fitting: Fitting): Procedure {
  return inOrder(withoutOptions(procedure, fitting));
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
