/**
 * Conversions are off by their last figures, so that each end has a margin of a billionth: what is off by just that is as
 * good as what stands on the end, and what is off by twice as much is not.
 */
import {expect, test} from 'vitest';
import {formatQuantity} from '../../src/quantity/format.js';
import type {Quantity} from '../../src/quantity/model.js';
import {cotterPinFor} from '../../src/trade/cotter-pin.js';
import {deckHeight} from '../../src/trade/deck-height.js';
import {guardBand} from '../../src/trade/guard-band.js';
import {wireFor} from '../../src/trade/safety-wire.js';
import {twistsFor, wireLength, wireRun} from '../../src/trade/wire-run.js';
import type {Worked} from '../../src/trade/worked.js';
import {appliedTorque} from '../../src/trade/wrench.js';
import {amount, q} from '../help/amount.js';
import {out, result} from './unwrap.js';

const WIRE = q('0.032 in');

interface Margin {
  readonly of: string;
  readonly work: (value: Quantity) => string;
  /** Off by a billionth, and by two, with what each gives. */
  readonly just: readonly [value: string, gives: string];
  readonly beyond: readonly [value: string, gives: string];
}

function worksOut(work: (value: Quantity) => Worked<unknown>): Margin['work'] {
  return (value) => (work(value).ok ? 'worked out' : 'refused');
}

const MARGINS: readonly Margin[] = [
  {
    of: 'the finest wire whose twist is published',
    work: worksOut(twistsFor),
    just: ['0.019999999 in', 'worked out'],
    beyond: ['0.019999998 in', 'refused'],
  },
  {
    of: 'a row of the twists',
    work: (wire) => `${result(twistsFor(wire)).low} an inch`,
    just: ['0.025000001 in', '8 an inch'],
    beyond: ['0.025000002 in', '6 an inch'],
  },
  {
    of: 'fasteners on a single wire',
    work: worksOut((spacing) => wireRun({count: 4, spacing, wire: WIRE, twist: 'single'})),
    just: ['2.000000001 in', 'worked out'],
    beyond: ['2.000000002 in', 'refused'],
  },
  {
    of: 'fasteners on a double wire',
    work: worksOut((spacing) => wireRun({count: 4, spacing, wire: WIRE})),
    just: ['6.000000001 in', 'worked out'],
    beyond: ['6.000000002 in', 'refused'],
  },
  {
    of: 'fasteners with heads of 2 in, which only their count lets join where they are wide apart',
    work: worksOut((spacing) => wireRun({count: 4, spacing, wire: WIRE, head: q('2 in')})),
    just: ['3.999999999 in', 'worked out'],
    beyond: ['3.999999998 in', 'refused'],
  },
  {
    of: 'a span of a run',
    work: worksOut((span) => wireLength({spans: [span], wire: WIRE})),
    just: ['6.000000001 in', 'worked out'],
    beyond: ['6.000000002 in', 'refused'],
  },
  {
    of: 'a small hole for wire',
    work: (hole) => formatQuantity(result(wireFor({hole})).least),
    just: ['0.045000001 in', '0.020 in'],
    beyond: ['0.045000002 in', '0.032 in'],
  },
  {
    of: 'a hole for wire between fasteners that stand close',
    work: (hole) => formatQuantity(result(wireFor({hole, spacing: q('1 in')})).least),
    just: ['0.062000001 in', '0.020 in'],
    beyond: ['0.062000002 in', '0.032 in'],
  },
  {
    of: 'a hole that must be wider than its wire',
    work: (hole) => formatQuantity(result(wireFor({hole})).most),
    just: ['0.032000001 in', '0.025 in'],
    beyond: ['0.032000002 in', '0.032 in'],
  },
  {
    of: 'a slot as wide as the pin',
    work: (slot) => formatQuantity(result(cotterPinFor({hole: q('0.5 in'), slot})).take),
    just: ['0.093749999 in', '3/32 in'],
    beyond: ['0.093749998 in', '5/64 in'],
  },
  {
    of: 'the lowest torque of a wrench of 25 to 40 lbf·ft',
    work: worksOut(onWrench),
    just: ['24.999999975 lbf·ft', 'worked out'],
    beyond: ['24.99999995 lbf·ft', 'refused'],
  },
  {
    of: 'its highest',
    work: worksOut(onWrench),
    just: ['40.00000004 lbf·ft', 'worked out'],
    beyond: ['40.00000008 lbf·ft', 'refused'],
  },
  {
    of: 'the largest torque of a small tool',
    work: (high) => {
      const range = {form: 'range', low: q('1 N·m'), high} as const;
      const {band} = out(appliedTorque({torque: q('5 N·m'), range, accuracy: 'class A'}));
      return String(band?.name);
    },
    just: ['10.00000001 N·m', 'accuracy of the wrench ±6 %'],
    beyond: ['10.00000002 N·m', 'accuracy of the wrench ±4 %'],
  },
  {
    of: 'an uncertainty that takes up limits of 1 to 2 mm',
    work: worksOut((uncertainty) => guardBand(amount('1–2 mm'), uncertainty)),
    just: ['0.4999999995 mm', 'refused'],
    beyond: ['0.499999999 mm', 'worked out'],
  },
  {
    of: 'a gasket over a piston that stands flush',
    work: worksOut((gasket) =>
      deckHeight({block: q('200 mm'), stroke: q('100 mm'), rod: q('100 mm'), piston: q('50 mm'), gasket}),
    ),
    just: ['0.000001 mm', 'worked out'],
    beyond: ['0.0000009 mm', 'refused'],
  },
];

function onWrench(torque: Quantity): Worked<unknown> {
  return appliedTorque({torque, range: amount('25–40 lbf·ft'), accuracy: '±4 %'});
}

test.each(MARGINS)('$of', ({work, just, beyond}) => {
  for (const [value, gives] of [just, beyond]) expect([value, work(q(value))]).toEqual([value, gives]);
});
