/** A system that is filled, drained and filled again. Common practice, no source. */
import {describe, expect, it} from 'vitest';
import {found} from '../help/found.js';

const ENGINE = `
systems:
  oil: {joints: [], closed-by: [], with: [flushing-oil, engine-oil]}
hold-points:
  ready: {asks: [oil], by: shop lead}
`;

const SHOP = `
shop: {name: Example Works}
sources:
  house: {title: Example house notes, note: invented}
consumables:
  flushing-oil: {use: fluid}
  engine-oil: {use: lubricant}
`;

const FLUSH = 'fill: oil with flushing-oil';
const OIL = 'fill: oil with engine-oil';
const DRAIN = 'drain: oil';
const SIGNED = 'witness: ready by "shop lead"';

describe('a system that is drained', () => {
  it.each<readonly [string, readonly string[], readonly string[]]>([
    ['drained at first, as it came in', [DRAIN, OIL, SIGNED], []],
    ['flushed, drained and filled', [FLUSH, DRAIN, OIL, SIGNED], []],
    ['topped up with the same', [OIL, OIL, SIGNED], []],
    ['filled by a tag that names no fluid', [FLUSH, 'fill: oil', SIGNED], []],
    [
      'drained and never filled again',
      [OIL, SIGNED, DRAIN],
      [
        'left-unfilled: oil is emptied again: done at step 1, undone at step 3 of procedure.md (drain: oil) and never made good',
        'left-unwitnessed: ready is witnessed too early: done at step 2, undone at step 3 of procedure.md (drain: oil) and never made good',
      ],
    ],
    [
      'filled on top of another fluid',
      [FLUSH, OIL, SIGNED],
      [
        'fluids-mixed: oil: engine-oil goes in while flushing-oil is still in it; drain it first (`drain: oil`)',
      ],
    ],
  ])('%s', (_, tags, says) => {
    expect(found(ENGINE, tags, SHOP)).toEqual(says);
  });
});
