/** Figure: in which order fasteners are tightened. */
import {figure} from '../figure.js';
import {layoutOption} from '../figure-layout.js';
import {optional, word} from '../figure-options.js';
import {tighteningOrder} from '../tightening-order.js';
import {mapped} from '../worked.js';

export const tighteningOrderFigure = figure({
  name: 'tightening-order',
  says: 'in which order the fasteners of a joint are tightened',
  options: {
    layout: layoutOption(),
    pattern: optional(word(['outwards', 'crosswise'], 'by the layout if not said', 'outwards')),
  },
  work: ({layout, pattern}) =>
    mapped(tighteningOrder(layout, pattern), ({pattern: taken, order}) => [
      {name: 'order', value: order.join(', ')},
      {name: 'pattern', value: taken},
    ]),
});
