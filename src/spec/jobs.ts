/** The jobs of one book held against each other: a number means one engine on the stand. */
import type {Job} from './job.js';

/** The jobs, each that bears the number of one before it with that as a problem. */
export function jobsTogether(jobs: readonly Job[]): readonly Job[] {
  const first = new Map<string, Job>();
  return jobs.map((job) => {
    const before = first.get(job.number);
    if (before === undefined) first.set(job.number, job);
    if (before === undefined || job.number === '') return job;
    return {
      ...job,
      problems: [
        ...job.problems,
        {
          name: 'spec-contradiction',
          where: job.where,
          says: `${job.number} is the number of another job too`,
          hint: 'give each job a number of its own',
          related: [{where: before.where, says: `${job.number} is first here`}],
        },
      ],
    };
  });
}
