/** A torque stretches its fastener beyond what the grade bears, or hardly at all. */
import {type Action, whereIn} from '../build/program.js';
import {amountOf, amountsOf, clauseOf} from '../procedure/values.js';
import {amountsAgree} from '../quantity/convert.js';
import type {Amount} from '../quantity/model.js';
import type {Fastener, Specification} from '../spec/model.js';
import {type Preload, preloadOf} from '../trade/preload.js';
import type {WorkedOut} from '../trade/worked.js';
import type {Context, FindingKind} from './model.js';
import {specified} from './phrase.js';
import {
  aimedAt,
  type OnThreads,
  OUTRANKED,
  onThreads,
  type Reading,
  strengthOf,
  threadOf,
  told,
} from './worked-figures.js';

/** Per cent of the proof load between which the likely preload must lie. */
const BAND = {low: 50, high: 90} as const;

const CAPS = `
parts:
  block: {given: true}
  main-caps: {}
fasteners:
  main-cap-bolts:
    holds: [main-caps]
    thread: 7/16-20 UNF
    grade: SAE 5
    torque: 85 lbf·ft
    threads: [engine-oil]
    lock: {value: none, because: stretch holds them}
`;

const STEPS = `
1. Set the caps in place. \`install: main-caps\`
2. Oil the threads and under the heads. \`lube: main-cap-bolts with engine-oil\`
3. Bring the bolts up. \`torque: main-cap-bolts\`
`;

export const preloadOutOfRange: FindingKind = {
  name: 'preload-out-of-range',
  group: 'engineering',
  severity: 'warning',
  summary: 'A torque makes less than half, or more than nine tenths, of the proof load of its fastener',
  why: 'A bolt pulled past its proof load takes a set and breaks next time; one that is hardly stretched works loose. It is an estimate by thread, grade and what is on the threads: the maker’s figure outranks it, and where there is none the shop lead approves the torque. One that is stated with its reason (`because:`), and one that is turned on by an angle, are not judged.',
  source:
    'Shigley, Mechanical Engineering Design, 9th ed., Eq. 8-27 (F = T/(K·d)) and 8-31 (0.75 of proof for joints that are taken apart again, 0.90 for permanent ones); the low end of half of it is common practice, no source',
  example: {
    engine: CAPS,
    rightEngine: CAPS.replace('85 lbf·ft', '45 lbf·ft'),
    wrong: STEPS,
    right: STEPS,
  },
  specification({spec, relations, worked, report}) {
    for (const fastener of relations.fasteners) {
      const {torque, id} = fastener;
      if (typeof torque?.value !== 'object') continue;
      const message = outOfRange(fastener, torque.value, spec, worked);
      if (message !== undefined) report({where: torque.where, message, item: id});
    }
  },
  before: {torque: ofStep},
};

/** A torque that only the step states, or states otherwise than the specification. */
function ofStep(action: Action, {spec, program, worked, report}: Context): void {
  const {item, tag, step} = action;
  const clause = clauseOf(tag, 'to') ?? clauseOf(tag, 'in');
  const stated = amountOf(tag, 'to') ?? amountsOf(tag, 'in').at(-1);
  if (item.kind !== 'fastener' || clause === undefined || stated === undefined) return;
  if (clauseOf(tag, 'turn') !== undefined || !program.lastTorques.has(action)) return;
  const asked = item.torque?.value;
  if (typeof asked === 'object' && amountsAgree(stated, asked)) return;
  const message = outOfRange(item, stated, spec, worked);
  if (message === undefined) return;
  report({where: whereIn(step, clause.valueSpan), message, item: item.id, related: [specified(item)]});
}

/** What to say of the torque; undefined where it is in range, or too little is known of the fastener. */
function outOfRange(
  fastener: Fastener,
  torque: Amount,
  spec: Specification,
  read: Reading,
): string | undefined {
  const aimed = aimedAt(torque);
  const thread = threadOf(fastener, read);
  const grade = thread && strengthOf(fastener, thread, read);
  if (aimed === undefined || thread === undefined || grade === undefined) return undefined;
  if (fastener.angle !== undefined || fastener.torque?.because !== undefined) return undefined;
  for (const on of onThreads(fastener, spec)) {
    const worked = preloadOf({thread, torque: aimed, friction: on.friction, grade});
    const says = worked.ok ? judged(worked, on) : undefined;
    if (says === undefined) continue;
    return `${fastener.id}: ${told(torque, spec)} on ${thread.name} with ${says.friction} is ${says.share} of the proof load of ${grade.name} by F = T/(K·d), ${says.limit}; ${OUTRANKED}`;
  }
  return undefined;
}

function judged({result: {ofProof, friction}}: WorkedOut<Preload>, {what}: OnThreads) {
  // To a tenth of a per cent, so that what is printed is what was judged.
  const likely = Math.round((ofProof?.likely ?? 0) * 10) / 10;
  if (ofProof === undefined || (likely >= BAND.low && likely <= BAND.high)) return undefined;
  const [low, high] = [Math.round(ofProof.low), Math.round(ofProof.high)];
  const limit = likely > BAND.high ? `above ${BAND.high} %` : `below ${BAND.low} %`;
  return {
    friction: `K = ${factor(friction.nutFactor)} (${what})`,
    share: `${shown(likely)} %`,
    limit: `${limit}, and ${low}–${high} % with the scatter of a torque wrench`,
  };
}

/** A whole number, unless that would read as one of the limits. */
function shown(share: number): string {
  const whole = Math.round(share);
  return whole === BAND.low || whole === BAND.high ? share.toFixed(1) : String(whole);
}

/** `0.20`, `0.125`. */
function factor(k: number): string {
  return String(k).length > 4 ? String(k) : k.toFixed(2);
}
