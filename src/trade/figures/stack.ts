/** Figure: what a chain of sizes adds up to. */
import {figure} from '../figure.js';
import {number, optional, repeated} from '../figure-options.js';
import {linkOption} from '../figure-stack.js';
import {stack} from '../stack.js';
import {mapped} from '../worked.js';

export const stackFigure = figure({
  name: 'stack',
  says: 'what a chain of sizes adds up to, at worst and by chance',
  options: {
    link: repeated(
      linkOption('+ gear case: 1.750 ±0.003 in'),
      '- shaft: 0.750 ±0.001 in',
      '- shim: 0.995 ±0.002 in',
    ),
    inflation: optional(number('factor that widens the root sum square, 1 to 2', '1.5')),
  },
  work: ({link, inflation}) =>
    mapped(stack(link, inflation), ({mean, worstCase, rootSumSquare}) => [
      {name: 'mean', value: mean},
      {name: 'worst case', value: worstCase},
      {name: 'root sum square', value: rootSumSquare},
    ]),
});
