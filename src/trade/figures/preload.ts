/** Figure: what a torque does to a bolt. */
import {figure} from '../figure.js';
import {optional, quantity, word} from '../figure-options.js';
import {frictionOption, gradeOption, METHODS, threadOption} from '../figure-threads.js';
import {gradeOf} from '../grade.js';
import {type Preload, preloadOf, type Spread} from '../preload.js';
import {mapped, type Named} from '../worked.js';

export const preloadFigure = figure({
  name: 'preload',
  says: 'what a torque does to a bolt: preload, its scatter, and per cent of the proof load',
  options: {
    thread: threadOption(),
    torque: quantity('torque', 'the torque', '55 lbf·ft'),
    condition: frictionOption(),
    grade: optional(gradeOption()),
    method: optional(word(METHODS, 'how it is tightened, a torque wrench if not said', 'torque wrench')),
    prevailing: optional(quantity('torque', 'torque that runs a self-locking nut down', '5 lbf·ft')),
  },
  shows: ['grade'],
  work: ({thread, torque, condition, grade, method, prevailing}) => {
    const read = grade === undefined ? undefined : gradeOf(grade, thread);
    if (read && !read.ok) return read;
    const worked = preloadOf({
      thread,
      torque,
      friction: condition,
      ...(read ? {grade: read.grade} : {}),
      ...(method ? {method} : {}),
      ...(prevailing ? {prevailing} : {}),
    });
    return mapped(worked, tell);
  },
});

function tell({force, stress, ofProof, ofYield}: Preload): readonly Named[] {
  return [
    {name: 'preload', value: force},
    {name: 'stress', value: stress},
    ...(ofProof ? [{name: 'of the proof load', value: spread(ofProof)}] : []),
    ...(ofYield ? [{name: 'of the yield load', value: spread(ofYield)}] : []),
  ];
}

function spread({likely, low, high}: Spread): string {
  return `${Math.round(likely)} % (${Math.round(low)} to ${Math.round(high)} %)`;
}
