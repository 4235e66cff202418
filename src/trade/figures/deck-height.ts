/** Figure: where a piston stands at top dead centre. */
import {deckHeight} from '../deck-height.js';
import {figure} from '../figure.js';
import {optional, quantity} from '../figure-options.js';
import {mapped} from '../worked.js';

export const deckHeightFigure = figure({
  name: 'deck-height',
  says: 'where a piston stands at top dead centre, and the squish',
  options: {
    block: quantity('length', 'middle of the crankshaft to the deck', '9.025 in'),
    stroke: quantity('length', 'stroke', '3.480 in'),
    rod: quantity('length', 'rod between centres', '5.700 in'),
    piston: quantity('length', 'middle of the pin to the crown', '1.560 in'),
    gasket: optional(quantity('length', 'head gasket, squeezed', '0.040 in')),
  },
  shows: ['gasket'],
  work: (given) =>
    mapped(deckHeight(given), ({clearance, squish}) => [
      {
        name: clearance.value < 0 ? 'deck clearance (negative: piston stands proud)' : 'deck clearance',
        value: clearance,
      },
      ...(squish ? [{name: 'squish', value: squish}] : []),
    ]),
});
