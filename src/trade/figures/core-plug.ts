/** Figure: whether a core plug suits its bore. */
import {plugFit} from '../core-plug.js';
import {figure} from '../figure.js';
import {amount, word} from '../figure-options.js';
import {fitNamed} from '../fit.js';
import {mapped} from '../worked.js';

export const corePlugFigure = figure({
  name: 'core-plug',
  says: 'whether a core plug suits its bore, and with what grip',
  options: {
    kind: word(['cup', 'domed'], 'kind of plug', 'cup'),
    plug: amount('length', 'diameter of the plug', '1.512–1.516 in'),
    bore: amount('length', 'diameter of its bore', '1.500–1.502 in'),
  },
  work: ({kind, plug, bore}) => mapped(plugFit(kind, plug, bore), fitNamed),
});
