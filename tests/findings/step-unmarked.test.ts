/** Lines that were meant as steps. CommonMark 0.31, 5.2: a list item begins with a number, a point or bracket, a space. */
import {describe, expect, it} from 'vitest';
import {check} from '../../src/findings/check.js';
import {applyEdits} from '../../src/text/edit.js';
import {book} from '../help/example.js';

const ENGINE = 'parts:\n  pump: {}\n';

function judged(steps: string) {
  const made = book({engine: ENGINE, procedures: {'procedure.md': `\n${steps}\n`}});
  const {findings} = check(made, {today: '2026-06-01'});
  const text = made.procedures[0]?.source.text ?? '';
  const found = findings.filter(({name}) => name === 'step-unmarked');
  const fixed = found.toReversed().reduce((now, {fix}) => applyEdits(now, fix?.edits ?? []), text);
  return {
    says: found.map(({message}) => message),
    body: fixed.slice(fixed.lastIndexOf('---\n') + 5).trimEnd(),
  };
}

const says = (line: number, step: string) =>
  `the line that begins with ${line} is part of step ${step}; write \`${line}. \` for a step of its own`;

describe('a line that was meant as a step', () => {
  it.each<[string, string, readonly string[], string?]>([
    [
      'a forgotten point',
      '1. Set it. `install: pump`\n2 Bend it.',
      [says(2, '1')],
      '1. Set it. `install: pump`\n2. Bend it.',
    ],
    [
      'a forgotten space',
      '1. Set it. `install: pump`\n2.Bend it.',
      [says(2, '1')],
      '1. Set it. `install: pump`\n2. Bend it.',
    ],
    [
      'another mark',
      '1. Set it, `install: pump`\n2: Bend it.',
      [says(2, '1')],
      '1. Set it, `install: pump`\n2. Bend it.',
    ],
    [
      'another mark behind words that end no sentence',
      '1. Set it `install: pump` and then\n2: Bend it.',
      [says(2, '1')],
      '1. Set it `install: pump` and then\n2. Bend it.',
    ],
    [
      'two of them, one indented',
      '1. Set it. `install: pump`\n   2 Bend it.\n3 Look.\n4. Go on.',
      [says(2, '1'), says(3, '1')],
      '1. Set it. `install: pump`\n2. Bend it.\n3. Look.\n4. Go on.',
    ],
    [
      'in sub-steps',
      '1. Set it. `install: pump`\n   1. Look.\n   2 Feel.\n2. Go on.',
      [says(2, '1a')],
      '1. Set it. `install: pump`\n   1. Look.\n   2. Feel.\n2. Go on.',
    ],
    ['a size', '1. Set it with the\n2 Allen keys. `install: pump`', []],
    ['a number of things', '1. Set it. `install: pump`\n2 bolts stay out.', []],
    ['a decimal', '1. Set it. `install: pump`\n2.5 mm stay free.', []],
    ['another number than the next', '1. Set it. `install: pump`\n3 Bend it.', []],
    ['a step', '1. Set it. `install: pump`\n2. Bend it.', []],
  ])('%s', (_, steps, found, mended?: string) => {
    const {says: now, body} = judged(steps);
    expect(now).toEqual(found);
    if (mended !== undefined) expect(body).toBe(mended);
  });
});
