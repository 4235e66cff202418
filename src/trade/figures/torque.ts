/** Figure: the torque for a preload. */
import {figure} from '../figure.js';
import {number, optional, quantity} from '../figure-options.js';
import {frictionOption, gradeOption, threadOption} from '../figure-threads.js';
import {gradeOf} from '../grade.js';
import {torqueFor} from '../preload.js';
import {mapped} from '../worked.js';

export const torqueFigure = figure({
  name: 'torque',
  says: 'the torque for a preload, or for a share of the proof load',
  options: {
    thread: threadOption(),
    condition: frictionOption(),
    grade: optional(gradeOption()),
    share: optional(number('share of the proof load, 0.75 if not said', '0.75')),
    preload: optional(quantity('force', 'or the preload itself', '7500 lbf')),
  },
  shows: ['grade'],
  work: ({thread, condition, grade, share, preload}) => {
    const read = grade === undefined ? undefined : gradeOf(grade, thread);
    if (read && !read.ok) return read;
    const worked = torqueFor({
      thread,
      friction: condition,
      ...(preload ? {preload} : {}),
      ...(read ? {grade: read.grade} : {}),
      ...(share === undefined ? {} : {share}),
    });
    return mapped(worked, (value) => [{name: 'torque', value}]);
  },
});
