/** Figure: how deep a thread must go in. */
import {minimumEngagement} from '../engagement.js';
import {figure} from '../figure.js';
import {optional, quantity} from '../figure-options.js';
import {threadOption} from '../figure-threads.js';
import {mapped} from '../worked.js';

export const engagementFigure = figure({
  name: 'engagement',
  says: 'how deep a thread must go in to bear what the bolt does',
  options: {
    thread: threadOption(),
    bolt: optional(quantity('pressure', 'tensile strength of the bolt', '120 ksi')),
    hole: optional(quantity('pressure', 'tensile strength of the tapped metal', '40 ksi')),
  },
  shows: ['bolt', 'hole'],
  work: ({thread, bolt, hole}) =>
    mapped(
      minimumEngagement({thread, ...(bolt ? {bolt} : {}), ...(hole ? {hole} : {})}),
      ({least, diameters, weaker}) => [
        {name: 'least engagement', value: least},
        {name: 'in diameters', value: diameters.toFixed(2)},
        {name: 'strips first', value: `the thread of the ${weaker}`},
      ],
    ),
});
