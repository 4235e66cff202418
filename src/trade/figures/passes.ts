/** Figure: the torques of the passes up to a final one. */
import {figure} from '../figure.js';
import {number, optional, quantity} from '../figure-options.js';
import {passesTo} from '../passes.js';
import {mapped} from '../worked.js';

export const passesFigure = figure({
  name: 'passes',
  says: 'the torques of the passes up to a final one',
  options: {
    torque: quantity('torque', 'the final torque', '85 lbf·ft'),
    count: optional(number('number of passes, 1 to 4, 3 if not said', '3')),
  },
  work: ({torque, count}) =>
    mapped(passesTo(torque, count), (passes) =>
      passes.map((value, index) => ({name: `pass ${index + 1}`, value})),
    ),
});
