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

it('knows a number that says another once more', () => {
  expect(numbersIn('to 85 N·m (63 lbf·ft)').map(({repeats}) => repeats)).toEqual([false, true]);
});
