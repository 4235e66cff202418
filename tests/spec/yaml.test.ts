/** YAML from people and from strangers: what is refused, where, and that nothing expands or recurses without end. */
import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {plainValue, valueAt} from '../../src/spec/tree.js';
import {readYaml} from '../../src/spec/yaml.js';
import {positionAt, slice, source} from '../../src/text/source.js';

function read(text: string) {
  const from = source('x.yaml', text);
  const {tree, problems, broken} = readYaml(from);
  const shown = problems.map(({where, says, hint}) => {
    const {line, column} = positionAt(from, where.span.start);
    return `${line}:${column} ${says} (${hint})`;
  });
  return {from, tree, problems, broken, shown};
}

describe('values keep the text that was written', () => {
  const cases: readonly [string, string, string][] = [
    ['a: 012', 'number', '012'],
    ['a: 1e3', 'number', '1e3'],
    ['a: 0x1F', 'number', '0x1F'],
    ['a: 2026-01-15', 'text', '2026-01-15'],
    ['a: "85 lbf·ft"', 'text', '85 lbf·ft'],
    ['a: off', 'text', 'off'],
    ['a: yes', 'text', 'yes'],
    ['a: true', 'boolean', 'true'],
    ['a: ~', 'empty', ''],
    ['a:', 'empty', ''],
    ['a: >-\n  two\n  lines', 'text', 'two lines'],
  ];
  it.each(cases)('%s', (text, type, value) => {
    const node = valueAt(read(text).tree, 'a');
    expect(node).toMatchObject({type, text: value});
  });

  it('knows where a text stands unaltered, plain or in quotes, and where it does not', () => {
    const from = source(
      'x.yaml',
      'plain: 85 in\nquoted: "85 in"\nescaped: "85\\x20in"\nfolded: >-\n  85\n  in\n',
    );
    const {tree} = readYaml(from);
    const exact = ['plain', 'quoted', 'escaped', 'folded'].map((key) => {
      const node = valueAt(tree, key);
      return node && 'exact' in node ? node.exact : undefined;
    });
    expect(exact).toEqual([from.text.indexOf('85'), from.text.indexOf('"85 in') + 1, undefined, undefined]);
  });

  it('gives every key and value its span, in texts with CR LF too', () => {
    const {from, tree} = read('parts:\r\n  camshaft: {name: cam shaft}\r\n');
    const item = valueAt(tree, 'parts');
    const entry = item?.type === 'map' ? item.entries[0] : undefined;
    expect(entry && slice(from, entry.keyWhere.span)).toBe('camshaft');
    expect(entry && slice(from, entry.value.where.span)).toBe('{name: cam shaft}');
  });
});

describe('faults have a place and say what to do', () => {
  const cases: readonly [string, string, string][] = [
    [
      'a tab as indentation',
      'a:\n\tb: 1\n',
      '2:1 a tab stands where the indentation is (indent with spaces)',
    ],
    ['a key twice', 'a: 1\nb: 2\na: 3\n', '3:1 the key a stands here a second time (keep one of the two)'],
    [
      'a key twice in brackets',
      'x: {on: 1, on: 2}\n',
      '1:12 the key on stands here a second time (keep one of the two)',
    ],
    [
      'an alias',
      'a: &x [1]\nb: *x\n',
      '2:4 an alias stands for a value that is written elsewhere (write the value itself here)',
    ],
    [
      'a second document',
      'a: 1\n---\nb: 2\n',
      '2:1 a second document starts where the file should go on (take the line --- out, or put what follows in a file of its own)',
    ],
    [
      'a tag',
      'a: !ruby/object x\n',
      '1:4 a word that begins with ! is a tag of YAML (put the value in quotes)',
    ],
    [
      'two colons on a line',
      'note: limits: max\n',
      '1:7 a second colon or dash on one line (put the value in quotes)',
    ],
    [
      'a key without its colon',
      'a: b\ncount 3 # of it\nc: d\n',
      '2:1 there is no colon behind count (write count: 3)',
    ],
    [
      'a key without its colon in the last line',
      'a: b\ncount 3\n',
      '2:1 there is no colon behind count (write count: 3)',
    ],
    [
      'a key without its colon and value',
      'parts\n  a: {}\n',
      '1:1 there is no colon behind parts (write parts:)',
    ],
    [
      'a key without its colon before brackets',
      'p:\n  a {given: true} # x\n',
      '2:3 there is no colon behind a (write a: {given: true})',
    ],
    ['a colon without its space', 'p:\n  id:x\n  b: c\n', '2:3 there is no space behind id: (write id: x)'],
    [
      'a line that no key begins',
      'a: b\n(see below)\nc: d\n',
      '2:1 this line has no key with a colon and a space (put a space after the colon, or see that the line above is complete)',
    ],
    ['a key that is a list', '[a]: 1\n', '1:1 this cannot be a key (write a plain word)'],
    ['a key that no object can carry', '__proto__: 1\n', '1:1 this cannot be a key (write a plain word)'],
  ];
  it.each(cases)('%s', (_, text, shown) => {
    expect(read(text).shown).toContain(shown);
  });

  it('does not judge what stands beside a key without its colon', () => {
    expect(read('p:\n  a {given: true}\n').broken).toBe(true);
    expect(read('p:\n  a{: true\n').broken).toBe(false);
  });

  it('goes on after a fault: the first of two keys counts', () => {
    const {tree, broken} = read('a: 1\na: 2\nb: 3\n');
    expect(broken).toBe(false);
    expect(tree && plainValue(tree)).toEqual({a: 1, b: 3});
  });

  const QUOTE = 'the quote that opens here is not closed on its line (close it behind the text)';
  const BRACKET = 'the bracket that opens here is never closed (close it with ] or }, as it was opened)';

  it.each<readonly [string, string, readonly string[]]>([
    ['a quote, to the end of the text', 'e:\n  name: "My engine\n\nf: {a: b}\n', [`2:9 ${QUOTE}`]],
    ['a single quote', "e:\n  name: 'My engine\nf: g\n", [`2:9 ${QUOTE}`]],
    ['a quote that the next one closes', 'a: {name: "Cap}\nb: {name: "Nut"}\n', [`1:11 ${QUOTE}`]],
    ['a quote that the next line closes', 'a:\n  b: "Cap\n  c: "Nut"\n', [`2:6 ${QUOTE}`]],
    [
      'a quote that another kind of fault stands before',
      'a: "x" y\nb: "Cap\nc: d\n',
      [
        '1:8 not YAML: unexpected scalar at node end (check indentation, colons, brackets and quotes from the line above on)',
        `2:4 ${QUOTE}`,
      ],
    ],
    ['a list', 'a: [1, 2\nb: 3\n', [`1:4 ${BRACKET}`]],
    ['a list at the end of the text', 'a: b\nc: [1, 2\n', [`2:4 ${BRACKET}`]],
    ['a map among others', 'p:\n  a: {name: x\n  b: {name: y}\n  c: [z]\n', [`2:6 ${BRACKET}`]],
    ['a list in a map', 'p:\n  a: {at: [1, 2}\n  b: c\n', [`2:11 ${BRACKET}`]],
    ['both', 'p:\n  a: {at: [1, 2\n  b: c\n', [`2:6 ${BRACKET}`, `2:11 ${BRACKET}`]],
    ['a list that another bracket closes', 'a: [b, c}\nd: [e]\n', [`1:4 ${BRACKET}`]],
  ])('says where it was opened what is never closed: %s', (_, text, says) => {
    const {shown, broken} = read(text);
    expect(shown).toEqual(says);
    expect(broken).toBe(true);
  });

  it('lets a text in quotes go on over lines, and quotes in a plain text or a comment be', () => {
    expect(read('a: "one\n  two"\nb: it\'s 3" # a "\nc: >-\n  "x\n  y\n').shown).toEqual([]);
  });

  it('tells a fault on the far side of a text in quotes as what it is', () => {
    expect(read('a: "one\n  two"\nb: c\nd: "x" y\n').shown[0]).toMatch(/^4:8 not YAML/);
  });

  it('shows the first faults of many, for the rest are their echo', () => {
    expect(read('a: *b\n'.repeat(500)).problems.length).toBe(20);
  });
});

describe('texts made to break readers', () => {
  it('refuses a text of two mebibytes before it is parsed', () => {
    const {problems, tree} = read(`a: "${'x'.repeat(2 * 1024 * 1024)}"\n`);
    expect(tree).toBeUndefined();
    expect(problems).toMatchObject([{says: expect.stringContaining('at most 1048576 are read')}]);
  });

  it.each([
    ['flow lists', (depth: number) => `a: ${'['.repeat(depth)}${']'.repeat(depth)}\n`],
    ['flow maps', (depth: number) => `${'{a: '.repeat(depth)}1${'}'.repeat(depth)}\n`],
    ['block lists', (depth: number) => `${'- '.repeat(depth)}x\n`],
    ['explicit keys', (depth: number) => `${'? '.repeat(depth)}x\n`],
  ])('counts the depth of %s: 50 are read, 100,000 refused', (_, made) => {
    expect(read(made(50)).shown.filter((one) => one.includes('nested'))).toEqual([]);
    const deep = read(made(100_000));
    expect(deep.problems).toMatchObject([{says: 'maps and lists are nested more than 64 deep'}]);
    expect(deep.problems[0]?.where.span.start).toBeLessThan(1000);
  });

  it('stops at 64 levels and no sooner', () => {
    const nested = (depth: number) => `${'['.repeat(depth)}${']'.repeat(depth)}`;
    expect(read(nested(64)).problems).toEqual([]);
    expect(read(nested(65)).problems).toHaveLength(1);
  });

  it('expands no alias, so that ten lines cannot stand for a thousand million values', () => {
    const lines = Array.from(
      {length: 9},
      (_, index) => `a${index + 1}: &a${index + 1} [${`*a${index}, `.repeat(9)}]`,
    );
    const {problems, tree} = read(`a0: &a0 [x]\n${lines.join('\n')}\n`);
    expect(problems).toHaveLength(20);
    expect(JSON.stringify(tree).length).toBeLessThan(20_000);
  });

  it('finds equal keys among very many in one pass', () => {
    const keys = Array.from({length: 20_000}, (_, index) => `k${index}: 1\n`).join('');
    expect(read(`${keys}k7: 2\n`).shown).toEqual([
      '20001:1 the key k7 stands here a second time (keep one of the two)',
    ]);
  });
});

describe('for any text at all', () => {
  const pieces = fc.constantFrom(
    'a: ',
    '- ',
    '\n',
    '  ',
    '\t',
    '{',
    '}',
    '[',
    ']',
    '"',
    "'",
    '&x ',
    '*x',
    '!t ',
    '|',
    '>',
    '#',
    '? ',
    ': ',
    ',',
    '---',
    '%',
    '\r',
    '\u0000',
    'é',
    '😀',
  );
  it('gives spans inside the text, in order, and never throws', () => {
    fc.assert(
      fc.property(fc.array(fc.oneof(pieces, fc.string()), {maxLength: 60}), (parts) => {
        const {from, problems} = read(parts.join(''));
        for (const {where} of problems) {
          expect(where.span.start).toBeGreaterThanOrEqual(0);
          expect(where.span.end).toBeGreaterThanOrEqual(where.span.start);
          expect(where.span.end).toBeLessThanOrEqual(from.text.length);
        }
      }),
      {numRuns: 1000},
    );
  });
});
