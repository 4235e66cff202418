/** Figure: the bend of a shaft from its dial reading. */
import {figure} from '../figure.js';
import {quantity} from '../figure-options.js';
import {bentShaft} from '../straightness.js';
import {mapped} from '../worked.js';

export const bentShaftFigure = figure({
  name: 'bent-shaft',
  says: 'the bend of a shaft from the dial reading of a full turn',
  options: {reading: quantity('length', 'full-turn reading at the middle journal', '0.0030 in')},
  work: ({reading}) => mapped(bentShaft(reading), (value) => [{name: 'bend', value}]),
});
