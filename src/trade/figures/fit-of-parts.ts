/** Figure: the fit of two parts by their limits or readings. */
import {figure} from '../figure.js';
import {amount} from '../figure-options.js';
import {fitNamed, fitOfLimits} from '../fit.js';
import {mapped} from '../worked.js';

export const fitOfPartsFigure = figure({
  name: 'fit-of-parts',
  says: 'clearance or interference of two parts by their limits or readings',
  options: {
    hole: amount('length', 'the hole', '1.500–1.502 in'),
    shaft: amount('length', 'the shaft', '1.495–1.497 in'),
  },
  work: ({hole, shaft}) =>
    mapped(fitOfLimits(hole, shaft), (fit) => [{name: 'kind', value: `${fit.kind} fit`}, ...fitNamed(fit)]),
});
