/** Figure: the strength of a bolt by its grade. */
import {figure} from '../figure.js';
import {optional, quantity} from '../figure-options.js';
import {gradeOption, threadOption} from '../figure-threads.js';
import {gradeOf} from '../grade.js';
import type {Named} from '../worked.js';

export const boltGradeFigure = figure({
  name: 'bolt-grade',
  says: 'proof, yield and tensile strength of a bolt by its grade',
  options: {
    thread: threadOption(),
    grade: gradeOption(),
    length: optional(quantity('length', 'length of the bolt: a long grade 2 is a grade 1', '4 in')),
  },
  work: ({thread, grade, length}) => {
    const read = gradeOf(grade, thread, length);
    if (!read.ok) return read;
    const {name, proof, yield: yielding, tensile, source} = read.grade;
    const result: Named[] = [
      {name: 'grade', value: name},
      {name: 'proof strength', value: proof},
      {name: 'yield strength', value: yielding},
      ...(tensile ? [{name: 'tensile strength', value: tensile}] : []),
    ];
    const inputs: Named[] = [
      {name: 'thread', value: thread.name},
      {name: 'grade', value: grade},
      ...(length ? [{name: 'length', value: length}] : []),
    ];
    return {ok: true, result, formula: 'as tabled for the size', inputs, source};
  },
});
