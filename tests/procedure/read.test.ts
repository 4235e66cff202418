/** Procedures as a whole: steps and their numbers, cautions and where they belong, pictures, and tags out of place. */
import {readFileSync} from 'node:fs';
import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import type {Block, Procedure, Step} from '../../src/procedure/model.js';
import {readProcedure} from '../../src/procedure/read.js';
import {amountOf, amountsOf, clauseOf, idsOf, tagsOf, wordsOf} from '../../src/procedure/values.js';
import {slice, source} from '../../src/text/source.js';
import {type Made, madeProcedure} from './generated.js';
import {expectSound} from './invariants.js';

const FRONT = '---\ntitle: T\nrevision: A\ndate: 2026-01-02\n---\n';
const EXAMPLE = readFileSync(new URL('../fixtures/small/crankshaft.md', import.meta.url), 'utf8');

function read(body: string): Procedure {
  const procedure = readProcedure(source('a.md', FRONT + body));
  expectSound(procedure);
  return procedure;
}

/** Each step as `number text`, with its cautions before it. */
function outline({steps}: Procedure): string[] {
  return steps.map(({number, text, cautions}) => {
    return [...cautions.map((caution) => `${caution.signal}! ${caution.text} >`), number, text].join(' ');
  });
}

function said({problems, source}: Procedure): string[] {
  return problems.map(({name, where}) => `${name}: ${slice(source, where.span)}`);
}

function blocks({sections}: Procedure): string[][] {
  return sections.map(({title, content}) => [title, ...content.map(shortBlock)]);
}

function shortBlock(block: Block): string {
  if (block.type === 'step') return `step ${block.step.number}`;
  if (block.type === 'caution') return `caution ${block.caution.text}`;
  if (block.type === 'left-out') return `left out ${block.steps}`;
  return block.type === 'picture' ? `picture ${block.picture.url}` : `${block.type} ${block.text}`;
}

describe('the small example', () => {
  const procedure = readProcedure(source('crankshaft.md', EXAMPLE));

  it('reads without a problem', () => {
    expectSound(procedure);
    expect(said(procedure)).toEqual([]);
    expect(outline(procedure).slice(0, 9)).toEqual([
      'danger! The grinder throws hot chips 🔥. Wear goggles. > 1 Grind the locating lip off each shell, dipping it in water between passes.',
      '2 Wipe the saddles and shells with a clean rag until nothing comes off.',
      '3 Press each shell home and look at its back from both ends.',
      'caution! A strip that is turned reads nothing. > 4 Lay a strip across each journal, dry.',
      '5 Fit the caps and bring the bolts up in three passes, centre first.',
      '5a Slacken them all, take the caps off and read the strips.',
      '5b Is a clearance out?',
      '5b1 Renew the shells.',
      '5b2 Go back and lay new strips.',
    ]);
    expect(outline(procedure)[9]).toBe(
      'warning! Solvent vapour burns. Open the door and put the heater out. > 6 Brush lube on every bearing.',
    );
    expect(blocks(procedure).at(-1)?.at(-1)).toBe('caution Nothing follows this.');
  });

  it('uses every verb', () => {
    const cautions = procedure.steps.flatMap((step) => step.cautions);
    const tags = [...procedure.steps, ...cautions].flatMap((one) => one.tags);
    expect(new Set(tags.map(({verb}) => verb)).size).toBe(24);
  });

  it('reads the same however the lines end, and after a byte-order mark', () => {
    for (const ending of ['\n', '\r\n', '\r']) {
      const other = readProcedure(source('a.md', `\uFEFF${EXAMPLE.replaceAll('\n', ending)}`));
      expectSound(other);
      expect(said(other)).toEqual([]);
      expect(outline(other)).toEqual(outline(procedure));
    }
  });

  it('keeps the values of clauses', () => {
    const [torque] = procedure.steps.flatMap((step) => tagsOf(step, 'torque'));
    const [lock] = procedure.steps.flatMap((step) => tagsOf(step, 'lock'));
    const [fill] = procedure.steps.flatMap((step) => tagsOf(step, 'fill'));
    const [branch] = procedure.steps.flatMap((step) => tagsOf(step, 'if'));
    if (!torque || !lock || !fill || !branch) throw new Error('the example lacks a verb');
    expect(amountOf(torque, 'to')).toMatchObject({
      form: 'single',
      value: {value: 85, unit: {symbol: 'lbf·ft'}},
    });
    expect(amountsOf(torque, 'in')).toHaveLength(3);
    expect(idsOf(lock, 'with')).toEqual(['safety-wire']);
    expect(clauseOf(lock, 'with')?.value).toMatchObject({ids: [{rest: '0.041 in'}]});
    expect(wordsOf(branch, 'is')).toBe('out');
    expect([amountOf(lock, 'to'), amountsOf(lock, 'in'), idsOf(lock, 'using'), wordsOf(fill, 'to')]).toEqual([
      undefined,
      [],
      [],
      undefined,
    ]);
  });
});

describe('steps', () => {
  it('count through lists, cautions and sections, whatever the numerals say', () => {
    const procedure = read('1. a\n\n> **Warning:** w\n\n2. b\n\n## S\n\nProse.\n\n7. c\n\n   More.\n1) d\n');
    expect(outline(procedure)).toEqual(['1 a', 'warning! w > 2 b', '3 c', '4 d']);
    expect(procedure.steps.map(({section}) => section)).toEqual(['', '', 'S', 'S']);
  });

  it('have sub-steps with letters, and below those figures', () => {
    const many = Array.from({length: 28}, (_, n) => `   1. s${n}\n`).join('');
    const numbers = read(`1. a\n${many}2. b\n   1. c\n      1. d\n         1. e\n`).steps.map(
      ({number}) => number,
    );
    expect(numbers.slice(0, 3)).toEqual(['1', '1a', '1b']);
    expect(numbers.slice(26)).toEqual(['1z', '1aa', '1ab', '2', '2a', '2a1', '2a1a']);
  });

  it('take their tags out of the prose and close the gaps', () => {
    const {steps} = read(
      '1. `clean: a` Wipe `clean: b` it `clean: c`, dry `clean: d` `clean: e`.\n2. **Do `clean: a`** so\n3. `clean: a`\n4. Set `M8` *now `turn: b`*  \n   `turn: c`\n5. Wipe\n   `clean: x`\n   dry\n',
    );
    expect(steps.map(({text}) => text)).toEqual(['Wipe it, dry.', 'Do so', '', 'Set M8 now', 'Wipe dry']);
    expect(steps.map(({tags}) => tags.length)).toEqual([5, 1, 1, 2, 1]);
    expect(steps[1]?.inline.map(({type}) => type)).toEqual(['strong', 'text']);
    expect(steps[3]?.inline.at(-1)?.type).toBe('emphasis');
  });

  it('take slips of tags out of the prose too, as problems', () => {
    const procedure = read('1. Bolt it. `torqe: x` `polish: y` `M8`\n');
    expect(said(procedure)).toEqual(['unknown-verb: torqe', 'unknown-verb: polish']);
    expect(procedure.steps[0]?.text).toBe('Bolt it. M8');
  });

  it('read a tag over a line break, in a list and in a quote in it', () => {
    const procedure = read(
      '1. Do `torque: bolts[1,\n   2] to 85 lbf·ft\n   in 30, 60` it.\n\n   > **Danger:** `hazard: eyes,\n   > hot-metal`\n2. b\n',
    );
    expect(said(procedure)).toEqual([]);
    expect(procedure.steps[0]?.tags[0]?.targets[0]?.places.map(({name}) => name)).toEqual(['1', '2']);
    expect(procedure.steps[0]?.tags[0]?.clauses.map(({word}) => word)).toEqual(['to', 'in']);
    expect(procedure.steps[1]?.cautions[0]?.hazards.map(({word}) => word)).toEqual(['eyes', 'hot-metal']);
  });

  it('keep what else stands in them, with its tags', () => {
    const {steps} = read(
      '1. a\n\n   b `clean: x`\n\n   - c `clean: y`\n     d\n\n   ```\n   e\n   ```\n\n   [f]: /u\n2. `clean: z`\n\n   Words.\n',
    );
    expect(steps[0]?.more.map(shortBlock)).toEqual(['prose b', 'other - c\n  d', 'other ```\ne\n```']);
    expect(steps[0]?.tags.map(({raw}) => raw)).toEqual(['clean: x', 'clean: y']);
    expect(steps[1]?.text).toBe('Words.');
    expect(steps[1]?.more).toEqual([]);
  });

  it('point a finding at their first line', () => {
    const procedure = read('- x\n\n1. Wipe it\n   well.\n2.\n3. > **Notice:** n\n\n   Fit it.  \n');
    const heads = procedure.steps.map(({headSpan}) => slice(procedure.source, headSpan));
    expect(heads).toEqual(['Wipe it', '2.', 'Fit it.']);
  });

  it('have one name each', () => {
    const procedure = read(
      '1. a `step: one`\n2. b `step: one`\n3. c `step: two` `step: three`\n4. d `repeat: one`\n',
    );
    expect(procedure.steps.map(({id}) => id)).toEqual(['one', undefined, 'two', undefined]);
    expect(said(procedure)).toEqual(['tag-form: one', 'tag-form: three']);
  });
});

describe('cautions', () => {
  it.each<[string, string, string[]]>([
    ['above the list', '> **Danger:** d\n\n1. a\n2. b\n', ['danger! d > 1 a', '2 b']],
    ['between two items', '1. a\n\n> **Danger:** d\n\n2. b\n', ['1 a', 'danger! d > 2 b']],
    ['between, without blank lines', '1. a\n> **Danger:** d\n2. b\n', ['1 a', 'danger! d > 2 b']],
    [
      'inside the item before, by indentation',
      '1. a\n\n   > **Danger:** d\n\n2. b\n',
      ['1 a', 'danger! d > 2 b'],
    ],
    ['opening its own item', '1. > **Danger:** d\n\n   a\n2. b\n', ['danger! d > 1 a', '2 b']],
    ['before sub-steps', '1. a\n\n   > **Danger:** d\n\n   1. s\n2. b\n', ['1 a', 'danger! d > 1a s', '2 b']],
    [
      'between sub-steps',
      '1. a\n   1. s\n\n   > **Danger:** d\n\n   2. t\n',
      ['1 a', '1a s', 'danger! d > 1b t'],
    ],
    ['over a heading', '1. a\n\n> **Danger:** d\n\n## S\n\nProse.\n\n1. b\n', ['1 a', 'danger! d > 2 b']],
    [
      'two of them',
      '> **Danger:** d\n\n<!-- -->\n\n> **Notice:** n\n\n1. a\n',
      ['danger! d > notice! n > 1 a'],
    ],
    [
      'two in one quote',
      '> **Danger:** d\n>\n> more\n>\n> **Notice:** n\n\n1. a\n',
      ['danger! d more > notice! n > 1 a'],
    ],
  ])('%s', (_, body, expected) => {
    const procedure = read(body);
    expect(outline(procedure)).toEqual(expected);
    expect(said(procedure)).toEqual([]);
    expect(blocks(procedure).flat().join()).not.toContain('caution');
  });

  it.each([
    ['**Danger:** d', 'danger! d'],
    ['**WARNING**: d', 'warning! d'],
    ['**Caution** d', 'caution! d'],
    ['**notice!** d', 'notice! d'],
    ['Danger: d', 'danger! d'],
    ['**Danger: hot** d', 'danger! hot d'],
    ['**Danger:**\n> - d\n> - e', 'danger! d e'],
    ['**Danger:** d `hazard: eyes` e', 'danger! d e'],
    ['**Danger:** *d* [e][x] ![f](g)', 'danger! d e f'],
  ])('that open with %s', (opening, expected) => {
    const procedure = read(`> ${opening}\n\n1. a\n\n[x]: /u\n`);
    expect(outline(procedure)).toEqual([`${expected} > 1 a`]);
  });

  it.each(['Danger d', 'Take care', '**Dangerous:** d', '**Hint:** d', '*Danger:* d', '`hazard: eyes`'])(
    'that open with %s are none',
    (opening) => {
      expect(outline(read(`> ${opening}\n\n1. a\n`))).toEqual(['1 a']);
    },
  );

  it('that no step follows stay where they were written', () => {
    const procedure = read('## S\n\n1. a\n\n> **Danger:** d\n\nProse.\n\n## T\n\n> **Notice:** n\n');
    expect(blocks(procedure)).toEqual([
      ['S', 'step 1', 'caution d', 'prose Prose.'],
      ['T', 'caution n'],
    ]);
  });
});

describe('tags that are spoilt', () => {
  it.each<[string, string, string[]]>([
    ['never closed', 'Set it. `install: main-shims', ['tag-form: install: main-shims']],
    ['never opened', 'Set it. install: main-shims`', ['tag-form: install: main-shims']],
    ['opened by the one before', '`install: shims Set it. lube: shims`', ['tag-form: Set it. lube: shims']],
    ['in quotes', "Set it. 'install: main-shims'", ['tag-form: install: main-shims']],
    ['in curly quotes', 'Set it. “torque: bolts to 5 N·m”', ['tag-form: torque: bolts']],
    ['a semicolon', 'Set it. `install; main-shims`', ['tag-form: install']],
    ['a capital and no colon', 'Set it. `Install main-shims`', ['tag-form: Install']],
    ['prose with a colon', 'Check: is it dry? Turn: "once"', []],
    ['quoted words', 'Ask: "record of what?" and note: it turns', []],
  ])('%s', (_, body, expected) => {
    expect(
      said(read(`1. ${body}\n`)).filter((one) => expected.length === 0 || one.startsWith('tag-form')),
    ).toEqual(expected);
  });
});

describe('tags out of place', () => {
  it.each<[string, string, string[]]>([
    ['a heading', '## S `clean: a`\n\n1. a\n', ['tag-outside-step: clean: a']],
    ['prose', 'Do `clean: a` now.\n\n1. a\n', ['tag-outside-step: clean: a']],
    ['a bullet list', '- `clean: a`\n\n1. a\n', ['tag-outside-step: clean: a']],
    ['a list in a bullet list', '- b\n  1. `clean: a`\n\n1. a\n', ['tag-outside-step: clean: a']],
    ['a plain quote', '> `hazard: a`\n\n1. a\n', ['tag-outside-step: hazard: a']],
    ['a hazard in a step', '1. a `hazard: eyes`\n', ['tag-outside-step: hazard: eyes']],
    ['an action in a caution', '> **Danger:** d `clean: a`\n\n1. a\n', ['tag-outside-step: clean: a']],
    [
      'a wrong one',
      'Do `clean: a to b` now.\n\n1. a\n',
      ['tag-outside-step: clean: a to b', 'clause-not-taken: to b'],
    ],
    ['a slip', 'Do `claen: a` now.\n\n1. a\n', ['unknown-verb: claen']],
    ['code of another kind', 'Do `note: a` or `M8` now.\n\n1. a\n', []],
  ])('%s', (_, body, expected) => {
    const procedure = read(body);
    expect(said(procedure)).toEqual(expected);
    expect(procedure.steps.flatMap(({tags}) => tags)).toEqual([]);
  });
});

describe('pictures and references', () => {
  it('are lifted out of prose and steps, references resolved', () => {
    const procedure = read(
      'See ![alt](p.png "Title") here.\n\n![q][q]\n\n## S\n\n1. Look [here][q]. ![r](r.png)\n\n   ![s](s.png)\n\n[q]: q.png "Q"\n[q]: no.png\n',
    );
    expect(blocks(procedure)).toEqual([
      ['', 'prose See here.', 'picture p.png', 'picture q.png'],
      ['S', 'step 1'],
    ]);
    const [step] = procedure.steps;
    expect(step?.pictures.map(({url, alt}) => [url, alt])).toEqual([
      ['r.png', 'r'],
      ['s.png', 's'],
    ]);
    expect(step?.text).toBe('Look here.');
    expect(step?.inline[1]).toMatchObject({type: 'link', url: 'q.png', title: 'Q'});
    expect(step?.more).toEqual([]);
  });
});

describe('sections', () => {
  it('begin with each heading and cover the text', () => {
    const procedure = read('Before.\n\n# A *b*\n\nC\n===\n\n***\n\n| not | a table |\n\n### D\n1. a\n');
    expect(procedure.sections.map(({title, depth}) => [title, depth])).toEqual([
      ['', 0],
      ['A b', 1],
      ['C', 1],
      ['D', 3],
    ]);
    expect(blocks(procedure)[2]).toEqual(['C', 'other ***', 'prose | not | a table |']);
  });
});

describe('what is for some engines only', () => {
  it('is said by tags of headings and steps', () => {
    const {sections, steps, problems} = read(
      '## Sea `only: raw-water` pump `only: keel, mast`\n\n1. Fit it. `only: lamp`\n\n## All\n\n2. b\n',
    );
    const names = (tags: readonly {targets: readonly {id: string}[]}[]) =>
      tags.map(({targets}) => targets.map(({id}) => id));
    expect(sections.map(({title, only}) => [title, names(only)])).toEqual([
      ['Sea pump', [['raw-water'], ['keel', 'mast']]],
      ['All', []],
    ]);
    expect(steps.map((step) => names(tagsOf(step, 'only')))).toEqual([[['lamp']], []]);
    expect(problems).toEqual([]);
  });

  it('leaves other code of a heading alone, and reports other tags', () => {
    const procedure = read('## Set `x` `only: a` `clean: b` `only:`\n\n1. a\n');
    expect(procedure.sections.map(({title}) => title)).toEqual(['Set x clean: b']);
    expect(procedure.problems.map(({name}) => name)).toEqual(['tag-outside-step', 'tag-form']);
  });
});

describe('texts with nothing to follow', () => {
  it.each<[string, string, string[]]>([
    ['empty', '', ['front-matter', 'file-unreadable']],
    ['a byte-order mark', '\uFEFF', ['front-matter', 'file-unreadable']],
    ['prose', `${FRONT}Just prose.\n`, ['file-unreadable']],
    ['NUL', '\0\0', ['front-matter', 'file-unreadable']],
    ['half a surrogate pair', '1. \uD83D `clean: a\uDE00`', ['front-matter', 'tag-form']],
  ])('%s', (_, text, names) => {
    const procedure = readProcedure(source('a.md', text));
    expectSound(procedure);
    expect(procedure.problems.map(({name}) => name)).toEqual(names);
  });

  it.each([
    ['quotes', '> '.repeat(300)],
    ['lists', '1. '.repeat(300)],
    ['emphasis', `${'*a '.repeat(300)}b${'*'.repeat(300)} `],
  ])('%s too deep to walk', (_, opening) => {
    const procedure = readProcedure(source('a.md', `${FRONT}${opening}x\n\n1. Go on.\n`));
    expectSound(procedure);
    expect(procedure.problems.filter(({name}) => name === 'file-unreadable')).toHaveLength(1);
    expect(procedure.steps.at(-1)?.text).toBe('Go on.');
  });
});

describe('generated procedures', () => {
  it('give back their steps, tags and cautions', () => {
    fc.assert(
      fc.property(madeProcedure, ({markdown, steps}) => {
        const procedure = readProcedure(source('a.md', markdown));
        expectSound(procedure);
        expect(said(procedure).filter((line) => !line.startsWith('file-unreadable'))).toEqual([]);
        const tops = procedure.sections.flatMap(({content}) =>
          content.flatMap((b) => (b.type === 'step' ? [b.step] : [])),
        );
        expect(tops.map(madeOf)).toEqual(steps.map(shapeOf));
      }),
      {numRuns: 60},
    );
  });
});

interface Shape {
  readonly tags: readonly string[];
  readonly caution: boolean;
  readonly subs: readonly Shape[];
}

function shapeOf({tags, caution, subs}: Made): Shape {
  return {tags, caution, subs: subs.map(shapeOf)};
}

function madeOf({tags, cautions, steps}: Step): Shape {
  return {tags: tags.map(({raw}) => raw), caution: cautions.length > 0, subs: steps.map(madeOf)};
}

describe('any text', () => {
  it('is read without throwing: every prefix of the example', () => {
    // Every offset of the section that holds most, and some of the others.
    const dense = EXAMPLE.indexOf('## Trial fit');
    for (let end = 0; end < EXAMPLE.length; end += end > dense && end < dense + 200 ? 1 : 13) {
      expectSound(readProcedure(source('a.md', EXAMPLE.slice(0, end))));
    }
  });

  it('is read without throwing: the example after random edits', () => {
    const bit = fc.constantFrom(
      '',
      '`',
      '\n',
      '> ',
      '1. ',
      '# ',
      '[',
      ']',
      '**',
      '   ',
      '\t',
      '---\n',
      '<!--',
      '```\n',
      '\r',
      '💧',
      ':',
      ',',
      '"',
    );
    const edit = fc.record({at: fc.nat(EXAMPLE.length), drop: fc.nat(12), put: bit});
    fc.assert(
      fc.property(fc.array(edit, {minLength: 1, maxLength: 6}), (edits) => {
        const text = edits.reduce(
          (now, {at, drop, put}) => now.slice(0, at) + put + now.slice(at + drop),
          EXAMPLE,
        );
        expectSound(readProcedure(source('a.md', text)));
      }),
      {numRuns: 120},
    );
  });
});
