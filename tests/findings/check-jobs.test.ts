/** A book checked with its jobs: what a job has beyond its book, each once, with the jobs that it concerns. */
import {describe, expect, it} from 'vitest';
import {checkWithJobs} from '../../src/findings/check-jobs.js';
import {readJob} from '../../src/spec/job.js';
import {source} from '../../src/text/source.js';
import {book} from '../help/example.js';

const ENGINE = `
parts:
  block: {given: true}
  crankshaft: {}
marks:
  engine-number: {stamped: front, matches: plate-number}
  plate-number: {stamped: bearer}
`;

const CLEAN = `
1. Copy both numbers. \`record: engine-number, plate-number\`
2. Lower the crankshaft in. \`install: crankshaft\`
`;

function report(procedure: string, ...jobs: string[]) {
  const plain = book({engine: ENGINE, procedures: {'procedure.md': procedure}});
  const read = jobs.map((text, at) =>
    readJob(
      source(`jobs/${at + 1}.yaml`, `job: {number: N-${at + 1}, engine: example}\n${text}`),
      plain.spec,
    ),
  );
  const {findings, ofJobs} = checkWithJobs(plain, read);
  return {
    book: findings.map(({name}) => name),
    jobs: ofJobs.map(
      ({finding, jobs: of}) => `${finding.name} at ${finding.where.file} of ${of.map(({number}) => number)}`,
    ),
    related: ofJobs.map(({finding}) => finding.related.map(({says}) => says)),
  };
}

describe('a book with jobs', () => {
  it('says of a job what stands in its own file', () => {
    const wrong = 'marks: {engine-number: 12, plate-number: 21}\n';
    expect(report(CLEAN, 'marks: {engine-number: 12, plate-number: 12}\n', wrong)).toMatchObject({
      book: [],
      jobs: ['mark-mismatch at jobs/2.yaml of N-2'],
    });
  });

  it('says what the book has once, and not again for its jobs', () => {
    const open = CLEAN.replace('2. Lower the crankshaft in. `install: crankshaft`', '');
    expect(report(open, '', '')).toMatchObject({book: ['left-out'], jobs: []});
  });

  it('calls a waiver stale for the book alone, and one of a job finding not at all', () => {
    const waived = (name: string) =>
      CLEAN.replace('in. `', `in. \`waive: ${name} by A. Lead because it is so\` \``);
    expect(report(waived('left-slack'), '', '')).toMatchObject({book: ['waiver-stale'], jobs: []});
    expect(report(waived('substitute-unaltered'), '', '')).toMatchObject({book: [], jobs: []});
  });
});
