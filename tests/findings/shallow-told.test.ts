/** Sub-steps of a branch that are not indented enough. CommonMark 0.31, 5.2: as far as the text of the item they belong to. */
import {expect, it} from 'vitest';
import {check} from '../../src/findings/check.js';
import {applyEdits} from '../../src/text/edit.js';
import {book} from '../help/example.js';

const ENGINE = `
parts:
  pump: {}
fits:
  play: {between: [pump], limits: 0.1–0.2 mm, using: [feeler-gauges], when: {installed: [pump]}}
`;
const BEGIN = '\n1. In. `install: pump`\n2. Read it. `measure: play using feeler-gauges`\n';

/** What is said of the steps that belong to a branch, on which words, and the procedure as the fix writes it. */
function told(rest: string): string[] {
  const made = book({engine: ENGINE, procedures: {'p.md': BEGIN + rest}});
  const text = made.procedures[0]?.source.text ?? '';
  return check(made)
    .findings.filter(({message}) => message.includes('CommonMark'))
    .flatMap(({message, where, fix}) => [
      `${message} @ ${text.slice(where.span.start, where.span.end)}`,
      fix?.title ?? '',
      applyEdits(text, fix?.edits ?? []).slice(text.indexOf(rest)),
    ]);
}

it.each<readonly [string, string, readonly string[]]>([
  [
    'two steps, with all their lines',
    '3. `if: play over` It is slack:\n  1. Take it out,\n    with care.\n\n     And slowly.\n  2. Put it in.\n4. Go on.\n',
    [
      'play: the branch has no steps under it; the steps below it are indented by 2 where its sub-steps want 3, as far as its text begins (CommonMark) @ 1.',
      'Indent them as sub-steps',
      '3. `if: play over` It is slack:\n   1. Take it out,\n     with care.\n\n      And slowly.\n   2. Put it in.\n4. Go on.\n',
    ],
  ],
  [
    'one step',
    '3. `if: play over` It is slack:\n  1. Take it out.\n\n4. Go on.\n',
    [
      'play: the branch has no steps under it; the step below it is indented by 2 where its sub-steps want 3, as far as its text begins (CommonMark) @ 1.',
      'Indent it as sub-steps',
      '3. `if: play over` It is slack:\n   1. Take it out.\n\n4. Go on.\n',
    ],
  ],
  [
    'two digits of ten steps',
    '10) `if: play over` It is slack:\n   11) Take it out.\n',
    [
      'play: the branch has no steps under it; the step below it is indented by 3 where its sub-steps want 4, as far as its text begins (CommonMark) @ 11)',
      'Indent it as sub-steps',
      '10) `if: play over` It is slack:\n    11) Take it out.\n',
    ],
  ],
  [
    'a wide mark',
    '3.  `if: play over` It is slack:\n   1. Take it out.\n',
    [
      'play: the branch has no steps under it; the step below it is indented by 3 where its sub-steps want 4, as far as its text begins (CommonMark) @ 1.',
      'Indent it as sub-steps',
      '3.  `if: play over` It is slack:\n    1. Take it out.\n',
    ],
  ],
  [
    'the first of two, where the second is indented as it should be',
    '3. `if: play over` It is slack:\n  1. Out.\n   2. In.\n',
    [
      'play: the branch has no steps under it; the step below it is indented by 2 where its sub-steps want 3, as far as its text begins (CommonMark) @ 1.',
      'Indent it as sub-steps',
      '3. `if: play over` It is slack:\n   1. Out.\n   2. In.\n',
    ],
  ],
  [
    'one at the end of the file, of two lines',
    '3. `if: play over` It is slack:\n  1. Take it\n out.',
    [
      'play: the branch has no steps under it; the step below it is indented by 2 where its sub-steps want 3, as far as its text begins (CommonMark) @ 1.',
      'Indent it as sub-steps',
      '3. `if: play over` It is slack:\n   1. Take it\n  out.',
    ],
  ],
  ['none beside it', '3. `if: play over` It is slack:\n4. Go on.\n', []],
  ['none in a quotation', '> 3. `if: play over` It is slack:\n>   1. Take it out.\n', []],
  [
    'none of a quotation, and one outside it',
    '> 3. `if: play over` It is slack:\n\n   1. Take it out.\n',
    [],
  ],
  ['none that a quotation holds', '3. `if: play over` It is slack:\n\n> 1. Take it out.\n', []],
  [
    'none of a branch that begins a line lower',
    '3.\n   `if: play over` It is slack:\n  1. Take it out.\n',
    [],
  ],
  [
    'the same with a number in brackets',
    '3.\n   (4. ) `if: play over` It is slack:\n  1. Take it out.\n',
    [],
  ],
  [
    'none where the branch begins in the line of another step',
    '3. 1. `if: play over` It is slack:\n4. Go on.\n',
    [],
  ],
  ['none below another heading', '3. `if: play over` It is slack:\n\n## On\n\n  1. Take it out.\n', []],
  [
    'one step below words',
    '3. `if: play over` It is slack:\n\nWords.\n\n 1. Take it out.\n',
    [
      'play: the branch has no steps under it; the step below it is indented by 1 where its sub-steps want 3, as far as its text begins (CommonMark) @ 1.',
      'Indent it as sub-steps',
      '3. `if: play over` It is slack:\n\nWords.\n\n   1. Take it out.\n',
    ],
  ],
])('%s', (_, rest, lines) => {
  expect(told(rest)).toEqual(lines);
});
