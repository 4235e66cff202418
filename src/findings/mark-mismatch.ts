/** Two numbers that must read the same do not: this may be another engine, or another part of one. */
import {itemsOfKind} from '../spec/items.js';
import type {FindingKind} from './model.js';
import {specified} from './phrase.js';

export const markMismatch: FindingKind = {
  name: 'mark-mismatch',
  group: 'job',
  severity: 'error',
  summary: 'Two stamped numbers of a job that must match do not',
  why: 'An engine whose number is not the one on the hull plate is another engine, and may have other parts in it.',
  source: 'common practice, no source',
  example: {
    engine: `
marks:
  engine-number: {stamped: front left of the block, matches: hull-plate-number}
  hull-plate-number: {stamped: plate on the engine bearer}
`,
    wrong: `
1. Write down both numbers. \`record: engine-number, hull-plate-number\`
`,
    right: `
1. Write down both numbers. \`record: engine-number, hull-plate-number\`
`,
    job: `
marks: {engine-number: EX-1187, hull-plate-number: EX-1178}
`,
    rightJob: `
marks: {engine-number: EX-1187, hull-plate-number: EX-1187}
`,
  },
  book({book: {spec, job}, report}) {
    if (job === undefined) return;
    for (const mark of itemsOfKind(spec, 'mark')) {
      const other = mark.matches?.value;
      const reads = job.marks.get(mark.id);
      const must = other === undefined ? undefined : job.marks.get(other);
      if (reads === undefined || must === undefined || same(reads.value, must.value)) continue;
      report({
        where: reads.where,
        message: `${mark.id} reads ${reads.value}, and ${other} reads ${must.value}`,
        item: mark.id,
        related: [{where: must.where, says: `${other} is written here`}, specified(mark)],
      });
    }
  },
};

/** Stamps are in capitals, and people put in spaces as they like. */
function same(one: string, other: string): boolean {
  const bare = (text: string) => text.replace(/\s+/g, '').toUpperCase();
  return bare(one) === bare(other);
}
