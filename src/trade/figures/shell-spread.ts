/** Figure: how much wider a free shell is than its housing. */
import {figure} from '../figure.js';
import {quantity} from '../figure-options.js';
import {shellSpread} from '../shell-spread.js';
import {mapped} from '../worked.js';

export const shellSpreadFigure = figure({
  name: 'shell-spread',
  says: 'how much wider a free bearing shell is than its housing',
  options: {
    width: quantity('length', 'free width across the parting faces', '2.680 in'),
    bore: quantity('length', 'bore of the housing', '2.655 in'),
  },
  work: ({width, bore}) => mapped(shellSpread(width, bore), (value) => [{name: 'spread', value}]),
});
