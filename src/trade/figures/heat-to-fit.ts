/** Figure: how hot the outer part must be to go on. */
import {figure} from '../figure.js';
import {shrinkOptions, tellShrink, withRoom} from '../figure-shrink.js';
import {heatToAssemble} from '../shrink-fit.js';
import {mapped} from '../worked.js';

export const heatToFitFigure = figure({
  name: 'heat-to-fit',
  says: 'how hot the outer part of an interference fit must be to go together by hand',
  options: shrinkOptions('steel-4140'),
  work: (given) => mapped(heatToAssemble(withRoom(given)), tellShrink),
});
