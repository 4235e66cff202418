/** Figure: what to dial on a torque wrench with an adapter. */
import {settingFor} from '../adapter.js';
import {figure} from '../figure.js';
import {optional, quantity} from '../figure-options.js';
import {mapped} from '../worked.js';

export const adapterFigure = figure({
  name: 'adapter',
  says: 'what to dial on a torque wrench that has an adapter on',
  options: {
    torque: quantity('torque', 'torque wanted at the fastener', '85 lbf·ft'),
    wrench: quantity('length', 'from the middle of the grip to the drive', '18 in'),
    adapter: quantity('length', 'from the drive to the fastener', '3 in'),
    angle: optional(quantity('angle', 'between them: 0° in line, 90° square, 180° folded back', '45°')),
  },
  work: ({torque, wrench, adapter, angle}) =>
    mapped(settingFor(torque, {wrench, adapter, ...(angle ? {angle} : {})}), (value) => [
      {name: 'setting', value},
    ]),
});
