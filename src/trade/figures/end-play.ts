/** Figure: end play of a shaft from its lengths. */
import {endPlay} from '../end-play.js';
import {figure} from '../figure.js';
import {amount} from '../figure-options.js';
import {mapped} from '../worked.js';

export const endPlayFigure = figure({
  name: 'end-play',
  says: 'end play of a shaft from the lengths of its parts',
  options: {
    between: amount('length', 'between the thrust faces of the shaft', '1.6250–1.6270 in'),
    over: amount('length', 'over the thrust bearing, washers included', '1.6190–1.6210 in'),
  },
  work: ({between, over}) =>
    mapped(endPlay(between, over), ({least, most}) => [
      {name: 'end play', value: {form: 'range', low: least, high: most}},
    ]),
});
