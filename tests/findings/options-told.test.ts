/** Steps that deal only with what some engines have: when they must say so, what is told, and where the mend writes it. */
import {describe, expect, it} from 'vitest';
import {book} from '../help/example.js';
import {toldOf} from '../help/found.js';
import {SILENT} from '../help/stories.js';

const PARTS = `
parts:
  block: {given: true}
  starter: {only: [starter]}
  hinge: {only: [starter, sidecar]}
checks:
  turns: {expect: throws in without a clash, only: [starter]}
`;
const OPTIONS = 'options: {starter: electric starter, sidecar: a sidecar}\n';
const ENGINE = OPTIONS + PARTS;
const ALL =
  '`install: starter` `only: starter`\n2. Do it. `check: turns` `only: starter`\n3. Do it. `install: hinge` `only: starter, sidecar`';

describe('a step for some engines', () => {
  it.each<
    [title: string, steps: string, lines: string, more?: {readonly engine?: string; readonly job?: string}]
  >([
    ['says so', `1. Do it. ${ALL}\n`, SILENT],
    [
      'may stand below one that does',
      '1. Do it. `only: starter`\n   1. Do it. `install: starter`\n   2. Do it. `check: turns`\n2. Do it. `install: hinge` `only: starter`\n',
      SILENT,
    ],
    [
      'may stand below a heading that does',
      '## Starter `only: starter`\n\n1. Do it. `install: starter`\n2. Do it. `check: turns`\n3. Do it. `install: hinge`\n',
      SILENT,
    ],
    [
      'may stand in a procedure that does',
      '---\ntitle: E\nrevision: A\ndate: 2026-03-01\nonly: [starter]\n---\n\n1. Do it. `install: starter`\n2. Do it. `check: turns`\n3. Do it. `install: hinge`\n',
      SILENT,
    ],
    [
      'of either of two options says so',
      '1. Do it. `install: starter` `only: starter`\n2. Do it. `check: turns` `only: starter`\n3. Do it. `install: hinge`\n',
      `
only-missing hinge: only engines with starter or sidecar have hinge, and step 3 deals with nothing else
  fix: Say for which engines the step is: " \`only: starter, sidecar\`" after "…: hinge\`"`,
    ],
    [
      'says so behind the ticks of its tag',
      '1. Do it. `` install: starter ``\n2. Do it. ``check: turns``, twice.\n3. Do it. `install: hinge  ` `only: starter`\n',
      `
only-missing starter: only engines with starter have starter, and step 1 deals with nothing else
  fix: Say for which engines the step is: " \`only: starter\`" after "…arter \`\`"
only-missing turns: only engines with starter have turns, and step 2 deals with nothing else
  fix: Say for which engines the step is: " \`only: starter\`" after "… turns\`\`"`,
    ],
    [
      'says so behind all the spaces of its tag',
      '1. Do it. ``  install: starter   ``\n2. Do it. `check: turns  `.\n3. Do it. `install: hinge` `only: starter`\n',
      `
only-missing starter: only engines with starter have starter, and step 1 deals with nothing else
  fix: Say for which engines the step is: " \`only: starter\`" after "…ter   \`\`"
only-missing turns: only engines with starter have turns, and step 2 deals with nothing else
  fix: Say for which engines the step is: " \`only: starter\`" after "…turns  \`"`,
    ],
    [
      'and for all engines needs not',
      '1. Do it. `install: starter` `inspect: block`\n2. Do it. `check: turns` `only: starter`\n3. Do it. `install: hinge` `only: starter`\n',
      SILENT,
    ],
    [
      'that only hangs on a reading needs not',
      `1. Do it. ${ALL}\n4. Out. \`if: turns is out\` \`step: again\`\n   1. Do it. \`clean: block\`\n`,
      SILENT,
    ],
    ['that deals with nothing needs not', `1. Do it. ${ALL}\n4. Look.\n`, SILENT],
    [
      'needs not once the engine is known',
      '1. Do it. `install: starter`\n2. Do it. `check: turns`\n3. Do it. `install: hinge`\n',
      SILENT,
      {job: 'options: [starter]\n'},
    ],
    [
      'needs not where there are no options',
      '1. Do it. `install: starter`\n2. Do it. `check: turns`\n3. Do it. `install: hinge`\n',
      `
unknown-item starter: starter is not an option of this engine; list it under options: of engine.yaml
unknown-item hinge: starter is not an option of this engine; list it under options: of engine.yaml
unknown-item hinge: sidecar is not an option of this engine; list it under options: of engine.yaml
unknown-item turns: starter is not an option of this engine; list it under options: of engine.yaml`,
      {engine: PARTS},
    ],
  ])('%s', (_, steps, lines, {engine = ENGINE, job} = {}) => {
    expect(['', ...toldOf(book({engine, procedures: {'a.md': steps}, job}))].join('\n').trimEnd()).toBe(
      lines,
    );
  });
});
