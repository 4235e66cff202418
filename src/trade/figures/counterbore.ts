/** Figure: the counterbore of a domed core plug. */
import {counterbore} from '../core-plug.js';
import {figure} from '../figure.js';
import {amount, quantity} from '../figure-options.js';
import {mapped} from '../worked.js';

export const counterboreFigure = figure({
  name: 'counterbore',
  says: 'the counterbore that a domed core plug wants',
  options: {
    plug: amount('length', 'diameter of the plug', '1.495–1.500 in'),
    thickness: quantity('length', 'thickness of its metal', '0.060 in'),
  },
  work: ({plug, thickness}) =>
    mapped(counterbore(plug, thickness), ({diameter, depth}) => [
      {name: 'diameter', value: diameter},
      {name: 'depth', value: depth},
    ]),
});
