/** Figure: what a torque and then an angle do to a bolt. */
import {figure} from '../figure.js';
import {optional, quantity} from '../figure-options.js';
import {frictionOption, gradeOption, threadOption} from '../figure-threads.js';
import {gradeOf} from '../grade.js';
import {torqueThenAngle} from '../torque-angle.js';
import {mapped} from '../worked.js';

export const torqueAngleFigure = figure({
  name: 'torque-angle',
  says: 'estimated preload of a torque and then an angle',
  options: {
    thread: threadOption(),
    torque: quantity('torque', 'the torque first', '30 lbf·ft'),
    angle: quantity('angle', 'the angle after it', '60°'),
    condition: frictionOption(),
    grip: quantity('length', 'what is clamped, from bearing face to bearing face', '3.5 in'),
    shank: optional(quantity('length', 'plain part of the bolt in the grip', '2.5 in')),
    grade: optional(gradeOption()),
  },
  shows: ['shank', 'grade'],
  work: ({thread, torque, angle, condition, grip, shank, grade}) => {
    const read = grade === undefined ? undefined : gradeOf(grade, thread);
    if (read && !read.ok) return read;
    const worked = torqueThenAngle({
      thread,
      torque,
      angle,
      friction: condition,
      grip,
      ...(shank ? {shank} : {}),
      ...(read ? {grade: read.grade} : {}),
    });
    return mapped(worked, ({force, byTorque, byAngle, ofYield}) => [
      {name: 'preload', value: force},
      {name: 'by the torque', value: byTorque},
      {name: 'by the angle', value: byAngle},
      ...(ofYield ? [{name: 'of the yield load', value: `${Math.round(ofYield.likely)} %`}] : []),
    ]);
  },
});
