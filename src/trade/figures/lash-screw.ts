/** Figure: how far to turn an adjusting screw of the valve lash. */
import {figure} from '../figure.js';
import {number, optional, quantity} from '../figure-options.js';
import {screwTurn} from '../valve-lash.js';
import {mapped} from '../worked.js';

export const lashScrewFigure = figure({
  name: 'lash-screw',
  says: 'how far to turn an adjusting screw to bring the valve lash right',
  options: {
    measured: quantity('length', 'lash that was measured', '0.017 in'),
    wanted: quantity('length', 'lash that is specified', '0.012 in'),
    pitch: quantity('length', 'pitch of the screw: 1/24 in for 24 threads an inch', '1/24 in'),
    ratio: optional(number('rocker ratio where the screw is at the pushrod, 1 at the valve', '1.5')),
  },
  shows: ['ratio'],
  work: ({measured, wanted, pitch, ratio}) =>
    mapped(screwTurn(measured, wanted, pitch, ratio), (value) => [
      {
        name: value.value < 0 ? 'turn out (opens the lash)' : 'turn in (closes the lash)',
        value: {...value, value: Math.abs(value.value)},
      },
    ]),
});
