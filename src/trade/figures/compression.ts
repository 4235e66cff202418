/** Figure: compression ratio of a cylinder. */
import {compressionRatio} from '../compression-ratio.js';
import {figure} from '../figure.js';
import {CYLINDER_OPTIONS, gasketOf} from '../figure-cylinder.js';
import {quantity} from '../figure-options.js';
import {mapped} from '../worked.js';

export const compressionFigure = figure({
  name: 'compression',
  says: 'compression ratio of a cylinder',
  options: {
    ...CYLINDER_OPTIONS,
    chamber: quantity('volume', 'volume of the chamber in the head', '64 cc'),
  },
  shows: ['dish', 'deck', 'gasket', 'gasket-bore'],
  work: (given) => {
    const gasket = gasketOf(given);
    if (gasket && 'ok' in gasket) return gasket;
    return mapped(compressionRatio({...given, gasket}), ({ratio, swept, clearance}) => [
      {name: 'ratio', value: `${ratio.toFixed(2)}:1`},
      {name: 'swept volume', value: swept},
      {name: 'volume at top dead centre', value: clearance},
    ]);
  },
});
