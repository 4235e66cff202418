/** Figure: what a reading proves when the gauge has an uncertainty. */

import {figure} from '../figure.js';
import {anyAmount, anyQuantity} from '../figure-any.js';
import {optional} from '../figure-options.js';
import {guardBand, proves} from '../guard-band.js';
import {mapped} from '../worked.js';

export const guardBandFigure = figure({
  name: 'guard-band',
  says: 'between which readings a part is proved good, or proved bad',
  options: {
    limits: anyAmount('limits of what is measured', '2.4990–2.5000 in'),
    uncertainty: anyQuantity('expanded uncertainty of the measuring, k = 2', '0.0001 in'),
    reading: optional(anyQuantity('a reading to be judged', '2.4992 in')),
  },
  shows: ['reading'],
  work: ({limits, uncertainty, reading}) => {
    const worked = guardBand(limits, uncertainty);
    const judged =
      worked.ok && reading?.unit.dimension === worked.result.accept.low.unit.dimension ? reading : undefined;
    return mapped(worked, (band) => [
      {name: 'accept', value: band.accept},
      {name: 'reject outside', value: band.reject},
      ...(judged ? [{name: 'the reading', value: proves(judged, band)}] : []),
    ]);
  },
});
