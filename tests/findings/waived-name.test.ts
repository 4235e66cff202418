/** A waiver of a wrong name holds for its own step: the other uses of the name are still found, once, and mended together. */
import {expect, it} from 'vitest';
import {check} from '../../src/findings/check.js';
import {book} from '../help/example.js';

const ENGINE = 'parts:\n  block: {given: true}\n  pump: {}\n';

/** Three uses of one slip, of which some steps waive it. */
function found(waiving: readonly number[], because = ' because it comes next year') {
  const steps = [1, 2, 3].map((step) => {
    const waiver = waiving.includes(step) ? ` \`waive: unknown-item by A. Lead${because}\`` : '';
    return `${step}. Set the pump on. \`install: pumpp\`${waiver}\n`;
  });
  const made = book({engine: ENGINE, procedures: {'x.md': steps.join('')}});
  const {findings} = check(made);
  const stepAt = (offset: number) =>
    made.procedures[0]?.steps.find(({span}) => span.start <= offset && offset < span.end)?.number;
  return findings
    .filter(({name}) => name === 'unknown-item' || name.startsWith('waiver'))
    .map(({name, where, fix}) => ({
      name,
      step: stepAt(where.span.start),
      mends: fix?.edits.length,
    }));
}

it.each([
  ['none', [], [{name: 'unknown-item', step: '1', mends: 3}]],
  ['the first', [1], [{name: 'unknown-item', step: '2', mends: 2}]],
  ['a later one', [3], [{name: 'unknown-item', step: '1', mends: 2}]],
  ['all but one', [1, 2], [{name: 'unknown-item', step: '3', mends: 1}]],
  ['all', [1, 2, 3], []],
])('%s of three uses waived', (_, waiving, says) => {
  expect(found(waiving)).toEqual(says);
});

it('a waiver without a reason leaves the name joined', () => {
  expect(found([1], '')).toEqual([
    {name: 'unknown-item', step: '1', mends: 3},
    {name: 'waiver-without-reason', step: '1', mends: undefined},
  ]);
});

it.each([
  ['clean-frist', 'did you mean clean-first?', 'Write clean-first'],
  ['left-uot', 'did you mean left-out?', 'Take the waiver out'],
  ['my-own-word', '`wmark why` lists them all', 'Take the waiver out'],
])('a waiver of %s, which is no finding: %s', (name, hint, title) => {
  const engine =
    'parts:\n  block: {given: true}\n  pump: {closes: [face]}\nsurfaces:\n  face: {on: block, assembly: clean}\n';
  const steps = `1. Set the pump on. \`install: pump\` \`waive: ${name} by A. Lead because it is new\`\n`;
  const {findings} = check(book({engine, procedures: {'x.md': steps}}));
  const stale = findings.filter((one) => one.name === 'waiver-stale');
  expect(stale.map(({message, fix}) => [message, fix?.title])).toEqual([
    [`the waiver names ${name}, which is not a finding; ${hint}`, title],
  ]);
});
