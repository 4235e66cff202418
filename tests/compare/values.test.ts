/** How one stated value stands to the one before it, where no whole book is needed to see it. */
import {expect, test} from 'vitest';
import type {Stricter} from '../../src/compare/demand.js';
import {judged} from '../../src/compare/values.js';
import {amount} from '../help/amount.js';

function demanded(text: string, stricter: Stricter) {
  return {type: 'amount', amount: amount(text), stricter} as const;
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
  const found = judged(demanded(before, stricter), demanded(now, stricter)).map(({effect}) => effect);
  expect(found).toEqual(effects);
});
