/** A job as it reads against its specification: every field, every problem with its place, and whatever else is in the file. */
import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {quantity} from '../../src/quantity/convert.js';
import {type Job, readJob} from '../../src/spec/job.js';
import {jobsTogether} from '../../src/spec/jobs.js';
import {positionAt, slice, source} from '../../src/text/source.js';
import {readClean} from './marked.js';

const SPEC = readClean({
  engine: `
options: {raw-water-cooling: {}}
parts:
  crankshaft: {}
  main-shells: {substitutes: {twin-shells: {name: shells of the twin, alterations: [grind-off-lip]}}}
surfaces:
  main-journals: {on: crankshaft, assembly: clean, grinds: [0.010 in, 0.020 in]}
marks:
  engine-number: {matches: plate-number}
  plate-number: {}
alterations:
  grind-off-lip: {of: [main-shells], does: grind the locating lip flush}
`,
});

const HEAD = 'job: {number: T-1, engine: test}\n';

function read(text: string): Job {
  return readJob(source('jobs/T-1.yaml', text), SPEC);
}

describe('a job', () => {
  const job = read(`
job: {number: 0042, engine: test, for: the Tern, received: 2026-03-02, lead: R. Tamsin, note: knocks when hot}
marks: {engine-number: T 118, plate-number: T118}
grinds: {main-journals: 0.010 in}
fitted: {main-shells: {undersize: 0.010 in, note: last set in store}}
substitutes: {main-shells: twin-shells}
options: [raw-water-cooling]
`);
  const plain = (map: ReadonlyMap<string, {readonly value: unknown}>) =>
    Object.fromEntries([...map].map(([id, {value}]) => [id, value]));

  it('has its head, its number as it is written', () => {
    expect(job).toMatchObject({
      number: '0042',
      for: 'the Tern',
      received: '2026-03-02',
      lead: 'R. Tamsin',
      note: 'knocks when hot',
      problems: [],
    });
    expect(slice(job.source, job.where.span)).toBe('0042');
  });

  it('has its marks, grinds, parts and options', () => {
    const ten = {form: 'single', value: quantity(0.01, 'in', 0.001)};
    expect(plain(job.marks)).toEqual({'engine-number': 'T 118', 'plate-number': 'T118'});
    expect(plain(job.grinds)).toMatchObject({
      'main-journals': ten,
    });
    expect(plain(job.fitted)).toMatchObject({
      'main-shells': ten,
    });
    expect(plain(job.substitutes)).toEqual({'main-shells': 'twin-shells'});
    expect(job.options.map(({value}) => value)).toEqual(['raw-water-cooling']);
  });

  it('takes standard for what was not ground', () => {
    const {grinds, fitted, problems} = read(
      `${HEAD}grinds: {main-journals: standard}\nfitted: {main-shells: {undersize: standard}}\n`,
    );
    expect([grinds.get('main-journals')?.value, fitted.get('main-shells')?.value]).toEqual([
      'standard',
      'standard',
    ]);
    expect(problems).toEqual([]);
  });

  it('needs nothing but its head', () => {
    expect(read(HEAD)).toMatchObject({number: 'T-1', options: [], problems: []});
  });
});

describe('what is wrong with a job is said where it stands', () => {
  it.each([
    [
      'another engine',
      'job: {number: 1, engine: twin}\n',
      '1:26 twin unknown-item',
      'this job is for twin, and the book beside it is for test',
    ],
    ['no head', 'marks: {}\n', '1:1  spec-form', 'the key job is missing'],
    ['no number', 'job: {engine: test}\n', '1:1 job spec-form', 'job has no number'],
    [
      'a day that is none',
      'job: {number: 1, engine: test, received: 2026-02-30}\n',
      '1:42 2026-02-30 spec-form',
      'received: February 2026 has 28 days',
    ],
    [
      'an unknown key',
      `${HEAD}grind: {main-journals: standard}\n`,
      '2:1 grind spec-form',
      'grind is not a key of this file',
    ],
    [
      'an unknown mark',
      `${HEAD}marks: {engine-numbr: 1}\n`,
      '2:9 engine-numbr unknown-item',
      'engine-numbr is not in the specification',
    ],
    [
      'a mark that is a part',
      `${HEAD}marks: {crankshaft: 1}\n`,
      '2:9 crankshaft wrong-kind',
      'crankshaft is not a mark',
    ],
    [
      'a grind of a part',
      `${HEAD}grinds: {main-shells: 0.010 in}\n`,
      '2:10 main-shells wrong-kind',
      'main-shells is not a surface',
    ],
    [
      'a grind without its unit',
      `${HEAD}grinds: {main-journals: 0.010}\n`,
      '2:25 0.010 unit-missing',
      '0.010 has no unit where a length is due',
    ],
    [
      'a grind in another kind of unit',
      `${HEAD}grinds: {main-journals: 10 °F}\n`,
      '2:28 °F unit-wrong-kind',
      '',
    ],
    ['a grind that is no amount', `${HEAD}grinds: {main-journals: a hair}\n`, '2:25 a hair spec-form', ''],
    [
      'a part fitted that is a surface',
      `${HEAD}fitted: {main-journals: {undersize: standard}}\n`,
      '2:10 main-journals wrong-kind',
      'main-journals is not a part',
    ],
    [
      'a part fitted without its undersize',
      `${HEAD}fitted: {main-shells: {}}\n`,
      '2:10 main-shells spec-form',
      'main-shells has no undersize',
    ],
    [
      'a substitute for a part that has none',
      `${HEAD}substitutes: {crankshaft: twin-shaft}\n`,
      '2:27 twin-shaft unknown-item',
      'twin-shaft is not a substitute for crankshaft',
    ],
    [
      'a substitute that the specification lacks',
      `${HEAD}substitutes: {main-shells: twin-shell}\n`,
      '2:28 twin-shell unknown-item',
      'twin-shell is not a substitute for main-shells',
    ],
    [
      'an option that the engine lacks',
      `${HEAD}options: [raw-water]\n`,
      '2:11 raw-water unknown-item',
      'raw-water is not an option of this engine',
    ],
    ['text that is not YAML', `${HEAD}marks: {\n`, '', ''],
    ['a list', '- a\n', '1:1 - a spec-form', 'the file does not start with a key'],
  ])('%s', (_, text, place, says) => {
    const {problems, source: from} = read(text);
    const places = problems.map(({where, name}) => {
      const {line, column} = positionAt(from, where.span.start);
      return `${line}:${column} ${slice(from, where.span)} ${name}`;
    });
    expect(problems.length).toBeGreaterThan(0);
    if (place !== '') expect(places).toEqual([place]);
    if (says !== '') expect(problems[0]?.says).toBe(says);
  });

  it.each([
    [`${HEAD}substitutes: {main-shells: twin-shell}\n`, 'did you mean twin-shells?'],
    [
      `${HEAD}substitutes: {crankshaft: wing}\n`,
      'list it under substitutes of crankshaft in engine.yaml, with what it needs',
    ],
    [`${HEAD}marks: {engine-numbr: 1}\n`, 'did you mean engine-number?'],
    [`${HEAD}marks: {zz: 1}\n`, 'name a mark of engine.yaml: engine-number or plate-number'],
    [`${HEAD}marks: {engine-no: 1}\n`, 'did you mean engine-number?'],
    [`${HEAD}marks: {eng-nr: 1}\n`, 'name a mark of engine.yaml: engine-number or plate-number'],
    [`${HEAD}options: [raw-water]\n`, 'did you mean raw-water-cooling?'],
    [`${HEAD}grinds: {main-journals: standrd}\n`, 'did you mean standard?'],
    ['job:\n  number T-1\n  engine: test\n', 'write number: T-1'],
    ['job: {number: 1, engine: tset}\n', 'did you mean test?'],
    ['job: {number: 1, engine: twin}\n', 'put the job into the folder of its own engine'],
  ])('%s', (text, hint) => {
    expect(read(text).problems.map((problem) => problem.hint)).toEqual([hint]);
  });

  it('looks for near names in bounds: a file of nothing but slips gets few hints', () => {
    const marks = Array.from({length: 200}, (_, index) => `  engine-numbr-${index}: 1\n`).join('');
    const {problems} = read(`${HEAD}marks:\n  engine-numbr: 1\n${marks}`);
    expect(problems).toHaveLength(201);
    expect(problems[0]?.hint).toBe('did you mean engine-number?');
    expect(problems.at(-1)?.hint).toBe('name a mark of engine.yaml');
  });

  it('keeps what is right beside what is wrong', () => {
    const {marks, grinds} = read(
      `${HEAD}marks: {engine-numbr: 1, plate-number: 2}\ngrinds: {main-journals: 0.010 in, x: standard}\n`,
    );
    expect([...marks.keys(), ...grinds.keys()]).toEqual(['plate-number', 'main-journals']);
  });
});

describe('jobs together', () => {
  it('have numbers of their own; none is no number', () => {
    const jobs = jobsTogether([
      read(HEAD),
      read(HEAD),
      read('job: {engine: test}\n'),
      read('job: {engine: test}\n'),
    ]);
    expect(jobs.map(({problems}) => problems.map(({says}) => says))).toEqual([
      [],
      ['T-1 is the number of another job too'],
      ['job has no number'],
      ['job has no number'],
    ]);
  });
});

/** Words that a job may hold, in any order. */
const WORDS = [
  'job',
  ': ',
  'number',
  '{',
  '}',
  '[',
  ']',
  ', ',
  '\n',
  '  ',
  'marks',
  'grinds',
  'fitted',
  'substitutes',
  'options',
  'engine',
  'test',
  'main-shells',
  'main-journals',
  'undersize',
  'standard',
  '0.010 in',
  'twin-shells',
  '- ',
  '"',
  "'",
  '&a',
  '*a',
  '#',
  '|',
  '\t',
  '\u0000',
  '💧',
  'null',
];

describe('whatever the file holds', () => {
  it('reading gives a job, and problems that lie inside the text', () => {
    const text = fc.oneof(
      fc.array(fc.constantFrom(...WORDS), {maxLength: 40}).map((words) => words.join('')),
      fc.array(fc.constantFrom(...WORDS), {maxLength: 20}).map((words) => HEAD + words.join('')),
      fc.string({unit: 'binary', maxLength: 60}),
    );
    fc.assert(
      fc.property(text, (written) => {
        const job = read(written);
        for (const {where, related = []} of job.problems) {
          for (const {file, span} of [where, ...related.map((one) => one.where)]) {
            if (file !== job.source.file) continue;
            expect(span.start).toBeGreaterThanOrEqual(0);
            expect(span.end).toBeGreaterThanOrEqual(span.start);
            expect(span.end).toBeLessThanOrEqual(written.length);
          }
        }
      }),
      {numRuns: 500},
    );
  });
});
