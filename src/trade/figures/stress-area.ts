/** Figure: tensile stress area of a thread. */
import {figure} from '../figure.js';
import {threadOption} from '../figure-threads.js';
import {tensileStressArea} from '../stress-area.js';
import {mapped} from '../worked.js';

export const stressAreaFigure = figure({
  name: 'stress-area',
  says: 'tensile stress area of a thread',
  options: {thread: threadOption()},
  work: ({thread}) => mapped(tensileStressArea(thread), ({text}) => [{name: 'stress area', value: text}]),
});
