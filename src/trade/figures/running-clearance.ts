/** Figure: clearance of a plain bearing by rule of thumb. */
import {figure} from '../figure.js';
import {quantity} from '../figure-options.js';
import {runningClearance} from '../running-clearance.js';
import {mapped} from '../worked.js';

export const runningClearanceFigure = figure({
  name: 'running-clearance',
  says: 'clearance of a plain bearing by rule of thumb',
  options: {journal: quantity('length', 'diameter of the journal', '2.500 in')},
  work: ({journal}) => mapped(runningClearance(journal), (value) => [{name: 'clearance', value}]),
});
