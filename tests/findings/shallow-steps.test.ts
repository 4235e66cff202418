/** Branches whose sub-steps are indented too little: which steps are meant, and what their mend writes. Every engine is invented. */
import {expect, it} from 'vitest';
import {check} from '../../src/findings/check.js';
import {applyEdits} from '../../src/text/edit.js';
import {book} from '../help/example.js';

const ENGINE = 'parts:\n  block: {given: true}\nchecks:\n  drag: {expect: turns by hand}\n';

/** What is said of the branch, the words it stands at, the title of the mend, and the text after it. */
function lines(procedure: string): string[] {
  const whole = book({engine: ENGINE, procedures: {'a.md': procedure}});
  const text = whole.procedures[0]?.source.text ?? '';
  return check(whole)
    .findings.filter(({name}) => name === 'rework-missing')
    .flatMap(({message, where: {span}, fix}) => [
      message,
      text.slice(span.start, span.end),
      ...(fix === undefined
        ? []
        : [
            fix.title,
            ...applyEdits(text, fix.edits)
              .slice(text.lastIndexOf('---\n') + 5)
              .split('\n'),
          ]),
    ]);
}

const HEAD = '1. a `check: drag`\n';
const IF = 'If not: `if: drag is out`\n';

it.each<[title: string, procedure: string, lines: readonly string[]]>([
  [
    'one step',
    `${HEAD}2. ${IF} 1. b\n3. c\n`,
    [
      'drag: the branch has no steps under it; the step below it is indented by 1 where its sub-steps want 3, as far as its text begins (CommonMark)',
      '1.',
      'Indent it as sub-steps',
      '1. a `check: drag`',
      '2. If not: `if: drag is out`',
      '   1. b',
      '3. c',
      '',
    ],
  ],
  [
    'two steps, of which one has two paragraphs',
    `${HEAD}2. ${IF}  1. b\n     b\n\n     b\n  2. b\n3. c\n`,
    [
      'drag: the branch has no steps under it; the steps below it are indented by 2 where its sub-steps want 3, as far as its text begins (CommonMark)',
      '1.',
      'Indent them as sub-steps',
      '1. a `check: drag`',
      '2. If not: `if: drag is out`',
      '   1. b',
      '      b',
      '',
      '      b',
      '   2. b',
      '3. c',
      '',
    ],
  ],
  [
    'the last step of the text',
    `${HEAD}2. ${IF}  1. b\n     b`,
    [
      'drag: the branch has no steps under it; the step below it is indented by 2 where its sub-steps want 3, as far as its text begins (CommonMark)',
      '1.',
      'Indent it as sub-steps',
      '1. a `check: drag`',
      '2. If not: `if: drag is out`',
      '   1. b',
      '      b',
    ],
  ],
  [
    'a number of two figures',
    `9. a\n10. a \`check: drag\`\n11. ${IF}   1. b\n12. c\n`,
    [
      'drag: the branch has no steps under it; the step below it is indented by 3 where its sub-steps want 4, as far as its text begins (CommonMark)',
      '1.',
      'Indent it as sub-steps',
      '9. a',
      '10. a `check: drag`',
      '11. If not: `if: drag is out`',
      '    1. b',
      '12. c',
      '',
    ],
  ],
  [
    'steps of two figures',
    `${HEAD}2. ${IF}  10. b\n  11. b\n3. c\n`,
    [
      'drag: the branch has no steps under it; the steps below it are indented by 2 where its sub-steps want 3, as far as its text begins (CommonMark)',
      '10.',
      'Indent them as sub-steps',
      '1. a `check: drag`',
      '2. If not: `if: drag is out`',
      '   10. b',
      '   11. b',
      '3. c',
      '',
    ],
  ],
  ['as far as the text is enough', `${HEAD}2. ${IF}   1. b\n3. c\n`, []],
  [
    'no further than the branch',
    `${HEAD}2. ${IF}3. c\n`,
    ['drag: the branch has no steps under it', 'if: drag is out'],
  ],
  [
    'steps of the next section',
    `${HEAD}2. ${IF}\n## Then\n\n  1. b\n`,
    ['drag: the branch has no steps under it', 'if: drag is out'],
  ],
  ['a branch in a quotation', `${HEAD}\n> 2. ${IF}>   3. b\n`, []],
  [
    'steps in a quotation',
    `${HEAD}2. ${IF}\n > 1. b\n`,
    ['drag: the branch has no steps under it', 'if: drag is out'],
  ],
  ['a list of points', `${HEAD}- ${IF} - b\n- c\n`, []],
  [
    'a wide mark',
    `${HEAD}2.   ${IF}  3.  b\n`,
    [
      'drag: the branch has no steps under it; the step below it is indented by 2 where its sub-steps want 5, as far as its text begins (CommonMark)',
      '3.',
      'Indent it as sub-steps',
      '1. a `check: drag`',
      '2.   If not: `if: drag is out`',
      '     3.  b',
      '',
    ],
  ],
  [
    'with other steps below',
    `${HEAD}2. ${IF}  1. b\n     1. d\n  2. b\n3. c\n`,
    [
      'drag: the branch has no steps under it; the steps below it are indented by 2 where its sub-steps want 3, as far as its text begins (CommonMark)',
      '1.',
      'Indent them as sub-steps',
      '1. a `check: drag`',
      '2. If not: `if: drag is out`',
      '   1. b',
      '      1. d',
      '   2. b',
      '3. c',
      '',
    ],
  ],
])('%s', (_, procedure, said) => {
  expect(lines(procedure)).toEqual(said);
});
