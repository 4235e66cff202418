/** Figure: what an interference becomes when both parts are hot. */
import {figure} from '../figure.js';
import {optional, quantity} from '../figure-options.js';
import {materialOption, roomFor} from '../figure-shrink.js';
import {interferenceAt} from '../fit-when-hot.js';
import {mapped} from '../worked.js';

export const hotFitFigure = figure({
  name: 'hot-fit',
  says: 'what an interference becomes when both parts are at another temperature',
  options: {
    diameter: quantity('length', 'diameter of the fit', '2.000 in'),
    interference: quantity('length', 'interference at room temperature, negative for clearance', '0.0020 in'),
    inner: materialOption('material of the inner part', 'grey-iron'),
    outer: materialOption('material of the outer part', 'aluminium-356'),
    at: quantity('temperature', 'the temperature of both', '200 °F'),
    room: optional(quantity('temperature', 'room temperature, 68 °F if not said', '70 °F')),
  },
  work: ({diameter, interference, inner, outer, at, room}) =>
    mapped(
      interferenceAt({diameter, interference, inner, outer, room: room ?? roomFor(diameter)}, at),
      (value) => [{name: value.value < 0 ? 'interference (negative: clearance)' : 'interference', value}],
    ),
});
