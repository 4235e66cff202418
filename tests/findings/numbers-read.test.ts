/** Which amounts are read in shop prose, and the clause and sentence that say what each is of. Values are invented. */
import {expect, it} from 'vitest';
import {numbersIn} from '../../src/findings/prose-numbers.js';
import {formatAmount} from '../../src/quantity/format.js';

it.each<[text: string, ...numbers: string[]]>([
  ['fit 2 in each bore'],
  ['fit 2 in deep', '2 in'],
  ['fit 2 in (the bore)', '2 in'],
  ['fit 2 in. Then the rest', '2 in'],
  ['fit 0.5 in the bore', '0.5 in'],
  ['fit 2 mm each side', '2 mm'],
  ['between 4 and 8 thou', '4–8 thou'],
  ['4 and 8 thou', '4 thou', '8 thou'],
  ['4 to 8 thou', '4–8 thou'],
  ['8 to 4 thou', '8 thou', '4 thou'],
  ['8 to 8 thou', '8–8 thou'],
  ['20, 40 and then 60 N·m', '20 N·m', '40 N·m', '60 N·m'],
  ['step 3 of 4'],
  ['fit 2 in (on each side)', '2 in'],
  ['fit 2 in  each bore'],
  ['1,2 mm'],
  ['4–1,2 thou'],
  ['4–8 bolts'],
  ['4 mm–8 bolts', '4 mm'],
  ['4 mm–8 N·m', '4 mm'],
  ['20, 40–60 N·m', '40–60 N·m'],
  ['20 bolts to 40 N·m', '40 N·m'],
  ['from left 4 and 8 thou', '4 thou', '8 thou'],
  ['between  4 and 8 thou', '4–8 thou'],
  ['20 and then next last to 40 N·m', '20 N·m', '40 N·m'],
  ['20 and then, next last to 40 N·m', '40 N·m'],
])('%s', (text, ...numbers) => {
  expect(numbersIn(text).map(({amount}) => formatAmount(amount))).toEqual(numbers);
});

it.each<[text: string, clause: string, sentence: string, after: string]>([
  ['Fit it. Torque to 85 N·m, dry. Stop.', ' torque to 85 n·m', ' torque to 85 n·m, dry', ', dry'],
  ['Leave it for 24 h. Run it up.', 'leave it for 24 h', 'leave it for 24 h', ''],
  ['Leave it for 24 h. \n', 'leave it for 24 h', 'leave it for 24 h', ''],
  ['Drill 5 in. deep. Stop.', 'drill 5 in. deep', 'drill 5 in. deep', ' deep'],
  ['Oil it; first, torque to 85 N·m: dry', ' torque to 85 n·m', ' first, torque to 85 n·m', ''],
  ['A, b, to 85 N·m by hand, dry', ' to 85 n·m by hand', 'a, b, to 85 n·m by hand, dry', ' by hand, dry'],
])('%s: its clause and sentence', (text, clause, sentence, after) => {
  expect(numbersIn(text)).toMatchObject([{clause, sentence, after, repeats: false}]);
});

it.each<[text: string, ...repeats: boolean[]]>([
  ['to 85 N·m (63 lbf·ft)', false, true],
  ['to 85 N·m ( 63 lbf·ft)', false, true],
  ['(dry) to 85 N·m', false],
  ['(now 85 N·m', false],
])('%s: whether a number says another once more', (text, ...repeats) => {
  expect(numbersIn(text).map((number) => number.repeats)).toEqual(repeats);
});

it('knows ends in words, and numbers whose unit stands behind another', () => {
  const flags = (text: string) => numbersIn(text).map(({worded, borrowed}) => ({worded, borrowed}));
  expect(flags('between 4 and 8 thou')).toEqual([{worded: true, borrowed: undefined}]);
  expect(flags('between 4 to 8 thou')).toEqual([{worded: undefined, borrowed: undefined}]);
  expect(flags('20 and 40 N·m')).toEqual([
    {worded: undefined, borrowed: true},
    {worded: undefined, borrowed: undefined},
  ]);
});

it('lends its unit to no more than the passes of a long list', () => {
  const list = Array.from({length: 20}, (_, at) => at + 1).join(', ');
  expect(numbersIn(`${list} N·m`)).toHaveLength(14);
});

it('looks no farther back than words reach', () => {
  const [first] = numbersIn(`${'x'.repeat(300)} 85 N·m`);
  expect(first?.clause).toHaveLength(246);
  const [near] = numbersIn(`to 85 N·m ${'x'.repeat(300)}`);
  expect(near?.clause.slice(0, 9)).toBe('to 85 n·m');
});
