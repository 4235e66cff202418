/** What the stamped numbers of one engine must read, by what its job says of them. */
import {itemsOfKind} from './items.js';
import type {Job} from './job.js';
import type {Mark, Specification} from './model.js';

/** What the mark must read on this job: what the job says of it, else of a mark that must read the same. */
export function expectedReading(mark: Mark, job: Job, spec: Specification): string | undefined {
  const own = job.marks.get(mark.id);
  if (own !== undefined) return own.value;
  const other = mark.matches === undefined ? undefined : job.marks.get(mark.matches.value);
  if (other !== undefined) return other.value;
  const matching = itemsOfKind(spec, 'mark').find(
    ({id, matches}) => matches?.value === mark.id && job.marks.has(id),
  );
  return matching && job.marks.get(matching.id)?.value;
}

/** The id by which a specification calls the number of the engine itself. */
const ENGINE_NUMBER = 'engine-number';

/** What the engine's own number reads on this job; undefined where nobody has said. */
export function engineNumberOf(job: Job, spec: Specification): string | undefined {
  const mark = spec.items.get(ENGINE_NUMBER);
  return mark?.kind === 'mark' ? expectedReading(mark, job, spec) : undefined;
}
