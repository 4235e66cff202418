/** What the cover says of the engine on the stand: whose it is, its numbers, grinds, parts of other engines and options. */
import {itemsOfKind} from '../spec/items.js';
import type {Job} from '../spec/job.js';
import {expectedReading} from '../spec/job-marks.js';
import type {Part, Specification} from '../spec/model.js';
import {fittedAs, under} from './job-facts.js';
import type {Fact} from './model.js';
import type {Words} from './words.js';

export interface JobLinesOptions {
  readonly words: Words;
  /** Titles of the procedures that this job has not. */
  readonly leftOut: readonly string[];
}

/** One line a thing that this job says, in the order of the specification; `spec` is as it holds for the job. */
export function jobLines(job: Job, spec: Specification, {words, leftOut}: JobLinesOptions): Fact[] {
  return [
    ...line(words.jobFor, job.for),
    ...line(words.jobReceived, job.received),
    ...line(words.jobLead, job.lead),
    ...line(words.note, job.note),
    ...itemsOfKind(spec, 'mark').flatMap((mark) => line(mark.name, expectedReading(mark, job, spec))),
    ...itemsOfKind(spec, 'surface').flatMap(({id, name}) => {
      const ground = job.grinds.get(id)?.value;
      return line(name, ground === undefined ? undefined : under(ground, words));
    }),
    ...itemsOfKind(spec, 'part').flatMap((part) =>
      line(part.name, fittedAs(part, job, words), alterationsOf(part, job, spec, words)),
    ),
    ...optionLines(job, spec, words),
    ...line(words.notOnThisJob, leftOut.length === 0 ? undefined : leftOut.join(words.and)),
  ];
}

function optionLines(job: Job, spec: Specification, words: Words): Fact[] {
  const chosen = new Set(job.options.map(({value}) => value));
  const all = [...spec.options.values()];
  const names = (has: boolean) => all.filter(({id}) => chosen.has(id) === has).map(({name}) => name);
  return [
    ...line(words.has, names(true).join(words.and) || undefined),
    ...line(words.hasNot, names(false).join(words.and) || undefined),
  ];
}

/** What is done to the substitute before it goes in. */
function alterationsOf(part: Part, job: Job, spec: Specification, words: Words): string | undefined {
  const substitute = part.substitutes.get(job.substitutes.get(part.id)?.value ?? '');
  const done = substitute?.alterations.flatMap(({value}) => {
    const item = spec.items.get(value);
    return item?.kind === 'alteration' ? [item.does ?? item.name] : [];
  });
  return done === undefined || done.length === 0 ? undefined : done.join(words.and);
}

function line(label: string, text: string | undefined, note?: string): Fact[] {
  return text === undefined ? [] : [{label, text, ...(note !== undefined && {note})}];
}
