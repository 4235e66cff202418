/** Calls of the calculations of bolts, wire, wrenches and time, for `wrong-inputs.test.ts`. */
import {settingFor, torqueAt} from '../../src/trade/adapter.js';
import {cotterPinFor} from '../../src/trade/cotter-pin.js';
import {minimumEngagement} from '../../src/trade/engagement.js';
import {jointStiffness} from '../../src/trade/joint-stiffness.js';
import {passesTo} from '../../src/trade/passes.js';
import {longFormTorque, preloadOf, torqueFor} from '../../src/trade/preload.js';
import {wireFor} from '../../src/trade/safety-wire.js';
import {timePlan} from '../../src/trade/time-plan.js';
import {torqueThenAngle} from '../../src/trade/torque-angle.js';
import {twistsFor, wireLength, wireRun} from '../../src/trade/wire-run.js';
import {appliedTorque} from '../../src/trade/wrench.js';
import {type Call, call, type Get, range} from './calls.js';
import {thread} from './fasteners.js';

const BOLT = thread('1/2-13 UNC');

const ADAPTER = {torque: '85 lbf·ft', wrench: '16 in', adapter: '4 in', angle: '30 °'};
const JOINT = {grip: '2 in', shank: '1 in', boltModulus: '30000 ksi', memberModulus: '30000 ksi'};

const reach = (get: Get) => ({wrench: get('wrench'), adapter: get('adapter'), angle: get('angle')});
const joint = (get: Get) => ({
  thread: BOLT,
  grip: get('grip'),
  shank: get('shank'),
  boltModulus: get('boltModulus'),
  memberModulus: get('memberModulus'),
});

export const OF_FASTENERS: readonly Call[] = [
  call('settingFor', ADAPTER, (get) => settingFor(get('torque'), reach(get)), {
    nought: ['adapter'],
    any: ['angle'],
  }),
  call('torqueAt', ADAPTER, (get) => torqueAt(get('torque'), reach(get)), {
    nought: ['adapter'],
    any: ['angle'],
  }),
  call('cotterPinFor', {hole: '0.106 in', slot: '0.12 in'}, (get) =>
    cotterPinFor({hole: get('hole'), slot: get('slot')}),
  ),
  call('minimumEngagement', {bolt: '120 ksi', hole: '40 ksi'}, (get) =>
    minimumEngagement({thread: BOLT, bolt: get('bolt'), hole: get('hole')}),
  ),
  call('jointStiffness', JOINT, (get) => jointStiffness(joint(get)), {nought: ['shank']}),
  call('passesTo', {final: '85 lbf·ft'}, (get) => passesTo(get('final'))),
  call(
    'preloadOf',
    {torque: '85 lbf·ft', prevailing: '5 lbf·ft'},
    (get) => preloadOf({thread: BOLT, torque: get('torque'), prevailing: get('prevailing'), friction: 0.2}),
    {nought: ['prevailing']},
  ),
  call('torqueFor', {preload: '9000 lbf'}, (get) =>
    torqueFor({thread: BOLT, friction: 0.2, preload: get('preload')}),
  ),
  call('longFormTorque', {preload: '9000 lbf'}, (get) =>
    longFormTorque({thread: BOLT, preload: get('preload'), threadFriction: 0.12, faceFriction: 0.12}),
  ),
  call('wireFor', {hole: '0.07 in', spacing: '3 in'}, (get) =>
    wireFor({hole: get('hole'), spacing: get('spacing')}),
  ),
  call(
    'timePlan',
    {hands: '30 min', wait: '24 h'},
    (get) => timePlan([{id: 'seal', hands: get('hands'), wait: get('wait'), after: []}]),
    {nought: ['hands', 'wait']},
  ),
  call(
    'torqueThenAngle',
    {...JOINT, torque: '30 lbf·ft', angle: '60 °'},
    (get) => torqueThenAngle({...joint(get), torque: get('torque'), angle: get('angle'), friction: 0.2}),
    {nought: ['shank']},
  ),
  call('twistsFor', {wire: '0.032 in'}, (get) => twistsFor(get('wire'))),
  call('wireRun', {spacing: '2 in', wire: '0.032 in', head: '0.5 in'}, (get) =>
    wireRun({count: 4, spacing: get('spacing'), wire: get('wire'), head: get('head')}),
  ),
  call('wireLength', {one: '2 in', other: '2 in', wire: '0.032 in', head: '0.5 in'}, (get) =>
    wireLength({spans: [get('one'), get('other')], wire: get('wire'), head: get('head')}),
  ),
  call(
    'appliedTorque',
    {torque: '85 lbf·ft', low: '20 lbf·ft', high: '150 lbf·ft'},
    (get) => appliedTorque({torque: get('torque'), range: range(get('low'), get('high')), accuracy: '±4 %'}),
    {nought: ['low']},
  ),
];
