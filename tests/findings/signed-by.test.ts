/** Who may give a second signature: not the one who did the work, nor the one who wrote the words (14 CFR 121.371(c)). */
import {expect, it} from 'vitest';
import {book} from '../help/example.js';
import {toldOf} from '../help/found.js';

const ENGINE = `
parts:
  block: {given: true}
checks:
  turns: {expect: freely}
hold-points:
  first: {asks: [turns], by: shop lead}
  last: {asks: [first, turns], by: shop lead}
  open: {asks: [turns]}
`;

const DID = 'who did what is to be looked at (turns)';

it.each<[title: string, front: string, tags: readonly string[], says: readonly string[]]>([
  ['another than who checked', '', ['check: turns by A. Penrose', 'witness: first by J. Orrin'], []],
  [
    'who checked',
    '',
    ['check: turns by A. Penrose', 'witness: first by A. Penrose'],
    [`first is signed by A. Penrose, ${DID}`],
  ],
  [
    'who checked, written otherwise',
    '',
    ['check: turns by a  penrose.', 'witness: first by A. Penrose'],
    [`first is signed by A. Penrose, ${DID}`],
  ],
  [
    'the role that checked, by the specification',
    '',
    ['check: turns by shop lead', 'witness: first'],
    [`first is signed by shop lead, ${DID}`],
  ],
  [
    'who signed before',
    '',
    ['check: turns', 'witness: first by A. Penrose', 'witness: last by A. Penrose'],
    [],
  ],
  ['nobody that is named', '', ['check: turns by A. Penrose', 'witness: open'], []],
  ['who checked what nobody says', '', ['check: turns', 'witness: first by A. Penrose'], []],
  [
    'who wrote the procedure',
    'author: R. Tamsin, shop lead\n',
    ['check: turns', 'witness: first by R. Tamsin'],
    ['first is signed by R. Tamsin, who wrote the procedure'],
  ],
  [
    'one whose name is written in one word with the letter of another',
    'author: R. Tamsin, shop lead\n',
    ['check: turns', 'witness: first by RTamsin'],
    [],
  ],
  [
    'one whose name is another, though capitals hide it',
    'author: J. Groß\n',
    ['check: turns', 'witness: first by J. Gross'],
    [],
  ],
  [
    'the role of who wrote it',
    'author: R. Tamsin, shop lead\n',
    ['check: turns', 'witness: first by shop lead'],
    [],
  ],
  [
    'the role of who wrote it, by the specification',
    'author: shop lead\n',
    ['check: turns', 'witness: first'],
    [],
  ],
  [
    'who approved it',
    'approved: R. Tamsin\n',
    ['check: turns', 'witness: first by R. Tamsin'],
    ['first is signed by R. Tamsin, who approved the procedure'],
  ],
])('%s', (_, front, tags, says) => {
  const steps = tags.map((tag, index) => `${index + 1}. Do it. \`${tag}\`\n`);
  const text = `---\ntitle: T\nrevision: A\ndate: 2026-03-01\n${front}---\n\n${steps.join('')}`;
  const all = toldOf(book({engine: ENGINE, procedures: {'procedure.md': text}}));
  const its = all.filter((line) => line.startsWith('hold-by-same-person'));
  expect(its.map((line) => line.slice(line.indexOf(': ') + 2))).toEqual(says);
});
