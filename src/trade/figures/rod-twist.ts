/** Figure: twist of a connecting rod from its feeler. */
import {figure} from '../figure.js';
import {optional, quantity} from '../figure-options.js';
import {rodTwist} from '../straightness.js';
import {mapped} from '../worked.js';

export const rodTwistFigure = figure({
  name: 'rod-twist',
  says: 'twist of a connecting rod from the feeler under its arbor',
  options: {
    feeler: quantity('length', 'clearance at one block', '0.002 in'),
    separation: quantity('length', 'distance between the blocks', '6 in'),
    over: optional(quantity('length', 'length that the limit is stated for', '4 in')),
  },
  shows: ['over'],
  work: ({feeler, separation, over}) =>
    mapped(rodTwist(feeler, separation, over), (value) => [{name: 'twist', value}]),
});
