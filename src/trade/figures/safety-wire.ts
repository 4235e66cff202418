/** Figure: the safety wire that a hole takes. */
import {figure} from '../figure.js';
import {optional, quantity, word} from '../figure-options.js';
import {wireFor} from '../safety-wire.js';
import {mapped} from '../worked.js';

export const safetyWireFigure = figure({
  name: 'safety-wire',
  says: 'the safety wire that a hole takes',
  options: {
    hole: quantity('length', 'diameter of the hole', '0.047 in'),
    spacing: optional(quantity('length', 'distance between the fasteners', '1.5 in')),
    twist: optional(word(['double', 'single'], 'double twist if not said', 'double')),
  },
  work: ({hole, spacing, twist}) =>
    mapped(wireFor({hole, ...(spacing ? {spacing} : {}), ...(twist ? {twist} : {})}), ({least, most}) => [
      {name: 'thinnest wire', value: least},
      {name: 'thickest wire', value: most},
    ]),
});
