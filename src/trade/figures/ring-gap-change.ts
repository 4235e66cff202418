/** Figure: end gap of the same ring in another bore. */
import {figure} from '../figure.js';
import {quantity} from '../figure-options.js';
import {gapInBore} from '../ring-gap.js';
import {mapped} from '../worked.js';

export const ringGapChangeFigure = figure({
  name: 'ring-gap-change',
  says: 'end gap of the same ring in another bore',
  options: {
    gap: quantity('length', 'gap that was measured', '0.0140 in'),
    from: quantity('length', 'bore that it was measured in', '4.000 in'),
    to: quantity('length', 'the other bore', '4.003 in'),
  },
  work: ({gap, from, to}) => mapped(gapInBore(gap, from, to), (value) => [{name: 'gap', value}]),
});
