/** Figure: the chamber that gives a compression ratio. */
import {chamberFor} from '../compression-ratio.js';
import {figure} from '../figure.js';
import {CYLINDER_OPTIONS, gasketOf} from '../figure-cylinder.js';
import {number} from '../figure-options.js';
import {mapped} from '../worked.js';

export const chamberFigure = figure({
  name: 'chamber',
  says: 'the chamber volume that gives a compression ratio',
  options: {...CYLINDER_OPTIONS, ratio: number('ratio wanted, to one', '9.5')},
  shows: ['dish', 'deck', 'gasket', 'gasket-bore'],
  work: (given) => {
    const gasket = gasketOf(given);
    if (gasket && 'ok' in gasket) return gasket;
    return mapped(chamberFor(given.ratio, {...given, gasket}), (value) => [{name: 'chamber', value}]);
  },
});
