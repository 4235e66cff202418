/**
 * Which torque of a fastener claims to be the end of it: the one after which it is left, or slackened.
 * Common practice, no source.
 */
import {expect, it} from 'vitest';
import {lastTorques} from '../../src/build/last-torques.js';
import type {Verb} from '../../src/procedure/verbs.js';

/** `torque bolts front rear`, two procedures parted by `|`. */
function actions(text: string) {
  return text.split(' | ').map((part) => ({
    actions: part.split(', ').map((line) => {
      const [verb = '', id = '', ...places] = line.split(' ');
      return {verb: verb as Verb, item: {id}, places: places.length > 0 ? places : [''], line};
    }),
  }));
}

it.each([
  ['torque nuts', [1]],
  ['torque nuts, torque nuts', [2]],
  ['torque nuts | torque nuts', [2]],
  ['torque nuts, lock nuts', [1]],
  ['lock nuts, torque nuts, install cover', [2]],
  ['torque nuts, loosen nuts', [1]],
  ['torque nuts, torque nuts, loosen nuts, torque nuts', [2, 4]],
  ['torque nuts, remove cover, torque nuts', [3]],
  ['torque nuts, torque bolts', [1, 2]],
  ['torque nuts, loosen bolts, torque nuts', [3]],
  ['torque bolts front rear, torque bolts rear', [1, 2]],
  ['torque bolts front rear, torque bolts front rear', [2]],
  ['torque bolts front, torque bolts rear, loosen bolts rear, torque bolts front rear', [2, 4]],
  ['loosen nuts', []],
])('%s', (text, expected) => {
  const parts = actions(text);
  const last = lastTorques(parts);
  const all = parts.flatMap((part) => part.actions);
  expect(all.flatMap((action, at) => (last.has(action) ? [at + 1] : []))).toEqual(expected);
});
