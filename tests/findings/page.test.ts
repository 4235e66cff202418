/** The page of a finding: each block in its place, and none where there is nothing to show. */
import {expect, it} from 'vitest';
import type {Example, FindingKind} from '../../src/findings/model.js';
import {findingList, findingPage, findingTable} from '../../src/findings/page.js';

const KIND = {
  name: 'one',
  group: 'order',
  severity: 'error',
  summary: 'a | b',
  why: 'Because.',
  source: 'Common practice',
} as FindingKind;

/** The fences of a page, and the headings that lead to them. */
function shown(example?: Example): string[] {
  const page = findingPage({...KIND, ...(example && {example})});
  const [, body = ''] = page.split('## Why\n\nBecause.\n\n');
  return body.slice(0, body.indexOf('## How to silence it')).split('\n\n').filter(Boolean);
}

const ENGINE = ['## engine.yaml of the example', '```yaml\ne\n```'];
const WRONG = ['## Wrong', '```markdown\nw\n```', '## Right'];

it.each<[string, Example | undefined, readonly string[]]>([
  ['no example', undefined, []],
  ['a text put right', {engine: 'e\n', wrong: 'w', right: 'r'}, [...ENGINE, ...WRONG, '```markdown\nr\n```']],
  [
    'a specification put right',
    {engine: 'e', wrong: 'w', right: 'w', rightEngine: 'E', rightShop: 'S', rightJob: 'J'},
    [...ENGINE, ...WRONG, '```yaml\nS\n```', '```yaml\nE\n```', '```yaml\nJ\n```'],
  ],
  [
    'a shop and a job',
    {shop: 's', engine: 'e', job: 'j', wrong: 'w', right: 'w'},
    [
      '## shop.yaml of the example',
      '```yaml\ns\n```',
      ...ENGINE,
      '## The job of the example, below its head',
      '```yaml\nj\n```',
      ...WRONG,
    ],
  ],
  [
    'a text with fences in it',
    {engine: 'e', wrong: 'w', right: '````x````'},
    [...ENGINE, ...WRONG, '`````markdown\n````x````\n`````'],
  ],
])('shows %s', (_, example, blocks) => {
  expect(shown(example)).toEqual(blocks);
});

it('says how to silence it, at one step and in the whole shop', () => {
  expect(findingPage(KIND).split('## How to silence it')[1]).toBe(`

At one step, with a reason that is printed on the sheet: write \`waive: one by WHO because …\` into the step.
In the whole shop: \`severity: {one: off}\` in shop.yaml (or \`warning\`, \`information\`).

## Source

Common practice.
`);
});

it('lists each finding under its own group only', () => {
  const other = {...KIND, name: 'other', group: 'reading', severity: 'warning', summary: 'c'} as FindingKind;
  const two = {...KIND, name: 'two'};
  expect(findingList([KIND, other, two])).toBe(
    'order\n  one    error        a | b\n  two    error        a | b\n\nreading\n  other  warning      c\n',
  );
  expect(findingTable([KIND, other]).split('\n')).toEqual([
    '| finding | group | severity | what it is |',
    '| --- | --- | --- | --- |',
    '| <a id="one"></a>`one` | order | error | a \\| b |',
    '| <a id="other"></a>`other` | reading | warning | c |',
  ]);
});
