/** Figure: how much safety wire to cut. */
import {figure} from '../figure.js';
import {list, optional, quantity, word} from '../figure-options.js';
import {wireLength} from '../wire-run.js';
import {mapped} from '../worked.js';

export const wireLengthFigure = figure({
  name: 'wire-length',
  says: 'how much safety wire to cut for a run',
  options: {
    spans: list('length', 'from hole to hole, one fewer than the fasteners', '2, 2, 2.5 in'),
    wire: quantity('length', 'diameter of the wire', '0.041 in'),
    head: optional(quantity('length', 'diameter of the heads', '0.75 in')),
    twist: optional(word(['double', 'single'], 'double twist if not said', 'double')),
  },
  shows: ['head'],
  work: ({spans, wire, head, twist}) =>
    mapped(wireLength({spans, wire, ...(head ? {head} : {}), ...(twist ? {twist} : {})}), (value) => [
      {name: 'cut', value},
    ]),
});
