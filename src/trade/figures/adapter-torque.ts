/** Figure: what a fastener gets from a wrench with an adapter. */
import {torqueAt} from '../adapter.js';
import {figure} from '../figure.js';
import {optional, quantity} from '../figure-options.js';
import {mapped} from '../worked.js';

export const adapterTorqueFigure = figure({
  name: 'adapter-torque',
  says: 'what the fastener gets from a torque wrench that has an adapter on',
  options: {
    setting: quantity('torque', 'what the wrench is set to', '73 lbf·ft'),
    wrench: quantity('length', 'from the middle of the grip to the drive', '18 in'),
    adapter: quantity('length', 'from the drive to the fastener', '3 in'),
    angle: optional(quantity('angle', 'between them: 0° in line, 90° square, 180° folded back', '45°')),
  },
  work: ({setting, wrench, adapter, angle}) =>
    mapped(torqueAt(setting, {wrench, adapter, ...(angle ? {angle} : {})}), (value) => [
      {name: 'torque at the fastener', value},
    ]),
});
