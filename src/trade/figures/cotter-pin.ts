/** Figure: the cotter pin for a bolt or a hole. */
import {cotterPinFor} from '../cotter-pin.js';
import {figure} from '../figure.js';
import {optional, quantity} from '../figure-options.js';
import {threadOption} from '../figure-threads.js';
import {mapped} from '../worked.js';

export const cotterPinFigure = figure({
  name: 'cotter-pin',
  says: 'the cotter pin for a bolt, a hole, or both',
  options: {
    thread: optional(threadOption()),
    hole: optional(quantity('length', 'hole in the shank', '0.109 in')),
    slot: optional(quantity('length', 'narrowest slot of the nut', '0.12 in')),
  },
  shows: ['thread', 'hole'],
  work: ({thread, hole, slot}) =>
    mapped(
      cotterPinFor({...(thread ? {thread} : {}), ...(hole ? {hole} : {}), ...(slot ? {slot} : {})}),
      ({take, least, most}) => [
        {name: 'take', value: take},
        ...(least ? [{name: 'least for the bolt', value: least}] : []),
        ...(most ? [{name: 'largest that goes in', value: most}] : []),
      ],
    ),
});
