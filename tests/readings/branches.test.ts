/** Which branches of a sheet its readings call for, on which side of the limits. */
import {expect, it} from 'vitest';
import type {Box, Branch, Form} from '../../src/build/form.js';
import {dueOf} from '../../src/readings/due.js';
import type {Answers} from '../../src/readings/unrolled.js';

const READINGS = ['1:1:front', '1:1:rear'];

const reading = (key: string): Box => ({
  kind: 'reading',
  key,
  step: '1',
  label: key,
  onlyIf: [],
  item: 'play',
  place: key.split(':')[2] ?? '',
  unit: 'mm',
  least: 0.1,
  most: 0.2,
});

const inBranch = (is: Branch['is']): Box => ({
  kind: 'tick',
  key: `2${is}:done`,
  step: `2${is}`,
  label: is,
  onlyIf: [{item: 'play', is, boxes: READINGS}],
});

const STATES = ['out', 'over', 'under', 'in'] as const;
const BRANCHES = STATES.map(inBranch);

const FORM: Form = {
  engine: 'example',
  procedure: 'example',
  title: 'Example',
  revision: 'A',
  fingerprint: '0'.repeat(64),
  boxes: [...READINGS.map(reading), ...BRANCHES],
};

function answered(values: readonly string[]): Answers {
  const said = values.map((value, index) => {
    const box = READINGS[index] ?? '';
    const now = {box, value, by: 'AB', at: '2026-03-01T10:00:00.000Z', index};
    return [box, {history: [now], now}] as const;
  });
  return new Map(said) as unknown as Answers;
}

it.each<readonly [string, readonly string[], readonly Branch['is'][]]>([
  ['nothing read yet', [], []],
  ['all within, the limits among it', ['0.1', '0.2'], ['in']],
  ['one over', ['0.15', '0.21'], ['out', 'over']],
  ['one under', ['0.09', '0.15'], ['out', 'under']],
  ['one over and one under', ['0.21', '0.09'], ['out', 'over', 'under']],
])('%s', (_, values, called) => {
  const due = dueOf(FORM, answered(values));
  expect(STATES.filter((__, index) => BRANCHES.slice(index, index + 1).some(due))).toEqual(called);
});
