import {isForeignThread} from '../trade/thread.js';
import type {FindingKind} from './model.js';

const CAPS = `
parts:
  block: {given: true}
  main-caps: {}
fasteners:
  main-cap-bolts: {holds: [main-caps], thread: 1/2-14 UNC, torque: 80 lbf·ft, threads: dry, lock: {value: none, because: stretch holds them}}
`;

const STEPS = `
1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 80 lbf·ft\`
`;

export const threadUnknown: FindingKind = {
  name: 'thread-unknown',
  group: 'engineering',
  severity: 'warning',
  summary: 'A thread is written like a Unified or metric one, and is none',
  why: 'A bolt that is ordered by a wrong thread goes in for two turns and then strips the hole. A special thread is stated with its reason: `{value: …, because: …}`; threads of other families are left alone.',
  source: 'ASME B1.1, Unified threads, and ISO 261, metric threads',
  example: {
    engine: CAPS,
    rightEngine: CAPS.replace('1/2-14', '1/2-13'),
    wrong: STEPS,
    right: STEPS,
  },
  specification({relations, worked, report}) {
    for (const {id, thread} of relations.fasteners) {
      if (thread === undefined || thread.because !== undefined) continue;
      if (thread.value === 'unknown' || isForeignThread(thread.value)) continue;
      const reading = worked.thread(thread.value);
      if (reading.ok) continue;
      report({where: thread.where, message: `${id}: ${reading.says}; ${reading.hint}`, item: id});
    }
  },
};
