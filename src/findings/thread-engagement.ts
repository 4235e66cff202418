/** A thread that goes in less deep than the full strength of its bolt takes. */
import {lowOf, si} from '../quantity/convert.js';
import type {Quantity} from '../quantity/model.js';
import type {Fastener, Specification} from '../spec/model.js';
import {minimumEngagement} from '../trade/engagement.js';
import {readTappedMetal} from '../trade/tapped-metals.js';
import type {FindingKind} from './model.js';
import {OUTRANKED, type Reading, strengthOf, threadOf, told} from './worked-figures.js';

const CAPS = `
parts:
  block: {given: true}
  main-caps: {}
fasteners:
  main-cap-bolts:
    holds: [main-caps]
    thread: 1/2-13 UNC
    grade: SAE 8
    torque: 80 lbf·ft
    threads: dry
    lock: {value: none, because: stretch holds them}
    engagement: 0.60 in
    into: cast iron
`;

const STEPS = `
1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts\`
`;

export const threadEngagement: FindingKind = {
  name: 'thread-engagement',
  group: 'engineering',
  severity: 'warning',
  summary: 'A thread has less length in engagement than the full strength of its bolt takes',
  why: 'A bolt that breaks is seen and replaced; a thread that strips in the block is a helical insert at best. It is an estimate for full threads at their widest tolerance: the maker’s figure outranks it. A length that is stated with its reason (`because:`) is not judged.',
  source:
    "FED-STD-H28/2B and Machinery's Handbook, lengths of engagement; strength of the tapped metal as in Machinery's Handbook, strength data for iron and steel, by shear",
  example: {
    engine: CAPS,
    rightEngine: CAPS.replace('0.60 in', '0.90 in'),
    wrong: STEPS,
    right: STEPS,
  },
  specification({spec, relations, worked, report}) {
    for (const fastener of relations.fasteners) {
      const {engagement} = fastener;
      if (engagement === undefined) continue;
      const message = tooShort(fastener, engagement, spec, worked);
      if (message !== undefined) report({where: engagement.where, message, item: fastener.id});
    }
  },
};

function tooShort(
  fastener: Fastener,
  engagement: NonNullable<Fastener['engagement']>,
  spec: Specification,
  read: Reading,
): string | undefined {
  const {id, into} = fastener;
  const length = lowOf(engagement.value);
  const thread = threadOf(fastener, read);
  const grade = thread && strengthOf(fastener, thread, read);
  const metal = into && readTappedMetal(into.value);
  if (!length || !thread || !grade?.tensile || !metal?.ok || engagement.because) return undefined;
  const worked = minimumEngagement({thread, bolt: grade.tensile, hole: metal.metal.strength});
  if (!worked.ok) return undefined;
  const least = asPrinted(worked.result.least);
  if (si(length) >= si(least) * (1 - 1e-9)) return undefined;
  return `${id}: ${told(length, spec)} of ${thread.name} in ${metal.metal.name} is less than the ${told(least, spec)} that the full strength of ${grade.name} takes (length of engagement, FED-STD-H28/2B); ${OUTRANKED}`;
}

/** So that a length is not found too short by less than is printed. */
function asPrinted(q: Quantity): Quantity {
  return {...q, value: Number((Math.round(q.value / q.step) * q.step).toPrecision(12))};
}
