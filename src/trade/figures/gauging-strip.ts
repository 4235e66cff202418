/** Figure: which plastic gauging strip reads a clearance. */
import {figure} from '../figure.js';
import {amount} from '../figure-options.js';
import {stripFor} from '../gauging-strip.js';
import {mapped} from '../worked.js';

export const gaugingStripFigure = figure({
  name: 'gauging-strip',
  says: 'which plastic gauging strip reads a clearance',
  options: {limits: amount('length', 'limits of the clearance', '0.0020–0.0045 in')},
  work: ({limits}) =>
    mapped(stripFor(limits), ({colour, reads}) => [
      {name: 'strip', value: colour},
      {name: 'reads', value: reads},
    ]),
});
