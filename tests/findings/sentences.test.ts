/** Where a sentence of shop prose ends: every mark that ends one, the full stops that end none, and what is left out. */
import {expect, it} from 'vitest';
import {sentences} from '../../src/findings/sentences.js';

it.each<[text: string, ...sentences: string[]]>([
  ['Oil it. Fit it.', 'oil it', 'fit it'],
  [
    'Oil it; fit it: turn it! Check it? Lock it… Stand back',
    'oil it',
    'fit it',
    'turn it',
    'check it',
    'lock it',
    'stand back',
  ],
  ['Oil it – fit it — turn it', 'oil it', 'fit it', 'turn it'],
  ['Oil it\n\nfit it', 'oil it', 'fit it'],
  ['See fig. A there.', 'see fig . a there'],
  ['See fig. 3 there.', 'see fig . 3 there'],
  ['Stud no. A there.', 'stud no . a there'],
  ['Torque to 85 ft. Oil it.', 'torque to 85 ft', 'oil it'],
  ['Torque to 85 ft. by hand.', 'torque to 85 ft . by hand'],
  ['Lap it. by hand.', 'lap it', 'by hand'],
  ['Oil it (not the seat. Never.) well', 'oil it well'],
  ['Oil it) well (and', 'oil it well'],
  ['Oil it.Fit it', 'oil it . fit it'],
  ['. Oil it', 'oil it'],
  ['— Oil it', 'oil it'],
  ['Oil it– fit it', 'oil it – fit it'],
  ['Oil it –fit it', 'oil it', 'fit it'],
  ['Torque to 85 ft. on B there.', 'torque to 85 ft . on b there'],
  ['Torque to 85 ft.  Oil it.', 'torque to 85 ft', 'oil it'],
])('%s', (text, ...expected) => {
  expect(sentences(text).map((words) => words.map((word) => word.text).join(' '))).toEqual(expected);
});

it('cuts what is no prose', () => {
  expect(sentences('oil '.repeat(500)).map(({length}) => length)).toEqual([120]);
});
