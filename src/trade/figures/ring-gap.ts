/** Figure: end gap of a plain compression ring. */
import {figure} from '../figure.js';
import {quantity} from '../figure-options.js';
import {ringGap} from '../ring-gap.js';
import {mapped} from '../worked.js';

export const ringGapFigure = figure({
  name: 'ring-gap',
  says: 'least end gap of a plain compression ring, by rule of thumb',
  options: {bore: quantity('length', 'bore of the cylinder', '4.000 in')},
  work: ({bore}) => mapped(ringGap(bore), (value) => [{name: 'least gap', value}]),
});
