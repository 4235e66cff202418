/** Figure: whether a gauge is fine enough for a tolerance. */
import {figure} from '../figure.js';
import {anyAmount, anyQuantity} from '../figure-any.js';
import {optional} from '../figure-options.js';
import {gaugeCapability} from '../gauge-capability.js';
import {mapped} from '../worked.js';

const VERDICT = {
  good: 'good: 10:1 or better',
  least: 'will do: between the 10:1 asked and the 4:1 that is the least',
  'too-coarse': 'TOO COARSE: under 4:1',
} as const;

export const gaugeFigure = figure({
  name: 'gauge',
  says: 'whether a gauge is fine enough for a tolerance',
  options: {
    limits: anyAmount('limits of what is measured', '2.4990–2.5000 in'),
    resolution: optional(anyQuantity('smallest division that the gauge shows', '0.0001 in')),
    accuracy: optional(anyQuantity('how far off it may be, either way', '0.0001 in')),
  },
  shows: ['resolution', 'accuracy'],
  work: ({limits, resolution, accuracy}) =>
    mapped(gaugeCapability(limits, {resolution, accuracy}), ({byResolution, byAccuracy, verdict}) => [
      {name: 'verdict', value: VERDICT[verdict]},
      ...(byResolution === undefined ? [] : [{name: 'by resolution', value: `${told(byResolution)}:1`}]),
      ...(byAccuracy === undefined ? [] : [{name: 'by accuracy', value: `${told(byAccuracy)}:1`}]),
    ]),
});

function told(times: number): string {
  return String(Number(times.toPrecision(3)));
}
