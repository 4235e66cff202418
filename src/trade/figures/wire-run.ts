/** Figure: how many fasteners one wire may join. */
import {figure} from '../figure.js';
import {number, optional, quantity, word} from '../figure-options.js';
import {wireRun} from '../wire-run.js';
import {mapped} from '../worked.js';

export const wireRunFigure = figure({
  name: 'wire-run',
  says: 'how many fasteners one safety wire may join',
  options: {
    count: number('number of fasteners', '10'),
    spacing: quantity('length', 'distance between them', '2 in'),
    wire: quantity('length', 'diameter of the wire', '0.041 in'),
    head: optional(quantity('length', 'diameter of the heads', '0.75 in')),
    twist: optional(word(['double', 'single'], 'double twist if not said', 'double')),
  },
  work: ({count, spacing, wire, head, twist}) =>
    mapped(
      wireRun({count, spacing, wire, ...(head ? {head} : {}), ...(twist ? {twist} : {})}),
      ({most, runs}) => [
        {name: 'in one run, at most', value: String(most)},
        {name: 'runs', value: String(runs)},
      ],
    ),
});
