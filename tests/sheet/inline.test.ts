/** What becomes of a stranger's Markdown on its way into a sheet and out of it as HTML. */
import {toHtml} from 'hast-util-to-html';
import type {PhrasingContent} from 'mdast';
import remarkParse from 'remark-parse';
import {unified} from 'unified';
import {describe, expect, test} from 'vitest';
import {blockOf, proseOf} from '../../src/sheet/inline.js';
import {proseNodes} from '../../src/sheet/prose.js';

function inline(markdown: string): PhrasingContent[] {
  const [first] = unified().use(remarkParse).parse(markdown).children;
  return first?.type === 'paragraph' ? first.children : [];
}

const html = (markdown: string) => toHtml(proseNodes(proseOf(inline(markdown))));

describe('prose', () => {
  test.each([
    ['*a* **b** `c`', '<em>a</em> <strong>b</strong> <code>c</code>'],
    ['a\\\nb', 'a<br>\nb'],
    ['less than 5 <thou> of it', 'less than 5 &#x3C;thou> of it'],
    ['a <!-- note to self --> b', 'a  b'],
    ['[x](javascript:alert%281%29)', 'x'],
    ['[x](JaVaScRiPt:a)', 'x'],
    ['[**x**](data:text/html,a)', '<strong>x</strong>'],
    ['[x](04-crankshaft.md)', 'x'],
    ['[x](//example.org)', 'x'],
    ['[x](https://example.org "t")', '<a href="https://example.org">x</a>'],
    ['a ![b](c.png) d', 'a  d'],
    ['&lt;script&gt;', '&#x3C;script>'],
  ])('%s', (markdown, expected) => {
    expect(html(markdown)).toBe(expected);
  });

  test.each([
    ['Keep 0.0015–0.0035 in.', 'Keep <span class="whole">0.0015–0.0035 in</span>.'],
    ['a 1-1/2 in plug', 'a <span class="whole">1-1/2 in</span> plug'],
    ['to 85 lbf·ft, then', 'to <span class="whole">85 lbf·ft</span>, then'],
    ['in passes: 30, 60, 80.', 'in passes: 30, 60, 80.'],
    ['pistons 1 and 4', 'pistons 1 and 4'],
  ])('%s keeps a number and its unit on one line', (markdown, expected) => {
    expect(html(markdown)).toBe(expected);
  });

  test('emphasis nested beyond reason is flattened, not lost', () => {
    let nested: PhrasingContent = {type: 'text', value: 'deep'};
    for (let depth = 0; depth < 50_000; depth++) nested = {type: 'emphasis', children: [nested]};
    const prose = proseOf([nested]);
    expect(JSON.stringify(prose).match(/emphasis/g)?.length).toBeLessThan(20);
    expect(toHtml(proseNodes(prose)).replace(/<[^>]*>/g, '')).toBe('deep');
  });
});

describe('blocks that are neither step nor prose', () => {
  test('a bullet list is one, with its depth', () => {
    expect(blockOf('- a\n  - b\n- *c*')).toEqual({
      type: 'list',
      items: [
        {depth: 0, prose: [{type: 'text', value: 'a'}]},
        {depth: 1, prose: [{type: 'text', value: 'b'}]},
        {depth: 0, prose: [{type: 'emphasis', children: [{type: 'text', value: 'c'}]}]},
      ],
    });
  });

  test.each([
    ['code', '```\n<b>  x\n```', '<b>  x'],
    ['a table', '| a | b |\n|---|---|\n| 1 | 2 |', '| a | b |\n|---|---|\n| 1 | 2 |'],
    ['HTML', '<script>\nx\n</script>', '<script>\nx\n</script>'],
    ['nothing', '', ''],
  ])('%s is printed as it was typed', (_, markdown, text) => {
    expect(blockOf(markdown)).toEqual({type: 'typed', text});
  });
});
