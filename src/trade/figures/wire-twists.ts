/** Figure: how tight to twist a safety wire. */
import {figure} from '../figure.js';
import {quantity} from '../figure-options.js';
import {twistsFor} from '../wire-run.js';
import {mapped} from '../worked.js';

export const wireTwistsFigure = figure({
  name: 'wire-twists',
  says: 'how tight to twist a safety wire',
  options: {wire: quantity('length', 'diameter of the wire', '0.032 in')},
  work: ({wire}) =>
    mapped(twistsFor(wire), ({low, high}) => [{name: 'twists', value: `${low} to ${high} an inch`}]),
});
