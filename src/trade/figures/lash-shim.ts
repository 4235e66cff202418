/** Figure: the shim that brings the valve lash right. */
import {figure} from '../figure.js';
import {number, optional, quantity} from '../figure-options.js';
import {shimFor} from '../valve-lash.js';
import {mapped} from '../worked.js';

export const lashShimFigure = figure({
  name: 'lash-shim',
  says: 'the shim that brings the valve lash right',
  options: {
    measured: quantity('length', 'lash that was measured', '0.35 mm'),
    wanted: quantity('length', 'lash that is specified', '0.25 mm'),
    shim: quantity('length', 'the shim that is in', '2.60 mm'),
    ratio: optional(number('rocker ratio where the shim is at the tappet, 1 at the valve', '1.5')),
  },
  work: ({measured, wanted, shim, ratio}) =>
    mapped(shimFor(measured, wanted, shim, ratio), (value) => [{name: 'shim', value}]),
});
