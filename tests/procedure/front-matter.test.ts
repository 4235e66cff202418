/** Front matter: what it takes, what is wrong with it, and where that is said. */
import {describe, expect, it} from 'vitest';
import type {Front} from '../../src/procedure/model.js';
import {readProcedure} from '../../src/procedure/read.js';
import {applyEdits} from '../../src/text/edit.js';
import type {Problem} from '../../src/text/problem.js';
import {slice, source} from '../../src/text/source.js';

const STEP = '\n1. Turn it. `turn: crankshaft`\n';

function read(text: string): {front: Front; problems: readonly Problem[]; said: string[]} {
  const from = source('a.md', text);
  const {front, problems} = readProcedure(from);
  const said = problems.map(({name, where, says}) => `${name}: ${says} <${slice(from, where.span)}>`);
  return {front, problems, said};
}

/** Front matter of these lines. */
function head(...lines: string[]): string {
  return `---\n${lines.join('\n')}\n---\n${STEP}`;
}

const RIGHT = ['title: T', 'revision: A', 'date: 2026-02-28'];

describe('front matter that is right', () => {
  it.each([
    ['90 min', 90, 'min'],
    ['1.5 h', 1.5, 'h'],
    ['0 h', 0, 'h'],
  ])('has a time of work, %s', (text, value, symbol) => {
    expect(read(head(...RIGHT, `time: ${text}`))).toMatchObject({
      said: [],
      front: {time: {value, unit: {symbol}}},
    });
  });

  it.each(['90', '3 kg', '-2 h', '1–2 h', 'long'])('has no time that is %s', (text) => {
    const {said, front, problems} = read(head(...RIGHT, `time: ${text}`));
    expect(said).toEqual([expect.stringMatching(/^front-matter: time does not take .* <.*>$/)]);
    expect(problems[0]?.hint).toBe(
      'it takes how long somebody works on it, without its waits, with a unit: 90 min',
    );
    expect(front.time).toBeUndefined();
  });

  it('is read, texts as they are written', () => {
    const {front, said} = read(
      head(
        'title: "Crank: main bearings"',
        'revision: 1.10',
        'date: 2024-02-29',
        'author: A. F.',
        'approved: lead',
        'only: [one, two]',
        'untagged: [the lamp, trestle]',
      ),
    );
    expect(said).toEqual([]);
    expect(front).toMatchObject({title: 'Crank: main bearings', revision: '1.10', date: '2024-02-29'});
    expect(front).toMatchObject({author: 'A. F.', approved: 'lead', only: [{id: 'one'}, {id: 'two'}]});
    expect(front.untagged?.map(({words}) => words)).toEqual(['the lamp', 'trestle']);
  });

  it.each([
    ['\n', ''],
    ['\r\n', ''],
    ['\r', ''],
    ['\n', '\uFEFF'],
  ])('with lines ended by %j after %j', (ending, mark) => {
    const {front, said} = read(mark + head(...RIGHT, 'only: one').replaceAll('\n', ending));
    expect(said).toEqual([]);
    expect(front).toMatchObject({title: 'T', revision: 'A', date: '2026-02-28', only: [{id: 'one'}]});
    expect(front.span).toEqual({
      start: 0,
      end:
        head(...RIGHT, 'only: one')
          .replaceAll('\n', ending)
          .indexOf('1.') -
        2 * ending.length,
    });
  });

  it('may hold a comment that looks like a heading', () => {
    expect(read(head('# A comment', ...RIGHT)).said).toEqual([]);
  });
});

describe('front matter that is wrong', () => {
  it.each<[string, string, string[]]>([
    ['none', STEP, ['front-matter: the procedure has no front matter <>']],
    ['never closed', `---\ntitle: T\n${STEP}`, ['front-matter: the front matter is never closed <--->']],
    [
      'opened on the last line',
      '---',
      [
        'front-matter: the front matter is never closed <--->',
        'file-unreadable: the procedure has no steps <>',
      ],
    ],
    ['empty', head(), ['title', 'revision', 'date'].map((key) => `front-matter: ${key} is missing <--->`)],
    ['a key missing', head('title: T', 'date: 2026-01-01'), ['front-matter: revision is missing <--->']],
    [
      'a mistyped key',
      head(...RIGHT, 'auther: me'),
      ['front-matter: "auther" is no key of the front matter <auther>'],
    ],
    [
      'a colon forgotten, told once',
      head('title: T', 'revision A', 'date: 2026-01-01', 'author R. Tamsin'),
      [
        'front-matter: there is no colon behind revision <revision A>',
        'front-matter: there is no colon behind author <author R. Tamsin>',
      ],
    ],
    [
      'a strange key',
      head(...RIGHT, 'colour: red'),
      ['front-matter: "colour" is no key of the front matter <colour>'],
    ],
    [
      'an empty value',
      head('title:', 'revision: A', 'date: 2026-01-01'),
      ['front-matter: title says nothing that it takes <>'],
    ],
    [
      'a title that is a list',
      head('title: [a]', 'revision: A', 'date: 2026-01-01'),
      ['front-matter: title says nothing that it takes <[a]>'],
    ],
    [
      'a day that is none',
      head('title: T', 'revision: A', 'date: 2026-02-29'),
      ['front-matter: date does not take "2026-02-29": February 2026 has 28 days <2026-02-29>'],
    ],
    [
      'another order',
      head('title: T', 'revision: A', 'date: 28/02/2026'),
      ['front-matter: date does not take "28/02/2026" <28/02/2026>'],
    ],
    [
      'a time of day',
      head('title: T', 'revision: A', 'date: 2026-02-28T10:00'),
      ['front-matter: date does not take "2026-02-28T10:00" <2026-02-28T10:00>'],
    ],
    ['no keys', head('just words'), ['front-matter: the front matter is no list of keys and values <--->']],
    [
      'a key twice',
      head(...RIGHT, 'title: U'),
      ['front-matter: the key title stands here a second time <title>'],
    ],
    [
      'an alias',
      head('title: &a T', 'revision: *a', 'date: 2026-01-01'),
      [
        'front-matter: revision says nothing that it takes <*a>',
        'front-matter: an alias stands for a value that is written elsewhere <*a>',
      ],
    ],
  ])('%s', (_, text, said) => {
    expect([...read(text).said].sort()).toEqual([...said].sort());
  });

  it.each([
    ['a tab', head('title:\tT', '\tx: y')],
    ['an open bracket', head('title: [', ...RIGHT)],
    ['brackets without end', head(`title: ${'['.repeat(5000)}`)],
    ['nesting without end', head(`${'- '.repeat(5000)}x`)],
    ['too much', head(...RIGHT, `author: ${'x'.repeat(70_000)}`)],
    ['equal keys without end', head(...Array.from({length: 9000}, () => 'a: 1'))],
    ['anchors that expand', head('a: &a [x, x]', 'b: &b [*a, *a]', 'c: [*b, *b]')],
    ['a control character', head('title: a\u0000b')],
  ])('%s: a problem, and the steps are read', (_, text) => {
    const {problems} = read(text);
    expect(problems.length).toBeGreaterThan(0);
    expect(problems.length).toBeLessThan(40);
    expect(new Set(problems.map(({name}) => name))).toEqual(new Set(['front-matter']));
    expect(readProcedure(source('a.md', text)).steps).toHaveLength(1);
  });

  it.each([
    ['date: 2026-2-8', 'date: 2026-02-08'],
    ['date: 2026/02/08', 'date: 2026-02-08'],
  ])('%s is mended to %s', (wrong, right) => {
    const text = head('title: T', 'revision: A', wrong);
    const fixes = read(text).problems.flatMap(({fix}) => fix ?? []);
    expect(fixes.map(({edits}) => applyEdits(text, edits))).toEqual([head('title: T', 'revision: A', right)]);
  });

  it('mends a mistyped key', () => {
    const fixes = read(head(...RIGHT, 'auther: me')).problems.flatMap(({fix}) => fix ?? []);
    expect(fixes.map(({edits}) => edits.map(({text}) => text))).toEqual([['author']]);
  });

  it('reads a date that is none as no date', () => {
    expect(read(head('title: T', 'revision: A', 'date: soon')).front.date).toBe('');
  });
});
