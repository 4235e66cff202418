/**
 * Bolts, wire, wrenches, valves: where a calculation's validity ends, as its docstring, its hint or the source named in it says: the last value that
 * is worked out, and the first beyond that is refused.
 */
import {quantity} from '../../src/quantity/convert.js';
import {settingFor} from '../../src/trade/adapter.js';
import {cotterPinFor} from '../../src/trade/cotter-pin.js';
import {jointStiffness} from '../../src/trade/joint-stiffness.js';
import {row} from '../../src/trade/layout.js';
import {passesTo} from '../../src/trade/passes.js';
import {longFormTorque, preloadOf, torqueFor} from '../../src/trade/preload.js';
import {wireFor} from '../../src/trade/safety-wire.js';
import {tighteningOrder} from '../../src/trade/tightening-order.js';
import {chooseUndersize} from '../../src/trade/undersize.js';
import {screwTurn, shimFor} from '../../src/trade/valve-lash.js';
import {twistsFor, wireLength, wireRun} from '../../src/trade/wire-run.js';
import {appliedTorque} from '../../src/trade/wrench.js';
import {amount, q} from '../help/amount.js';
import {inches, range, tryEnds} from './ends.js';
import {grade, thread} from './fasteners.js';

const BOLT = thread('1/2-13 UNC');

tryEnds([
  {
    of: 'an adapter folded back, of a wrench of 10 in: a tenth of it at least is left',
    work: (length) =>
      settingFor(q('50 lbf·ft'), {wrench: q('10 in'), adapter: inches(length), angle: q('180 °')}),
    within: [0, 8.9],
    beyond: [9.1, 10, 20],
  },
  {
    of: 'a shank in a grip of 2 in',
    work: (shank) => jointStiffness({thread: BOLT, grip: inches(2), shank: inches(shank)}),
    within: [0, 2],
    beyond: [2.001],
  },
  {
    of: 'a number of passes',
    work: (count) => passesTo(q('85 lbf·ft'), count),
    within: [1, 2, 3, 4],
    beyond: [0, 5, 2.5],
  },
  {
    of: 'a coefficient of friction of the thread',
    work: (threadFriction) =>
      longFormTorque({thread: BOLT, preload: q('5000 lbf'), threadFriction, faceFriction: 0.12}),
    within: [0.03, 0.4],
    beyond: [0.029, 0.401, Number.NaN],
  },
  {
    of: 'a coefficient of friction of the face',
    work: (faceFriction) =>
      longFormTorque({thread: BOLT, preload: q('5000 lbf'), threadFriction: 0.12, faceFriction}),
    within: [0.03, 0.4],
    beyond: [0.029, 0.401, Number.NaN],
  },
  {
    of: 'a share of proof load',
    work: (share) => torqueFor({thread: BOLT, friction: 0.2, grade: grade('8', BOLT), share}),
    within: [0.01, 0.75, 1],
    beyond: [0, -0.5, 1.01, Number.NaN],
  },
  {
    of: 'a prevailing torque under 20 lbf·ft',
    work: (prevailing) =>
      preloadOf({
        thread: BOLT,
        torque: q('20 lbf·ft'),
        friction: 0.2,
        prevailing: quantity(prevailing, 'lbf·ft'),
      }),
    within: [0, 19.9],
    beyond: [20, 25],
  },
  {
    of: 'a hole for safety wire',
    work: (hole) => wireFor({hole: inches(hole)}),
    within: [0.021, 0.045, 0.07],
    beyond: [0.015, 0.02],
  },
  {
    of: 'fasteners of a joint',
    work: (count) => tighteningOrder(row(count)),
    within: [1, 400],
    beyond: [0, 401],
  },
  {
    of: 'a journal that cleans up to 0.010 in under 1.999 to 2.000 in',
    work: (worn) => chooseUndersize(inches(worn), range(1.999, 2), [q('0.010 in')]),
    within: [1.99, 1.995],
    beyond: [1.9899],
  },
  {
    of: 'a rocker ratio of a screw',
    work: (ratio) => screwTurn(inches(0.02), inches(0.015), inches(0.05), ratio),
    within: [0.5, 1.5, 3],
    beyond: [0.49, 3.01, Number.NaN],
  },
  {
    of: 'a rocker ratio of a shim',
    work: (ratio) => shimFor(inches(0.02), inches(0.015), inches(0.1), ratio),
    within: [0.5, 1.5, 3],
    beyond: [0.49, 3.01, Number.NaN],
  },
  {
    of: 'a shim that has to give 0.005 in',
    work: (present) => shimFor(inches(0.01), inches(0.015), inches(present)),
    within: [0.0051, 0.1],
    beyond: [0.005, 0.004],
  },
  {
    of: 'a wire whose twist is published',
    work: (wire) => twistsFor(inches(wire)),
    within: [0.02, 0.06],
    beyond: [0.019, 0.061],
  },
  {
    of: 'fasteners on one wire',
    work: (count) => wireRun({count, spacing: inches(1), wire: inches(0.032)}),
    within: [2, 1000],
    beyond: [1, 1001, 2.5, Number.NaN],
  },
  // TM 10-3930-659-34, section 2-22: not wired together beyond 6 in.
  {
    of: 'fasteners apart on a double wire',
    work: (spacing) => wireRun({count: 4, spacing: inches(spacing), wire: inches(0.032)}),
    within: [0.5, 6],
    beyond: [6.01],
  },
  // TM 1-1500-204-23-6 p. 2-79: single wire to 2 in.
  {
    of: 'fasteners apart on a single wire',
    work: (spacing) => wireRun({count: 4, spacing: inches(spacing), wire: inches(0.032), twist: 'single'}),
    within: [0.5, 2],
    beyond: [2.01],
  },
  {
    of: 'heads 4 in round so large that the wire joins no two',
    work: (head) => wireRun({count: 4, spacing: inches(1), wire: inches(0.032), head: inches(head)}),
    within: [0.5, 2],
    beyond: [8],
  },
  {
    of: 'a span of a run',
    work: (span) => wireLength({spans: [inches(1), inches(span)], wire: inches(0.032)}),
    within: [1, 6],
    beyond: [6.01],
  },
  {
    of: 'an accuracy in per cent',
    work: (percent) =>
      appliedTorque({torque: q('50 lbf·ft'), range: amount('20–150 lbf·ft'), accuracy: `±${percent} %`}),
    within: [0.1, 4, 49.9],
    beyond: [0, 50, 100],
  },
  {
    of: 'a torque on a wrench of 20 to 150 lbf·ft',
    work: (torque) =>
      appliedTorque({torque: quantity(torque, 'lbf·ft'), range: amount('20–150 lbf·ft'), accuracy: '±4 %'}),
    within: [20, 150],
    beyond: [19.9, 150.1],
  },
  {
    of: 'a slot for the smallest cotter pin, 1/32 in',
    work: (slot) => cotterPinFor({hole: inches(0.1), slot: inches(slot)}),
    within: [0.0313, 0.1],
    beyond: [0.031, 0.01],
  },
]);
