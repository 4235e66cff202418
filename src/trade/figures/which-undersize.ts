/** Figure: the undersize that a ground journal has. */
import {figure} from '../figure.js';
import {amount, list, optional, quantity} from '../figure-options.js';
import {INCH_GRINDS, METRIC_GRINDS, matchUndersize} from '../undersize.js';
import {mapped} from '../worked.js';

export const whichUndersizeFigure = figure({
  name: 'which-undersize',
  says: 'the undersize that a ground journal has',
  options: {
    journal: quantity('length', 'reading of the journal', '2.4895 in'),
    standard: amount('length', 'limits of a standard journal', '2.4990–2.5000 in'),
    grinds: optional(list('length', 'undersizes in question, 0 for standard', '0, 0.010, 0.020, 0.030 in')),
  },
  work: ({journal, standard, grinds}) => {
    const usual = journal.unit.system === 'inch' ? INCH_GRINDS : METRIC_GRINDS;
    return mapped(
      matchUndersize(journal, standard, grinds ?? usual),
      ({undersize, journal: limits, fits, off}) => [
        {name: 'undersize', value: undersize},
        {name: 'journal of that grind', value: limits},
        ...(fits ? [] : [{name: 'OUTSIDE those limits by', value: off}]),
      ],
    );
  },
});
