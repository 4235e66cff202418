/** What happened to a fact, in words: the same in findings, in the story of an item and in the coverage table. */
import type {FactKind} from './facts.js';
import type {Action, StepRef} from './program.js';

const WORDS: {readonly [kind in FactKind]: string} = {
  clean: 'clean',
  lubed: 'lubed',
  strip: 'gauging strip in it',
  crushed: 'gauging strip crushed',
  inspected: 'inspected',
  installed: 'in',
  turned: 'turned',
  altered: 'altered',
  fresh: 'renewed',
  threads: 'threads coated',
  tight: 'tight',
  locked: 'locked',
  striped: 'striped',
  measured: 'measured',
  sealed: 'sealed',
  cured: 'cured',
  filled: 'filled',
  checked: 'checked',
  recorded: 'recorded',
  witnessed: 'witnessed',
};

/** `tight`, `no longer tight`. */
export function factWords(kind: FactKind, holds: boolean): string {
  return holds ? WORDS[kind] : `no longer ${WORDS[kind]}`;
}

/** `step 14 of 03-crankshaft.md: tight (torque: main-cap-bolts)`. */
export function tell(kind: FactKind, holds: boolean, action: Action): string {
  return `${stepName(action.step)}: ${factWords(kind, holds)} (${action.verb}: ${action.item.id})`;
}

/** `step 14`, with the file where it is not the one being read. */
export function stepName(step: StepRef, from?: StepRef): string {
  const {number} = step.step;
  if (from !== undefined && from.procedure === step.procedure) return `step ${number}`;
  return `step ${number} of ${baseName(step.procedure.source.file)}`;
}

export function baseName(file: string): string {
  return file.slice(Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1);
}
