/** Figure: the thrust washer that brings the end play right. */
import {thrustWasher} from '../end-play.js';
import {figure} from '../figure.js';
import {amount, list, quantity} from '../figure-options.js';
import {mapped} from '../worked.js';

export const thrustWasherFigure = figure({
  name: 'thrust-washer',
  says: 'the thrust washer of a set that brings the end play within its limits',
  options: {
    play: quantity('length', 'end play that was measured', '0.0090 in'),
    limits: amount('length', 'limits of the end play', '0.0020–0.0071 in'),
    washer: quantity('length', 'thickness of the washer that is in', '0.0910 in'),
    set: list('length', 'thicknesses that can be had', '0.091, 0.093, 0.095 in'),
  },
  work: ({play, limits, washer, set}) =>
    mapped(thrustWasher(play, limits, washer, set), (found) => [
      {name: 'washer', value: found.washer},
      {name: 'end play with it', value: found.play},
    ]),
});
