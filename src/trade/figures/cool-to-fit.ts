/** Figure: how cold the inner part must be to go in. */
import {figure} from '../figure.js';
import {shrinkOptions, tellShrink, withRoom} from '../figure-shrink.js';
import {coolToAssemble} from '../shrink-fit.js';
import {mapped} from '../worked.js';

export const coolToFitFigure = figure({
  name: 'cool-to-fit',
  says: 'how cold the inner part of an interference fit must be to go together by hand',
  options: shrinkOptions('steel'),
  work: (given) => mapped(coolToAssemble(withRoom(given)), tellShrink),
});
