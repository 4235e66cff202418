/** Calls of the calculations of sizes, fits and gauges, for `wrong-inputs.test.ts`. */
import {bearingClearance} from '../../src/trade/bearing-clearance.js';
import {chamberFor, compressionRatio} from '../../src/trade/compression-ratio.js';
import {counterbore, plugFit} from '../../src/trade/core-plug.js';
import {crush, crushFromGap} from '../../src/trade/crush.js';
import {deckHeight} from '../../src/trade/deck-height.js';
import {endPlay, thrustWasher} from '../../src/trade/end-play.js';
import {MATERIALS} from '../../src/trade/expansion.js';
import {fitOfClasses, fitOfLimits} from '../../src/trade/fit.js';
import {interferenceAt} from '../../src/trade/fit-when-hot.js';
import {gaugeCapability} from '../../src/trade/gauge-capability.js';
import {stripFor, stripTaper} from '../../src/trade/gauging-strip.js';
import {guardBand} from '../../src/trade/guard-band.js';
import {fitOfInchClass} from '../../src/trade/inch-fit.js';
import {limitsOfSize} from '../../src/trade/iso-limits.js';
import {gapInBore, ringGap} from '../../src/trade/ring-gap.js';
import {runningClearance} from '../../src/trade/running-clearance.js';
import {shellSpread} from '../../src/trade/shell-spread.js';
import {coolToAssemble, heatToAssemble} from '../../src/trade/shrink-fit.js';
import {middleFor, stack} from '../../src/trade/stack.js';
import {bentShaft, rodTwist} from '../../src/trade/straightness.js';
import {chooseUndersize, METRIC_GRINDS, matchUndersize} from '../../src/trade/undersize.js';
import {screwTurn, shimFor} from '../../src/trade/valve-lash.js';
import {type Call, call, type Get, range} from './calls.js';

const [MATERIAL] = MATERIALS;
if (MATERIAL === undefined) throw new Error('no material');
const CYLINDER = {
  bore: '3.5 in',
  stroke: '4 in',
  dish: '5 cc',
  deck: '0.010 in',
  wide: '3.6 in',
  thick: '0.04 in',
};
const SHRINK = {diameter: '2 in', interference: '0.002 in', clearance: '0.002 in', room: '70 °F'};

const cylinder = (get: Get) => ({
  bore: get('bore'),
  stroke: get('stroke'),
  dish: get('dish'),
  deck: get('deck'),
  gasket: {bore: get('wide'), thickness: get('thick')},
});
const shrink = (get: Get) => ({
  diameter: get('diameter'),
  interference: get('interference'),
  clearance: get('clearance'),
  room: get('room'),
  material: MATERIAL,
});

export const OF_SIZES: readonly Call[] = [
  call('bearingClearance', {journal: '2.4985 in', bore: '2.7 in', upper: '0.1 in', lower: '0.1 in'}, (get) =>
    bearingClearance([
      {
        place: 'front',
        journal: [[get('journal')]],
        bore: [[get('bore')]],
        walls: [get('upper'), get('lower')],
      },
    ]),
  ),
  call(
    'compressionRatio',
    {...CYLINDER, chamber: '70 cc'},
    (get) => compressionRatio({...cylinder(get), chamber: get('chamber')}),
    {nought: ['thick'], any: ['deck', 'dish']},
  ),
  call('chamberFor', CYLINDER, (get) => chamberFor(9, cylinder(get)), {
    nought: ['thick'],
    any: ['deck', 'dish'],
  }),
  call('plugFit', {low: '1.506 in', high: '1.508 in', bore: '1.500 in'}, (get) =>
    plugFit('cup', range(get('low'), get('high')), {form: 'single', value: get('bore')}),
  ),
  call('counterbore', {plug: '1.5 in', thickness: '0.06 in'}, (get) =>
    counterbore({form: 'single', value: get('plug')}, get('thickness')),
  ),
  call('crush', {height: '0.0015 in', bore: '2.7 in'}, (get) => crush(get('height'), get('bore'))),
  call('crushFromGap', {gap: '0.003 in', bore: '2.7 in'}, (get) => crushFromGap(get('gap'), get('bore'))),
  call(
    'deckHeight',
    {block: '9 in', stroke: '3.5 in', rod: '5.7 in', piston: '1.53 in', gasket: '0.04 in'},
    (get) =>
      deckHeight({
        block: get('block'),
        stroke: get('stroke'),
        rod: get('rod'),
        piston: get('piston'),
        gasket: get('gasket'),
      }),
    {nought: ['gasket']},
  ),
  call('endPlay', {between: '1.5 in', over: '1.495 in'}, (get) =>
    endPlay({form: 'single', value: get('between')}, {form: 'single', value: get('over')}),
  ),
  call(
    'thrustWasher',
    {play: '0.002 in', low: '0.003 in', high: '0.009 in', present: '0.100 in', washer: '0.095 in'},
    (get) => thrustWasher(get('play'), range(get('low'), get('high')), get('present'), [get('washer')]),
    {nought: ['play']},
  ),
  call(
    'interferenceAt',
    {diameter: '2 in', interference: '0.002 in', room: '70 °F', at: '200 °F'},
    (get) =>
      interferenceAt(
        {
          diameter: get('diameter'),
          interference: get('interference'),
          room: get('room'),
          inner: MATERIAL,
          outer: MATERIAL,
        },
        get('at'),
      ),
    {any: ['interference', 'room', 'at']},
  ),
  call(
    'fitOfLimits',
    {holeLow: '1.5 in', holeHigh: '1.502 in', shaftLow: '1.497 in', shaftHigh: '1.499 in'},
    (get) => fitOfLimits(range(get('holeLow'), get('holeHigh')), range(get('shaftLow'), get('shaftHigh'))),
  ),
  call('fitOfClasses', {nominal: '25 mm'}, (get) => fitOfClasses(get('nominal'), 'H7/g6')),
  call(
    'gaugeCapability',
    {low: '2.499 in', high: '2.5 in', resolution: '0.0001 in', accuracy: '0.0001 in'},
    (get) =>
      gaugeCapability(range(get('low'), get('high')), {
        resolution: get('resolution'),
        accuracy: get('accuracy'),
      }),
    {any: ['low', 'high']},
  ),
  call('stripFor', {low: '0.0015 in', high: '0.0025 in'}, (get) => stripFor(range(get('low'), get('high')))),
  call('stripTaper', {one: '0.0015 in', other: '0.002 in'}, (get) => stripTaper(get('one'), get('other'))),
  call(
    'guardBand',
    {low: '2.499 in', high: '2.5 in', uncertainty: '0.0001 in'},
    (get) => guardBand(range(get('low'), get('high')), get('uncertainty')),
    {nought: ['uncertainty'], any: ['low', 'high']},
  ),
  call('fitOfInchClass', {nominal: '1.5 in'}, (get) => fitOfInchClass(get('nominal'), 'RC4')),
  call('limitsOfSize', {nominal: '25 mm'}, (get) => limitsOfSize(get('nominal'), 'H7')),
  call('ringGap', {bore: '3.5 in'}, (get) => ringGap(get('bore'))),
  call(
    'gapInBore',
    {gap: '0.012 in', from: '3.5 in', to: '3.501 in'},
    (get) => gapInBore(get('gap'), get('from'), get('to')),
    {nought: ['gap']},
  ),
  call('runningClearance', {journal: '2.5 in'}, (get) => runningClearance(get('journal'))),
  call('shellSpread', {width: '2.72 in', bore: '2.7 in'}, (get) => shellSpread(get('width'), get('bore'))),
  call('heatToAssemble', SHRINK, (get) => heatToAssemble(shrink(get)), {
    nought: ['interference', 'clearance'],
    any: ['room'],
  }),
  call(
    'coolToAssemble',
    {...SHRINK, interference: '0.001 in', clearance: '0.001 in'},
    (get) => coolToAssemble(shrink(get)),
    {
      nought: ['interference', 'clearance'],
      any: ['room'],
    },
  ),
  call(
    'stack',
    {low: '1.747 in', high: '1.753 in', other: '0.75 in'},
    (get) =>
      stack([
        {name: 'case', size: range(get('low'), get('high')), times: 1},
        {name: 'cone', size: {form: 'single', value: get('other')}, times: -1},
      ]),
    {any: ['low', 'high', 'other']},
  ),
  call(
    'middleFor',
    {low: '1.747 in', high: '1.753 in', least: '0.002 in'},
    (get) =>
      middleFor([{name: 'case', size: range(get('low'), get('high')), times: 1}], 'case', get('least')),
    {any: ['low', 'high', 'least']},
  ),
  call('bentShaft', {reading: '0.004 in'}, (get) => bentShaft(get('reading')), {nought: ['reading']}),
  call(
    'rodTwist',
    {feeler: '0.002 in', separation: '4 in', over: '6 in'},
    (get) => rodTwist(get('feeler'), get('separation'), get('over')),
    {nought: ['feeler']},
  ),
  call(
    'chooseUndersize',
    {worn: '49.6 mm', low: '49.98 mm', high: '50 mm', cleanUp: '0.05 mm'},
    (get) => chooseUndersize(get('worn'), range(get('low'), get('high')), METRIC_GRINDS, get('cleanUp')),
    {nought: ['cleanUp']},
  ),
  call(
    'matchUndersize',
    {journal: '49.74 mm', low: '49.98 mm', high: '50 mm', grind: '0.25 mm'},
    (get) => matchUndersize(get('journal'), range(get('low'), get('high')), [get('grind')]),
    {nought: ['grind']},
  ),
  call(
    'screwTurn',
    {measured: '0.02 in', wanted: '0.015 in', pitch: '0.05 in'},
    (get) => screwTurn(get('measured'), get('wanted'), get('pitch')),
    {nought: ['measured', 'wanted']},
  ),
  call(
    'shimFor',
    {measured: '0.012 in', wanted: '0.010 in', present: '0.1 in'},
    (get) => shimFor(get('measured'), get('wanted'), get('present')),
    {nought: ['measured', 'wanted', 'present']},
  ),
];
