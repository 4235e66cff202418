/** A book as it holds for one engine: what its options leave out, where its substitutes are altered, what its grinds change. */
import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import type {Book} from '../../src/build/book.js';
import {forJob} from '../../src/build/for-job.js';
import {check} from '../../src/findings/check.js';
import type {Block, Step} from '../../src/procedure/model.js';
import {formatAmount} from '../../src/quantity/format.js';
import {book} from '../help/example.js';

const ENGINE = `
options: {raw-water: raw-water cooling, keel: {}}
parts:
  block: {given: true}
  crankshaft: {given: true}
  sea-pump: {only: raw-water}
  pump: {}
  shells:
    at: [front, rear]
    substitutes:
      twins: {name: shells of the twin, alterations: [grind-lip, drill-hole], note: they came in a blue box}
      plain: {alterations: {value: none, because: the works used both}}
surfaces:
  journals: {on: crankshaft, at: [front, rear], assembly: clean, size: 2.500 in, grinds: [0.010 in]}
  faces: {on: shells, at: [front, rear], assembly: clean, sizes: {front: 2.502 in, rear: 2.5025 in}}
  backs: {on: shells, assembly: clean, size: 2.750 in}
fits:
  clearance: {at: [front, rear], between: [journals, faces], limits: 0.001–0.003 in, using: [feeler-gauges], when: {installed: [shells]}}
  sea-gap: {only: raw-water, between: [sea-pump], limits: 0.001–0.003 in, using: [feeler-gauges], when: {installed: [sea-pump]}}
alterations:
  grind-lip: {of: [shells], does: grind the lip flush, using: [steel-hammer], hazards: [sparks], note: dip it often}
  drill-hole: {of: [shells], does: drill the oil hole through}
`;

function made(procedure: string, job: string): Book {
  return forJob(book({engine: ENGINE, procedures: {'procedure.md': procedure}, job}));
}

/** Each step as its number and tags, indented by depth; gaps as they are said. */
function outline({procedures}: Book): string[] {
  const ofStep = (step: Step, depth: string): string[] => [
    `${depth}${step.number} ${step.tags.map(({raw}) => raw).join(' ')}`.trimEnd(),
    ...step.more.flatMap((block) => (block.type === 'left-out' ? ofBlock(block, `${depth}  `) : [])),
    ...step.steps.flatMap((sub) => ofStep(sub, `${depth}  `)),
  ];
  const ofBlock = (block: Block, depth: string): string[] => {
    if (block.type === 'step') return ofStep(block.step, depth);
    return block.type === 'left-out' ? [`${depth}(${block.steps} for ${block.options})`] : [];
  };
  return procedures.flatMap(({sections}) =>
    sections.flatMap(({title, content}) => [
      ...(title === '' ? [] : [`# ${title}`]),
      ...content.flatMap((block) => ofBlock(block, '')),
    ]),
  );
}

describe('options', () => {
  it.each([
    [
      'of steps, their numbers kept and the gap explained',
      '1. a `turn: pump`\n2. b `only: raw-water`\n3. c `only: raw-water`\n4. d `only: keel` `turn: pump`\n5. e `turn: pump`\n',
      ['1 turn: pump', '(2,3 for raw-water)', '4 turn: pump', '5 turn: pump'],
    ],
    [
      'of which any will do',
      '1. a `only: raw-water, keel` `turn: pump`\n2. b `only: keel` `only: raw-water`\n',
      ['1 turn: pump', '(2 for raw-water)'],
    ],
    [
      'of sub-steps',
      '1. a\n   1. b `only: raw-water`\n   2. c `turn: pump`\n',
      ['1', '  (1a for raw-water)', '  1b turn: pump'],
    ],
    [
      'of headings, and of the headings below them',
      '## A `only: raw-water`\n\n1. a\n\n### B\n\n2. b\n\n### C\n\n## D\n\n3. d `turn: pump`\n',
      ['# A', '(1 for raw-water)', '# B', '(2 for raw-water)', '# D', '3 turn: pump'],
    ],
    [
      'of targets, and of branches that hang on what is not there',
      '1. a `turn: sea-pump, pump`\n2. b `turn: sea-pump`\n3. c `if: sea-gap is out`\n   1. d `turn: pump`\n',
      ['1 turn: sea-pump, pump', '2', '(3 for raw-water)'],
    ],
  ])('leave out %s', (_, procedure, expected) => {
    expect(outline(made(procedure, 'options: [keel]\n'))).toEqual(expected);
  });

  it('take the targets out of the tag, not only out of its text', () => {
    const [procedure] = made('1. a `turn: sea-pump, pump`\n', '').procedures;
    expect(procedure?.steps[0]?.tags.map(({targets}) => targets.map(({id}) => id))).toEqual([['pump']]);
  });

  it('leave out whole procedures by their front matter', () => {
    const front = (only: string) =>
      `---\ntitle: T\nrevision: A\ndate: 2026-03-01\nonly: ${only}\n---\n\n1. a\n`;
    const {procedures} = forJob(
      book({
        engine: ENGINE,
        procedures: {
          'a.md': front('raw-water'),
          'b.md': front('keel'),
          'c.md': front('[example, raw-water]'),
          'd.md': front('[other-engine, keel]'),
        },
        job: 'options: [keel]\n',
      }),
    );
    expect(procedures.map(({source}) => source.file)).toEqual(['b.md', 'c.md', 'd.md']);
  });

  it('leave out items, so that nobody misses them', () => {
    const missed = (job?: string) =>
      check(book({engine: ENGINE, procedures: {'p.md': '1. a `turn: pump`\n'}, job}))
        .findings.filter(({name}) => name === 'left-out')
        .map(({item}) => item);
    expect(missed()).toContain('sea-pump');
    expect(missed('options: [raw-water]\n')).toContain('sea-pump');
    expect(missed('')).not.toContain('sea-pump');
  });

  it('keep every step or say that it is left out, whatever is chosen', () => {
    const tag = fc.constantFrom('', ' `only: raw-water`', ' `only: keel`', ' `only: raw-water, keel`');
    const line = fc.tuple(tag, fc.array(tag, {maxLength: 3}));
    const section = fc.tuple(
      fc.constantFrom('', '## S', '## T `only: keel`', '### U', '### V `only: raw-water`'),
      fc.array(line, {maxLength: 4}),
    );
    const job = fc.constantFrom(
      '',
      'options: [keel]\n',
      'options: [raw-water]\n',
      'options: [raw-water, keel]\n',
    );
    fc.assert(
      fc.property(fc.array(section, {maxLength: 4}), job, (sections, chosen) => {
        const text = sections
          .map(([heading, lines]) =>
            [
              heading,
              lines
                .map(([own, subs]) => [`1. a${own}`, ...subs.map((sub) => `   1. b${sub}`)].join('\n'))
                .join('\n'),
            ].join('\n\n'),
          )
          .join('\n\n');
        const whole = book({engine: ENGINE, procedures: {'p.md': text}, job: chosen});
        const all = whole.procedures.flatMap(({steps}) => steps.map(({number}) => number));
        const {procedures} = forJob(whole);
        const steps = procedures.flatMap((procedure) => procedure.steps);
        expect(steps.map(({index}) => index)).toEqual(steps.map((_, at) => at));
        const kept = new Set(steps.map(({number}) => number));
        const gone = outline({...whole, procedures}).flatMap(
          (one) => /\(([^ ]+) for/.exec(one)?.[1]?.split(',') ?? [],
        );
        for (const number of gone) expect(kept.has(number)).toBe(false);
        // A step that is left out takes its sub-steps with it.
        for (const number of all) {
          expect(
            kept.has(number) || gone.some((one) => number === one || number.replace(/[a-z]+$/, '') === one),
          ).toBe(true);
        }
        if (chosen.includes('raw-water, keel')) expect(gone).toEqual([]);
      }),
      {numRuns: 200},
    );
  });
});

describe('a substitute is altered', () => {
  const GRIND = 'alter: shells by grind-lip using steel-hammer';
  const DRILL = 'alter: shells by drill-hole';

  it.each([
    [
      'right before it goes in',
      '1. a `turn: pump`\n2. b `install: shells`\n',
      ['1 turn: pump', `J1 ${GRIND}`, `J2 ${DRILL}`, '2 install: shells'],
    ],
    [
      'before its surfaces are readied',
      '1. a `clean: faces`\n2. b `install: shells`\n',
      [`J1 ${GRIND}`, `J2 ${DRILL}`, '1 clean: faces', '2 install: shells'],
    ],
    [
      'before a fit of it is read',
      '1. a `measure: clearance`\n2. b `install: shells`\n',
      [`J1 ${GRIND}`, `J2 ${DRILL}`, '1 measure: clearance', '2 install: shells'],
    ],
    [
      'once, before a trial fit',
      '1. a `install: shells`\n2. b `remove: shells`\n3. c `install: shells`\n',
      [`J1 ${GRIND}`, `J2 ${DRILL}`, '1 install: shells', '2 remove: shells', '3 install: shells'],
    ],
    [
      'never where it is not used again',
      '1. a `clean: faces`\n2. b `renew: shells`\n3. c `install: shells`\n',
      ['1 clean: faces', '2 renew: shells', `J1 ${GRIND}`, `J2 ${DRILL}`, '3 install: shells'],
    ],
    [
      'after it is renewed',
      '1. a `renew: shells`\n2. b `install: shells`\n',
      ['1 renew: shells', `J1 ${GRIND}`, `J2 ${DRILL}`, '2 install: shells'],
    ],
    [
      'again after it is renewed again, where it is renewed',
      '1. a `install: shells`\n2. b `remove: shells`\n3. c `renew: shells[rear]`\n4. d `install: shells`\n',
      [
        `J1 ${GRIND}`,
        `J2 ${DRILL}`,
        '1 install: shells',
        '2 remove: shells',
        '3 renew: shells[rear]',
        'J3 alter: shells[rear] by grind-lip using steel-hammer',
        'J4 alter: shells[rear] by drill-hole',
        '4 install: shells',
      ],
    ],
    [
      'in all places before the first',
      '1. a `install: shells[front]`\n2. b `install: shells[rear]`\n',
      [`J1 ${GRIND}`, `J2 ${DRILL}`, '1 install: shells[front]', '2 install: shells[rear]'],
    ],
    [
      'among the sub-steps',
      '1. a\n   1. b `turn: pump`\n   2. c `install: shells`\n',
      ['1', '  1a turn: pump', `  J1 ${GRIND}`, `  J2 ${DRILL}`, '  1b install: shells'],
    ],
    [
      'on either way of a branch',
      '1. a `if: clearance is out`\n   1. b `install: shells`\n2. c `install: shells`\n',
      [
        '1 if: clearance is out',
        `  J1 ${GRIND}`,
        `  J2 ${DRILL}`,
        '  1a install: shells',
        `J3 ${GRIND}`,
        `J4 ${DRILL}`,
        '2 install: shells',
      ],
    ],
    [
      'before the way goes back to where it goes in',
      '1. a `install: shells` `step: press`\n2. b `if: clearance is out` `repeat: press`\n   1. c `remove: shells`\n   2. d `renew: shells`\n',
      [
        `J1 ${GRIND}`,
        `J2 ${DRILL}`,
        '1 install: shells step: press',
        '2 if: clearance is out repeat: press',
        '  2a remove: shells',
        '  2b renew: shells',
        `  J3 ${GRIND}`,
        `  J4 ${DRILL}`,
      ],
    ],
    [
      'not in a loop that it has nothing to do with',
      '1. a `turn: pump` `step: again`\n2. b `if: sea-gap is out`\n   1. c `repeat: again`\n3. d `install: shells`\n',
      ['1 turn: pump step: again', '(2 for raw-water)', `J1 ${GRIND}`, `J2 ${DRILL}`, '3 install: shells'],
    ],
    [
      'by what the procedures leave out',
      '1. a `alter: shells by drill-hole`\n2. b `install: shells`\n',
      ['1 alter: shells by drill-hole', `J1 ${GRIND}`, '2 install: shells'],
    ],
    [
      'by the procedures alone',
      '1. a `alter: shells by drill-hole, grind-lip`\n2. b `install: shells`\n',
      ['1 alter: shells by drill-hole, grind-lip', '2 install: shells'],
    ],
    [
      'where the step that alters it is for other engines',
      '1. a `alter: shells by drill-hole, grind-lip` `only: keel`\n2. b `install: shells`\n',
      ['(1 for keel)', `J1 ${GRIND}`, `J2 ${DRILL}`, '2 install: shells'],
    ],
    [
      'no more where it is in',
      '1. a `renew: shells` `install: shells`\n2. b `measure: clearance`\n',
      ['1 renew: shells install: shells', '2 measure: clearance'],
    ],
  ])('%s', (_, procedure, expected) => {
    const job = 'substitutes: {shells: twins}\n';
    expect(outline(made(procedure, job))).toEqual(expected);
  });

  it('by no step where it fits as it comes, or where the job fits the original', () => {
    const steps = ['1 install: shells'];
    expect(outline(made('1. a `install: shells`\n', 'substitutes: {shells: plain}\n'))).toEqual(steps);
    expect(outline(made('1. a `install: shells`\n', ''))).toEqual(steps);
  });

  it('with its text, tools, notes and hazards, and in the job’s own file', () => {
    const {procedures, job} = made('1. a `install: shells`\n', 'substitutes: {shells: twins}\n');
    const [grind, drill] = procedures[0]?.steps ?? [];
    expect(grind).toMatchObject({
      number: 'J1',
      index: 0,
      text: 'Grind the lip flush.',
      cautions: [{signal: 'warning', hazards: [{word: 'sparks'}]}],
      more: [{text: 'They came in a blue box.'}, {text: 'Dip it often.'}],
      added: job?.substitutes.get('shells')?.where,
    });
    expect(drill).toMatchObject({number: 'J2', text: 'Drill the oil hole through.', cautions: [], more: []});
  });

  it('so that the check is content, and says so where no step could do it', () => {
    const found = (procedure: string) =>
      check(book({engine: ENGINE, procedures: {'p.md': procedure}, job: 'substitutes: {shells: twins}\n'}))
        .findings.filter(({name}) => name === 'substitute-unaltered')
        .map(({message}) => message);
    expect(found('1. a `install: shells`\n')).toEqual([]);
    expect(found('1. a `renew: shells` `install: shells`\n')).toEqual([
      'shells are twins on this job, and go in without grind-lip',
      'shells are twins on this job, and go in without drill-hole',
    ]);
    expect(found('1. a `install: shells`\n2. b `alter: shells by grind-lip, drill-hole`\n')).toHaveLength(2);
    expect(found('1. a `alter: shells[front] by grind-lip`\n2. b `install: shells`\n')).toEqual([
      'shells[rear] are twins on this job, and go in without grind-lip',
    ]);
  });

  it('whose tool the shop does not have is found where the alteration names it, and not in the job’s file', () => {
    const engine = ENGINE.replace('using: [steel-hammer]', 'using: [steel-hamer]');
    const procedures = {'p.md': '1. a `install: shells`\n'};
    const {findings} = check(book({engine, procedures, job: 'substitutes: {shells: twins}\n'}));
    const named = findings.filter(({message}) => message.includes('steel-hamer'));
    expect(named.map(({message, where}) => `${where.file}: ${message}`)).toEqual([
      'engine.yaml: nothing is called steel-hamer; did you mean steel-hammer?',
    ]);
  });
});

describe('grinds', () => {
  function sizes(id: string, job: string): string[] {
    const surface = made('1. a\n', job).spec.items.get(id);
    return surface?.kind === 'surface'
      ? [...surface.sizes].map(([place, {value}]) => `${place} ${formatAmount(value)}`.trim())
      : [];
  }

  it.each([
    ['nothing ground', '', 'journals', ['2.500 in']],
    ['what is ground', 'grinds: {journals: 0.010 in}\n', 'journals', ['2.490 in']],
    ['what is ground to standard', 'grinds: {journals: standard}\n', 'journals', ['2.500 in']],
    ['what is ground in the other system', 'grinds: {journals: 0.25 mm}\n', 'journals', ['2.4902 in']],
    [
      'the faces of shells that come so',
      'fitted: {shells: {undersize: 0.010 in}}\n',
      'faces',
      ['front 2.492 in', 'rear 2.4925 in'],
    ],
    ['never their backs', 'fitted: {shells: {undersize: 0.010 in}}\n', 'backs', ['2.750 in']],
    [
      'standard shells',
      'fitted: {shells: {undersize: standard}}\n',
      'faces',
      ['front 2.502 in', 'rear 2.5025 in'],
    ],
  ])('change the size of %s', (_, job, id, expected) => {
    expect(sizes(id, job)).toEqual(expected);
  });

  it('leave the limits of fits alone', () => {
    const limits = (job: string) => {
      const fit = made('1. a\n', job).spec.items.get('clearance');
      return fit?.kind === 'fit' ? fit.limits?.value : undefined;
    };
    expect(limits('grinds: {journals: 0.010 in}\n')).toEqual(limits(''));
  });
});

it('a book without a job stays as it is', () => {
  const plain = book({engine: ENGINE, procedures: {'p.md': '1. a `only: keel`\n'}});
  expect(forJob(plain)).toBe(plain);
});
