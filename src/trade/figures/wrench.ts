/** Figure: the band of torque that a fastener really gets. */
import {figure} from '../figure.js';
import {amount, quantity, text} from '../figure-options.js';
import {mapped} from '../worked.js';
import {appliedTorque} from '../wrench.js';

export const wrenchFigure = figure({
  name: 'wrench',
  says: 'whether a torque is in the range of a wrench, and the band that the fastener really gets',
  options: {
    torque: quantity('torque', 'torque wanted', '85 lbf·ft'),
    range: amount('torque', 'range marked on the wrench, or its largest value', '20–150 lbf·ft'),
    accuracy: text('a class of ISO 6789, or per cent', 'accuracy of the wrench', 'class A', (given) => ({
      ok: true,
      value: given,
    })),
  },
  work: (given) =>
    mapped(appliedTorque(given), ({low, high}) => [
      {name: 'the fastener gets', value: {form: 'range', low, high}},
    ]),
});
