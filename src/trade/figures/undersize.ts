/** Figure: the grind that a worn journal cleans up to. */
import {figure} from '../figure.js';
import {amount, list, optional, quantity} from '../figure-options.js';
import {chooseUndersize, INCH_GRINDS, METRIC_GRINDS} from '../undersize.js';
import {mapped} from '../worked.js';

export const undersizeFigure = figure({
  name: 'undersize',
  says: 'the smallest undersize that a worn journal cleans up to',
  options: {
    worn: quantity('length', 'smallest reading of the journal', '2.4965 in'),
    standard: amount('length', 'limits of a standard journal', '2.4990–2.5000 in'),
    grinds: optional(list('length', 'undersizes that shells can be had for', '0.010, 0.020, 0.030 in')),
    'clean-up': optional(quantity('length', 'what the grinder takes to clean up', '0.002 in')),
  },
  work: ({worn, standard, grinds, 'clean-up': cleanUp}) => {
    const usual = worn.unit.system === 'inch' ? INCH_GRINDS : METRIC_GRINDS;
    return mapped(chooseUndersize(worn, standard, grinds ?? usual, cleanUp), ({undersize, journal}) => [
      {name: 'undersize', value: undersize},
      {name: 'journal as ground', value: journal},
    ]);
  },
});
