/** A book as it holds for one engine: what its options leave out, what its grinds change. */
import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {forJob} from '../../src/build/for-job.js';
import {check} from '../../src/findings/check.js';
import {formatAmount} from '../../src/quantity/format.js';
import {book} from '../help/example.js';
import {ENGINE, made, outline} from './one-engine.js';

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

  it('leave out one step after another, each gap with its own reason and where it was', () => {
    const text =
      'Words.\n\n1. a `only: raw-water`\n2. b `only: raw-water`\n3. c `only: sail`\n\nMore words.\n\n4. d `only: sail`\n5. e `turn: pump`\n';
    const engine = ENGINE.replace('keel: {}', 'keel: {}, sail: {}');
    const whole = book({engine, procedures: {'p.md': text}, job: ''});
    const all = whole.procedures[0]?.steps.map(({span}) => span) ?? [];
    const content = forJob(whole).procedures[0]?.sections.flatMap((section) => section.content) ?? [];
    expect(
      content.map((block) =>
        block.type === 'left-out' ? `${block.steps} for ${block.options}` : block.type,
      ),
    ).toEqual(['prose', '1,2 for raw-water', '3 for sail', 'prose', '4 for sail', 'step']);
    expect(content.flatMap((block) => (block.type === 'left-out' ? [block.span] : []))).toEqual([
      {start: all[0]?.start, end: all[1]?.end},
      all[2],
      all[3],
    ]);
  });

  it('leave out whole sections with their words, and ask nothing more of what stays', () => {
    const text =
      '## A `only: keel`\n\nWords.\n\n1. a\n\n## B `only: raw-water, sail`\n\nWords.\n\n2. b\n3. c `only: keel`\n\nMore.\n\n4. d\n\n## C `only: sail`\n\nWords.\n';
    const engine = ENGINE.replace('keel: {}', 'keel: {}, sail: {}');
    const {procedures} = forJob(book({engine, procedures: {'p.md': text}, job: 'options: [keel]\n'}));
    const sections = procedures[0]?.sections.filter(({title}) => title !== '') ?? [];
    expect(sections.map(({title, only, content}) => [title, only, content.map(({type}) => type)])).toEqual([
      ['A', [], ['prose', 'step']],
      ['B', [], ['left-out']],
    ]);
    expect(outline({...book({engine, procedures: {}}), procedures})).toEqual([
      '# A',
      '1',
      '# B',
      '(2,3,4 for raw-water,sail)',
    ]);
  });

  it('leave a step as it is but for the steps below it', () => {
    const text =
      '1. a `turn: pump` `turn: sea-pump`\n\n   Words.\n   1. b `only: raw-water`\n   2. c `if:`\n   3. d `only: raw-water`\n';
    const whole = book({engine: ENGINE, procedures: {'p.md': text}, job: ''});
    const before = whole.procedures[0]?.steps[0];
    const [after] = forJob(whole).procedures[0]?.steps ?? [];
    expect(after?.tags).toEqual([before?.tags[0]]);
    expect(after?.tags[0]).toBe(before?.tags[0]);
    expect(after?.steps.map(({number}) => number)).toEqual(['1b']);
    expect(after?.steps[0]?.tags).toEqual(before?.steps[1]?.tags);
    expect(after?.more.map((block) => (block.type === 'left-out' ? `${block.steps}` : block.type))).toEqual([
      'prose',
      '1a',
      '1c',
    ]);
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
          'e.md': front('other-engine'),
          'f.md': front('[raw-water, keel]'),
          'g.md': front('[other-engine, raw-water]'),
        },
        job: 'options: [keel]\n',
      }),
    );
    expect(procedures.map(({source}) => source.file)).toEqual(['b.md', 'c.md', 'd.md', 'e.md', 'f.md']);
  });

  it('keep an item that is for one of several options', () => {
    const engine = `options: {keel: {}, sail: {}, oars: {}}\nparts:\n  pump: {only: [keel, sail]}\n`;
    const has = (job: string) =>
      forJob(book({engine, procedures: {'p.md': '1. a\n'}, job})).spec.items.has('pump');
    expect(['', 'options: [sail]\n', 'options: [keel, sail]\n', 'options: [oars]\n'].map(has)).toEqual([
      false,
      true,
      true,
      false,
    ]);
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
