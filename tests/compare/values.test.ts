/** How one stated value stands to the one before it, where no whole book is needed to see it. */
import {expect, test} from 'vitest';
import type {Stricter} from '../../src/compare/demand.js';
import {judged} from '../../src/compare/values.js';
import {readAmount} from '../../src/quantity/parse.js';

function amount(text: string, stricter: Stricter) {
  const reading = readAmount(text);
  if (!reading.ok) throw new Error(reading.fault.says);
  return {type: 'amount', amount: reading.amount, stricter} as const;
}

test.each<[before: string, now: string, stricter: Stricter, effects: string[]]>([
  ['24 h', '12 h', 'more', ['weakened']],
  ['24 h', '48 h', 'more', ['strengthened']],
  ['1 lbf·ft', '2 lbf·ft', 'less', ['weakened']],
  ['24 h', '1 day', 'more', ['reworded']],
  // Two upper bounds say nothing of how long it is left at least.
  ['max 24 h', 'max 12 h', 'more', ['changed']],
  ['max 24 h', 'max 48 h', 'less', ['changed']],
  ['0.002–0.006 in', '0.002–0.008 in', 'narrower', ['weakened']],
])('%s, now %s, %s being stricter', (before, now, stricter, effects) => {
  const found = judged(amount(before, stricter), amount(now, stricter)).map(({effect}) => effect);
  expect(found).toEqual(effects);
});
