/** Figure: taper from the two ends of a gauging strip. */
import {figure} from '../figure.js';
import {quantity} from '../figure-options.js';
import {stripTaper} from '../gauging-strip.js';
import {mapped} from '../worked.js';

export const stripTaperFigure = figure({
  name: 'strip-taper',
  says: 'taper of a journal from the two ends of a gauging strip',
  options: {
    one: quantity('length', 'clearance read at one end', '0.0020 in'),
    other: quantity('length', 'clearance read at the other end', '0.0025 in'),
  },
  work: ({one, other}) => mapped(stripTaper(one, other), (value) => [{name: 'taper, about', value}]),
});
