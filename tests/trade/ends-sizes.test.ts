/**
 * Sizes, fits and gauges: where a calculation's validity ends, as its docstring, its hint or the source named in it says: the last value that
 * is worked out, and the first beyond that is refused.
 */
import {quantity} from '../../src/quantity/convert.js';
import {bearingClearance} from '../../src/trade/bearing-clearance.js';
import {chamberFor, compressionRatio} from '../../src/trade/compression-ratio.js';
import {counterbore, plugFit} from '../../src/trade/core-plug.js';
import {crush} from '../../src/trade/crush.js';
import {deckHeight} from '../../src/trade/deck-height.js';
import {endPlay, thrustWasher} from '../../src/trade/end-play.js';
import {MATERIALS} from '../../src/trade/expansion.js';
import {interferenceAt} from '../../src/trade/fit-when-hot.js';
import {gaugeCapability} from '../../src/trade/gauge-capability.js';
import {stripFor} from '../../src/trade/gauging-strip.js';
import {guardBand} from '../../src/trade/guard-band.js';
import {fitOfInchClass} from '../../src/trade/inch-fit.js';
import {limitsOfSize} from '../../src/trade/iso-limits.js';
import {gapInBore} from '../../src/trade/ring-gap.js';
import {shellSpread} from '../../src/trade/shell-spread.js';
import {heatToAssemble} from '../../src/trade/shrink-fit.js';
import {middleFor, stack} from '../../src/trade/stack.js';
import {rodTwist} from '../../src/trade/straightness.js';
import {q} from '../help/amount.js';
import {inches, range, single, tryEnds} from './ends.js';

const STEEL = MATERIALS.find(({steel}) => steel);
if (STEEL === undefined) throw new Error('no steel');

const CYLINDER = {bore: q('100 mm'), stroke: q('100 mm')};
/** 785.4 cc swept; in such a cylinder a ratio r wants 785.4 cc / (r − 1) of clearance. */
const SWEPT = 250 * Math.PI;
const SHRINK = {diameter: q('2 in'), interference: q('0.001 in'), clearance: q('0 in'), material: STEEL};
const WARM = {diameter: q('2 in'), interference: q('0.001 in'), inner: STEEL, outer: STEEL, room: q('20 °C')};

tryEnds([
  {
    of: 'shells in a bore of 2 in: something of it is left',
    work: (wall) =>
      bearingClearance([{place: '', journal: [[inches(1)]], bore: [[inches(2)]], walls: [inches(wall)]}]),
    within: [0.1, 0.999],
    beyond: [1, 1.5],
  },
  {
    of: 'a compression ratio by its chamber',
    work: (ratio) => compressionRatio({...CYLINDER, chamber: quantity(SWEPT / (ratio - 1), 'cc', 0.1)}),
    within: [3.01, 9, 29.9],
    beyond: [2.9, 30.1],
  },
  {
    of: 'a compression ratio that is wanted',
    work: (ratio) => chamberFor(ratio, CYLINDER),
    within: [3, 9, 29.99],
    beyond: [2.99, 30.01, Number.NaN],
  },
  {
    of: 'a dish that leaves room for a chamber at 11:1',
    work: (dish) => chamberFor(11, {...CYLINDER, dish: quantity(dish, 'cc', 0.1)}),
    within: [-50, 0, 78.5],
    beyond: [78.6, 100],
  },
  {
    of: 'a cup plug against a bore of 1.5 in: larger than the bore',
    work: (plug) => plugFit('cup', single(plug), single(1.5)),
    within: [1.5001, 1.508],
    beyond: [1.4999, 1.5],
  },
  {
    of: 'a domed plug against a bore of 1.5 in: no larger than the bore',
    work: (plug) => plugFit('domed', single(plug), single(1.5)),
    within: [1.49, 1.5],
    beyond: [1.5001],
  },
  {
    of: 'a plug for a counterbore',
    work: (plug) => counterbore(single(plug), inches(0.06)),
    within: [0.5, 2.5],
    beyond: [2.5001],
  },
  {
    of: 'the crush of a half in a bore of 2 in: 1 %',
    work: (height) => crush(inches(height), inches(2)),
    within: [0.001, 0.02],
    beyond: [0.0201],
  },
  {
    of: 'a deck clearance of a block of 10 in: a tenth of it',
    work: (piston) =>
      deckHeight({block: inches(10), stroke: inches(4), rod: inches(6), piston: inches(piston)}),
    within: [1.001, 2, 2.999],
    beyond: [0.999, 3.001],
  },
  {
    of: 'a piston that stands out of its block under a gasket of 0.040 in',
    work: (piston) =>
      deckHeight({
        block: inches(10),
        stroke: inches(4),
        rod: inches(6),
        piston: inches(piston),
        gasket: inches(0.04),
      }),
    within: [2, 2.0399],
    beyond: [2.04, 2.05],
  },
  {
    of: 'a shaft over its bearing of 1.5 in',
    work: (between) => endPlay(single(between), single(1.5)),
    within: [1.5001, 1.51],
    beyond: [1.5, 1.4],
  },
  {
    of: 'end play of 0.006 in with the washer that is there, by washers of one size: 0.003 to 0.009 in',
    work: (washer) => thrustWasher(inches(0.006), range(0.003, 0.009), inches(0.1), [inches(washer)]),
    within: [0.097, 0.1, 0.103],
    beyond: [0.0969, 0.1031],
  },
  {
    of: 'the temperature of a fit in °C',
    work: (at) => interferenceAt(WARM, quantity(at, '°C', 1)),
    within: [-40, 20, 300],
    beyond: [-41, 301],
  },
  {
    of: 'the room of a fit in °C',
    work: (room) => interferenceAt({...WARM, room: quantity(room, '°C', 1)}, q('100 °C')),
    within: [-40, 20, 300],
    beyond: [-41, 301],
  },
  {
    of: 'the room of a shrink fit in °C',
    work: (room) => heatToAssemble({...SHRINK, room: quantity(room, '°C', 1)}),
    within: [-40, 50],
    beyond: [-41, 51],
  },
  {
    of: 'the interference of a shrink fit: something has to change',
    work: (interference) => heatToAssemble({...SHRINK, room: q('20 °C'), interference: inches(interference)}),
    within: [0.0001, 0.006],
    beyond: [0, 0.0066],
  },
  {
    of: 'the limits that a gauge is judged by, from 1 in: wider than nothing',
    work: (high) => gaugeCapability(range(1, high), {resolution: inches(0.001)}),
    within: [1.0001],
    beyond: [1, 0.9],
  },
  {
    of: 'the limits of a strip, from 0.001 in: those of the wrappers',
    work: (high) => stripFor(range(0.001, high)),
    within: [0.002, 0.003],
    beyond: [0.0031],
  },
  {
    of: 'an uncertainty within limits of 0.010 in: less than half of them',
    work: (uncertainty) => guardBand(range(1, 1.01), inches(uncertainty)),
    within: [0, 0.0049],
    beyond: [0.005, 0.006],
  },
  {
    of: 'a size of a running fit of inches',
    work: (size) => fitOfInchClass(inches(size), 'RC4'),
    within: [0.1, 1.5],
    beyond: [200],
  },
  {
    of: 'a size of a metric class, mm',
    work: (size) => limitsOfSize(quantity(size, 'mm', 1), 'H7'),
    within: [1, 500],
    beyond: [501],
  },
  {
    of: 'a ring with a gap of 0.010 in, from a bore of 3 in: its ends do not butt',
    work: (to) => gapInBore(inches(0.01), inches(3), inches(to)),
    within: [2.997, 3, 3.01],
    beyond: [2.996],
  },
  {
    of: 'a shell in a bore of 2 in: it is wider',
    work: (width) => shellSpread(inches(width), inches(2)),
    within: [2.0001, 2.02],
    beyond: [2, 1.9],
  },
  {
    of: 'an inflation of the root sum square',
    work: (inflation) => stack([{name: 'case', size: range(1, 1.01), times: 1}], inflation),
    within: [1, 1.5, 2],
    beyond: [0.99, 2.01, Number.NaN],
  },
  {
    of: 'how often a link counts that is to be moved',
    work: (times) => middleFor([{name: 'case', size: range(1, 1.01), times}], 'case', inches(0.01)),
    within: [-1, 0.5, 1],
    beyond: [0, Number.NaN],
  },
  {
    of: 'a feeler over a separation of 1 in: a tenth of it',
    work: (feeler) => rodTwist(inches(feeler), inches(1)),
    within: [0, 0.1],
    beyond: [0.1001],
  },
]);
