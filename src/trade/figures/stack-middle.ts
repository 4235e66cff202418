/** Figure: the middle that one size of a stack must have. */
import {figure} from '../figure.js';
import {quantity, repeated, text} from '../figure-options.js';
import {linkOption} from '../figure-stack.js';
import {middleFor} from '../stack.js';
import {mapped} from '../worked.js';

export const stackMiddleFigure = figure({
  name: 'stack-middle',
  says: 'the middle that one size of a stack must have to leave a least gap',
  options: {
    link: repeated(
      linkOption('+ case: 1.750 ±0.003 in'),
      '- shaft: 0.750 ±0.001 in',
      '- shim: 0.995 ±0.002 in',
    ),
    of: text('the name of a link', 'which size is to be changed', 'shim', (given) => ({
      ok: true,
      value: given.trim(),
    })),
    least: quantity('length', 'the least that the stack must leave', '0.003 in'),
  },
  work: ({link, of, least}) =>
    mapped(middleFor(link, of, least), (value) => [{name: `middle of ${of}`, value}]),
});
