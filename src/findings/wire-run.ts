/** Safety wire that joins fasteners too far apart, or too many of them. */
import {quantity, si} from '../quantity/convert.js';
import type {Quantity} from '../quantity/model.js';
import type {Fastener, Specification} from '../spec/model.js';
import {LONGEST_SPAN, LONGEST_WIRE, WIDE_RUN, WIDE_SPACING} from '../trade/wire-rules.js';
import {wireLength} from '../trade/wire-run.js';
import {isLockedWith, specifiedLock} from './lock-sizes.js';
import type {FindingKind} from './model.js';
import {spansOf, widestNeighbours} from './spacing.js';
import {told} from './worked-figures.js';

const CAPS = `
parts:
  block: {given: true}
  main-caps: {}
fasteners:
  main-cap-bolts:
    holds: [main-caps]
    count: 4
    torque: 80 lbf·ft
    threads: dry
    lock: safety-wire
    layout: {unit: in, front-left: [0, 0], front-right: [0, 4.5], rear-left: [5, 0], rear-right: [5, 4.5]}
    runs: [[front-left, front-right, rear-right, rear-left]]
`;

const STEPS = `
1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 80 lbf·ft\`
3. Wire the bolts. \`lock: main-cap-bolts with wire-032\`
`;

export const wireRun: FindingKind = {
  name: 'wire-run',
  group: 'engineering',
  severity: 'warning',
  summary: 'A safety wire joins fasteners that are too far apart, or too many of them',
  why: 'Every fastener that a long wire lets turn a little slackens the next one. Beyond six inches fasteners are not wired together, from four inches on three at most, and closer ones no more than two feet of wire holds. Where the maker shows another run, that outranks this one. A run of one (`runs: [[a]]`) is wired to something else and is not judged.',
  source: 'TM 10-3930-659-34, section 2-22; TM 5-5420-202-20-4',
  example: {
    engine: CAPS,
    rightEngine: CAPS.replace('front-right, rear-right', 'front-right], [rear-right'),
    wrong: STEPS,
    right: STEPS,
  },
  specification({spec, relations, report}) {
    for (const fastener of relations.fasteners) {
      if (!isLockedWith(fastener, 'safety-wire', spec)) continue;
      const {id, lock, runs} = fastener;
      const alone = runs.length === 0 ? tooFar(fastener, spec) : undefined;
      if (alone !== undefined && lock) report({where: lock.where, message: `${id}: ${alone}`, item: id});
      for (const {value, where} of runs) {
        const says = faultOf(value, fastener, spec);
        if (says !== undefined) report({where, message: `${id}: ${says}`, item: id});
      }
    }
  },
};

const UNLESS = 'unless the maker shows another run';

/** Without runs: a fastener that stands so far from all others that no run can take it in. */
function tooFar(fastener: Fastener, spec: Specification): string | undefined {
  const widest = widestNeighbours(fastener);
  if (widest === undefined || !over(widest.apart, LONGEST_SPAN)) return undefined;
  return `${widest.id} is ${told(widest.apart, spec)} from its nearest neighbour, and beyond ${inches(LONGEST_SPAN, spec)} fasteners are not wired together (TM 10-3930-659-34 2-22); wire it to a tie point and write its run as one, ${UNLESS}`;
}

function faultOf(run: readonly string[], fastener: Fastener, spec: Specification): string | undefined {
  const spans = spansOf(run, fastener);
  if (spans === undefined || spans.length === 0) return undefined;
  const longest = spans.reduce((one, other) => (si(other) > si(one) ? other : one));
  const named = `the run ${run.join(', ')}`;
  if (over(longest, LONGEST_SPAN))
    return `${named} spans ${told(longest, spec)}, and beyond ${inches(LONGEST_SPAN, spec)} fasteners are not wired together (TM 10-3930-659-34 2-22), ${UNLESS}`;
  if (!over(quantity(WIDE_SPACING, 'in'), si(longest) / INCH)) {
    if (run.length <= WIDE_RUN) return undefined;
    return `${named} joins ${run.length} that are up to ${told(longest, spec)} apart, and from ${inches(WIDE_SPACING, spec)} on ${WIDE_RUN} is the most (TM 10-3930-659-34 2-22), ${UNLESS}`;
  }
  const [{size: wire} = {size: COMMON_WIRE}] = specifiedLock(fastener, 'safety-wire', spec);
  const cut = wireLength({spans, wire});
  if (!cut.ok || !over(cut.result, LONGEST_WIRE)) return undefined;
  return `${named} takes ${told(cut.result, spec)} of wire, and ${inches(LONGEST_WIRE, spec)} is the most (wire length, TM 10-3930-659-34 2-22), ${UNLESS}`;
}

const INCH = 0.0254;

/** Taken where only the step says which wire it is: the length hangs little on it. */
const COMMON_WIRE = quantity(0.032, 'in');

function over(length: Quantity, most: number): boolean {
  return si(length) > most * INCH * (1 + 1e-9);
}

function inches(value: number, spec: Specification): string {
  return told(quantity(value, 'in'), spec);
}
