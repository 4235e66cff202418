/** A thread or grade that no table has: a slip of the keyboard would switch the judging of a fastener off. */
import {itemsOfKind} from '../spec/items.js';
import type {Fastener, Specified} from '../spec/model.js';
import {gradeOf} from '../trade/grade.js';
import {readThread} from '../trade/thread.js';
import type {Refused} from '../trade/worked.js';
import type {FindingKind} from './model.js';

const PUMP = `
parts:
  block: {given: true}
  pump: {}
fasteners:
  pump-bolts:
    holds: [pump]
    thread: 5/16-19 UNC
    grade: SAE 5
    torque: 18 lbf·ft
    threads: dry
    lock: {value: none, because: stretch holds them}
`;

const STEPS = `
1. Offer the pump up. \`install: pump\`
2. Bring the bolts up. \`torque: pump-bolts\`
`;

export const notInTables: FindingKind = {
  name: 'not-in-tables',
  group: 'engineering',
  severity: 'warning',
  summary: 'A thread or a grade is in none of the tables, so that nothing is judged by it',
  why: 'Preload, engagement and cotter pin are worked out from the thread and the grade. One that cannot be read is most often a slip, and then a wrong torque goes unseen. One that is right all the same is stated with its reason (`{value: 3/8-17, because: a special of the works}`). Threads and grades of other families (Whitworth, pipe; brass) are taken as they are.',
  source: 'the tables themselves: ASME B1.1, ISO 261, SAE J429 and ISO 898-1',
  example: {
    engine: PUMP,
    rightEngine: PUMP.replace('5/16-19', '5/16-18'),
    wrong: STEPS,
    right: STEPS,
  },
  book({book: {spec}, report}) {
    for (const fastener of itemsOfKind(spec, 'fastener')) {
      for (const {value, refusal} of unread(fastener)) {
        const message = `${fastener.id}: ${refusal.says}; ${refusal.hint}`;
        report({where: value.where, message, item: fastener.id});
      }
    }
  },
};

interface Unread {
  readonly value: Specified<string>;
  readonly refusal: Refused;
}

function unread({thread, grade}: Fastener): Unread[] {
  const read = thread && readThread(thread.value);
  return [
    ...(read ? of(thread, read) : []),
    // Without its size nothing can be said of a grade.
    ...(read?.ok ? of(grade, grade && gradeOf(grade.value, read.thread)) : []),
  ];
}

type Reading = {readonly ok: true} | (Refused & {readonly foreign?: boolean});

function of(value: Specified<string> | undefined, reading: Reading | undefined): Unread[] {
  if (value === undefined || reading === undefined || reading.ok || reading.foreign === true) return [];
  return value.because !== undefined || value.value === 'unknown' ? [] : [{value, refusal: reading}];
}
