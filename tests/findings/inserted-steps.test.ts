/** Where and how the missing step is written by a fix, in every way in which people write a list; and where none is offered. */
import {expect, it} from 'vitest';
import {check} from '../../src/findings/check.js';
import {applyEdits} from '../../src/text/edit.js';
import {book} from '../help/example.js';

const ENGINE = `
parts:
  block: {given: true}
  pump: {}
fasteners:
  pump-bolts: {holds: [pump], torque: 18 lbf·ft, threads: dry, lock: wire-032}
`;
const FRONT = '---\ntitle: Example\nrevision: A\ndate: 2026-03-01\n---\n';
const ON = 'Set the pump on. `install: pump`';
const TIGHT = 'Tighten it. `torque: pump-bolts`';
const LOCK = 'Lock the pump bolts. `lock: pump-bolts with wire-032`';

it.each<readonly [title: string, text: string, mended: string | undefined]>([
  ['a plain list', `1. ${ON}\n2. ${TIGHT}\n`, `1. ${ON}\n2. ${TIGHT}\n3. ${LOCK}\n`],
  ['brackets, and CRLF', `1) ${ON}\r\n2) ${TIGHT}\r\n`, `1) ${ON}\r\n2) ${TIGHT}\r\n3) ${LOCK}\r\n`],
  ['no end of line at the end', `1. ${ON}\n2. ${TIGHT}`, `1. ${ON}\n2. ${TIGHT}\n3. ${LOCK}`],
  ['a list that is set in', `  1. ${ON}\n  2. ${TIGHT}\n`, `  1. ${ON}\n  2. ${TIGHT}\n  3. ${LOCK}\n`],
  [
    'a second list, and blank lines',
    `1. ${ON}\n\n2. ${TIGHT}\n\n\nText.\n`,
    `1. ${ON}\n\n2. ${TIGHT}\n3. ${LOCK}\n\n\nText.\n`,
  ],
  [
    'a section of its own, with numbers that go on',
    `## One\n\n9. ${ON}\n\n## Two\n\n10. ${TIGHT}\n`,
    `## One\n\n9. ${ON}\n\n## Two\n\n10. ${TIGHT}\n11. ${LOCK}\n`,
  ],
  [
    'a step with a paragraph of its own',
    `1. ${ON}\n2. ${TIGHT}\n\n   Mind the paint.\n`,
    `1. ${ON}\n2. ${TIGHT}\n\n   Mind the paint.\n3. ${LOCK}\n`,
  ],
  ['a sub-step, where none is offered', `1. ${ON}\n   1. ${TIGHT}\n`, undefined],
])('%s', (_, text, mended) => {
  const front = text.includes('\r\n') ? FRONT.replaceAll('\n', '\r\n') : FRONT;
  const whole = `${front}\n${text}`;
  const {findings} = check(book({engine: ENGINE, procedures: {'procedure.md': whole}}));
  const [found, ...more] = findings.filter(({name}) => name === 'left-unlocked');
  expect([found?.name, more]).toEqual(['left-unlocked', []]);
  const after = found?.fix ? applyEdits(whole, found.fix.edits) : undefined;
  expect(after).toBe(mended === undefined ? undefined : `${front}\n${mended}`);
  if (after !== undefined)
    expect(
      check(book({engine: ENGINE, procedures: {'procedure.md': after}})).findings.map(({name}) => name),
    ).not.toContain('left-unlocked');
});
