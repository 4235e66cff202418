/** One engine on the stand, ground and fitted otherwise than its book: all that is told of it. Common practice, no source. */
import {describe, expect, it} from 'vitest';
import {book} from '../help/example.js';
import {toldOf} from '../help/found.js';
import {SILENT} from '../help/stories.js';

/** What is particular, and what the check tells of it. */
type JobStory = readonly [title: string, engine: string, job: string, lines: string];

const journals = (grinds: string, fits = 'play: {between: [journals, faces]}') => `
parts:
  block: {given: true}
  shaft: {given: true}
  shells: {given: false}
  rod: {}
  jig: {given: true}
surfaces:
  journals: {on: shaft, assembly: clean${grinds}}
  faces: {on: shells, assembly: clean}
  bore: {assembly: clean}
  web: {on: shaft, assembly: clean}
fits:
${fits
  .split('; ')
  .map(
    (fit) =>
      `  ${fit.replace('}', ', limits: 0.001–0.003 in, using: [feeler-gauges], when: {installed: []}}')}`,
  )
  .join('\n')}
`;

const TWO = ', grinds: [0.010 in, 0.020 in]';

const STEPS = `
1. Wipe them. \`clean: journals, faces, bore, web\`
2. Press the shells in. \`install: shells\`
3. Set the rod on. \`install: rod\`
4. Read it. \`measure: play\`
`;

describe('a surface that is ground', () => {
  it.each<JobStory>([
    [
      'to a size that the specification knows, with shells to go with it',
      journals(TWO),
      'grinds: {journals: 0.010 in}\nfitted: {shells: {undersize: 0.010 in}}',
      SILENT,
    ],
    [
      'to a size that the specification does not know',
      journals(TWO),
      'grinds: {journals: 0.030 in}\nfitted: {shells: {undersize: 0.030 in}}',
      `
undersize-mismatch journals: journals is ground 0.030 in under, and may be ground 0.010 in or 0.020 in under
  see engine.yaml:12: journals is specified here`,
    ],
    [
      'where the specification knows no sizes',
      journals(''),
      'grinds: {journals: 0.030 in}\nfitted: {shells: {undersize: 0.030 in}}',
      SILENT,
    ],
    [
      'under shells of which the job says nothing',
      journals(TWO),
      'grinds: {journals: 0.010 in}',
      `
undersize-mismatch shells: shells is standard, and journals that it runs on is ground 0.010 in under
  see jobs/1.yaml: journals is ground 0.010 in under
  see engine.yaml:12: journals is specified here`,
    ],
    [
      'to limits, under shells of which the job says nothing',
      journals(''),
      'grinds: {journals: 0.009–0.011 in}',
      `
undersize-mismatch shells: shells is standard, and journals that it runs on is ground 0.009–0.011 in under
  see jobs/1.yaml: journals is ground 0.009–0.011 in under
  see engine.yaml:12: journals is specified here`,
    ],
    [
      'not at all, under shells within limits',
      journals(''),
      'grinds: {journals: standard}\nfitted: {shells: {undersize: 0.009–0.011 in}}',
      `
undersize-mismatch shells: shells is 0.009–0.011 in under, and journals that it runs on is ground standard
  see jobs/1.yaml: journals is ground standard
  see engine.yaml:12: journals is specified here`,
    ],
    ['not at all, which is written down', journals(TWO), 'grinds: {journals: standard}', SILENT],
    [
      'not at all, under shells for a ground one',
      journals(TWO),
      'grinds: {journals: standard}\nfitted: {shells: {undersize: 0.010 in}}',
      `
undersize-mismatch shells: shells is 0.010 in under, and journals that it runs on is ground standard
  see jobs/1.yaml: journals is ground standard
  see engine.yaml:12: journals is specified here`,
    ],
    [
      'in a fit with a part that is named as a whole',
      journals(TWO, 'play: {between: [journals, rod]}'),
      'grinds: {journals: 0.010 in}',
      `
undersize-mismatch rod: rod is standard, and journals that it runs on is ground 0.010 in under
  see jobs/1.yaml: journals is ground 0.010 in under
  see engine.yaml:12: journals is specified here`,
    ],
    [
      'in a fit with shells and with a part that floats beside them',
      journals(TWO, 'play: {between: [journals, faces]}; side: {between: [journals, rod]}'),
      'grinds: {journals: 0.010 in}\nfitted: {shells: {undersize: 0.010 in}}',
      `
left-unmeasured side: side is never measured
  see engine.yaml:18: side is specified with limits`,
    ],
    [
      'in a fit with a surface of no part, one of its own part, one of a part that is there, and a name that means nothing',
      journals(
        TWO,
        'play: {between: [journals, bore]}; side: {between: [journals, web]}; jigs: {between: [journals, jig]}; mean: {between: [journals, bores]}',
      ),
      'grinds: {journals: 0.010 in}',
      `
unknown-item mean: nothing is called bores; did you mean bore?
  fix: Write bore: "bore" for "bores"
left-unmeasured side: side is never measured
  see engine.yaml:18: side is specified with limits
left-unmeasured jigs: jigs are never measured
  see engine.yaml:19: jigs are specified with limits
left-unmeasured mean: mean is never measured
  see engine.yaml:20: mean is specified with limits`,
    ],
    [
      'in a fit with its own part, which is no other',
      journals(TWO, 'play: {between: [journals, shaft]}').replace('shaft: {given: true}', 'shaft: {}'),
      'grinds: {journals: 0.010 in}',
      `
left-out shaft: shaft is never installed
  see engine.yaml:7: shaft belongs in the engine`,
    ],
    ['in no fit', journals(TWO, 'play: {between: [bore, faces]}'), 'grinds: {journals: 0.010 in}', SILENT],
  ])('%s', (_, engine, job, lines) => {
    const told = toldOf(book({engine, job, procedures: {'procedure.md': STEPS}}));
    expect(['', ...told].join('\n').trimEnd()).toBe(lines);
  });
});

const MARKS = `
marks:
  number: {stamped: front, matches: plate}
  plate: {stamped: bearer}
  cover: {stamped: rear}
`;

describe('two marks that must read the same', () => {
  it.each<readonly [title: string, marks: string, lines: string]>([
    ['read the same', 'number: EX 11  87, plate: ex1187', SILENT],
    ['read the same in letters that have no capital', 'number: Groß 1, plate: GROSS 1', SILENT],
    [
      'read otherwise',
      'number: EX 1187, plate: EX 1178, cover: 12',
      `
mark-mismatch number: number reads EX 1187, and plate reads EX 1178
  see jobs/1.yaml: plate is written here
  see engine.yaml:6: number is specified here`,
    ],
    ['are not both written down', 'plate: EX 1178', SILENT],
    ['are not written down, but for the first', 'number: EX 1187', SILENT],
  ])('%s', (_, marks, lines) => {
    const steps = '1. Copy them. `record: number, plate, cover`\n';
    const told = toldOf(book({engine: MARKS, job: `marks: {${marks}}`, procedures: {'procedure.md': steps}}));
    expect(['', ...told].join('\n').trimEnd()).toBe(lines);
  });
});

it('an engine without a job is silent about sizes', () => {
  const told = toldOf(book({engine: journals(TWO), procedures: {'procedure.md': STEPS}}));
  expect(told).toEqual([]);
});
