/** A book checked with its jobs: what a job has beyond its book, each once, with the jobs that it concerns. */
import {describe, expect, it} from 'vitest';
import {checkWithJobs} from '../../src/findings/check-jobs.js';
import type {HouseFinding} from '../../src/findings/house.js';
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

describe('what jobs have beyond their book', () => {
  const OPTIONS = `${ENGINE}options: {keel: {}, sail: {}}\n`;
  const STEPS = `
1. Copy both numbers. \`record: engine-number, plate-number\`
2. Lower the crankshaft in. \`install: crankshaft\` \`only: keel\`
`;
  const LEFT_OUT = 'left-out';

  it('stands once, with the jobs that have it, unless it stands in their own file', () => {
    const wrong = 'marks: {engine-number: 12, plate-number: 21}\n';
    const plain = book({engine: OPTIONS, procedures: {'procedure.md': STEPS}});
    const jobs = ['options: [sail]\n', `options: [sail]\n${wrong}`, 'options: [keel]\n'].map((text, at) =>
      readJob(
        source(`jobs/${at + 1}.yaml`, `job: {number: N-${at + 1}, engine: example}\n${text}`),
        plain.spec,
      ),
    );
    const {findings, ofJobs} = checkWithJobs(plain, jobs);
    expect(findings.map(({name}) => name)).not.toContain(LEFT_OUT);
    expect(
      ofJobs.map(({finding, jobs: of}) => [
        finding.name,
        of.map(({number}) => number),
        finding.related.map(({where, says}) => `${where.file}: ${says}`),
      ]),
    ).toEqual([
      [
        LEFT_OUT,
        ['N-1', 'N-2'],
        [
          'engine.yaml: crankshaft belongs in the engine',
          'jobs/1.yaml: on job N-1',
          'jobs/2.yaml: on job N-2',
        ],
      ],
      [
        'mark-mismatch',
        ['N-2'],
        ['jobs/2.yaml: plate-number is written here', 'engine.yaml: engine-number is specified here'],
      ],
    ]);
  });

  it('tells each rule of the house that went wrong once, as it did first', () => {
    const rule = (name: string, from: number): HouseFinding => {
      let asked = 0;
      const end = () => {
        asked++;
        if (asked >= from) throw new RangeError(`${name}, time ${asked}`);
      };
      return {name: `house-${name}`, severity: 'error', summary: 'x', why: 'x', end};
    };
    const plain = book({engine: ENGINE, procedures: {'procedure.md': CLEAN}});
    const jobs = [1, 2].map((at) =>
      readJob(source(`jobs/${at}.yaml`, `job: {number: N-${at}, engine: example}\n`), plain.spec),
    );
    const {houseFaults} = checkWithJobs(plain, jobs, {house: [rule('late', 2), rule('early', 1)]});
    expect(houseFaults.map(({says}) => says)).toEqual([
      'RangeError: early, time 1',
      'RangeError: late, time 2',
    ]);
  });
});
