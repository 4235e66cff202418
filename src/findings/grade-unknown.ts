import type {FindingKind} from './model.js';
import {threadOf} from './worked-figures.js';

const PUMP = `
parts:
  block: {given: true}
  pump: {}
fasteners:
  pump-bolts:
    holds: [pump]
    thread: 5/16-18 UNC
    grade: SAE 55
    torque: 18 lbf·ft
    threads: dry
    lock: {value: none, because: stretch holds them}
`;

const STEPS = `
1. Offer the pump up. \`install: pump\`
2. Bring the bolts up. \`torque: pump-bolts\`
`;

export const gradeUnknown: FindingKind = {
  name: 'grade-unknown',
  group: 'engineering',
  severity: 'warning',
  summary:
    'A grade is written like one of SAE J429 or ISO 898-1, and is none, so that nothing is judged by it',
  why: 'Preload and engagement are worked out from the grade. One that cannot be read is most often a slip, and then a wrong torque goes unseen. One that is right all the same is stated with its reason: `{value: …, because: …}`; grades of other families (brass, stainless) are left alone.',
  source: 'SAE J429 and ISO 898-1, the grades and sizes that they have',
  example: {
    engine: PUMP,
    rightEngine: PUMP.replace('SAE 55', 'SAE 5'),
    wrong: STEPS,
    right: STEPS,
  },
  specification({relations, worked, report}) {
    for (const fastener of relations.fasteners) {
      const {id, grade} = fastener;
      // A grade holds for some sizes only, so without its size nothing can be said of it.
      const thread = threadOf(fastener, worked);
      if (thread === undefined || grade === undefined || grade.because !== undefined) continue;
      const reading = worked.grade(grade.value, thread);
      if (reading.ok || reading.foreign === true) continue;
      report({where: grade.where, message: `${id}: ${reading.says}; ${reading.hint}`, item: id});
    }
  },
};
