/** What is on the threads of a fastener, with the friction that its torque is worked out for. Common practice, no source. */
import {expect, it} from 'vitest';
import {type OnThreads, onThreads} from '../../src/findings/worked-figures.js';
import {book, EXAMPLE_SHOP} from '../help/example.js';

const SHOP = EXAMPLE_SHOP.replace('consumables:\n', 'consumables:\n  wax: {use: lubricant, k: 0.15}\n');

it.each<readonly [threads: string, on: readonly OnThreads[]]>([
  ['', []],
  ['threads: unknown', []],
  ['threads: dry', [{what: 'dry', friction: 'dry'}]],
  ['threads: [engine-oil]', [{what: 'engine-oil', friction: 'oiled'}]],
  [
    'threads: [wax, silicone-sealant]',
    [
      {what: 'wax', friction: 0.15},
      {what: 'silicone-sealant', friction: 'not stated'},
    ],
  ],
  ['threads: [steel-hammer, grease]', []],
])('%j', (threads, on) => {
  const {spec} = book({engine: `fasteners:\n  bolts: {${threads}}\n`, shop: SHOP, procedures: {}});
  const bolts = spec.items.get('bolts');
  expect(bolts?.kind === 'fastener' && onThreads(bolts, spec)).toEqual(on);
});
