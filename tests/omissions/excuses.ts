/** Faults that truly change nothing, reviewed one by one, each with its reason. */
import type {Excuse} from './run.js';

interface Reviewed {
  readonly kind: RegExp;
  /** Matched against `file:line: kind (verb: names)`. */
  readonly fault: RegExp;
  readonly why: string;
}

const REVIEWED: readonly Reviewed[] = [
  {
    kind: /^drop a (step|tag|place)$/,
    fault: /\(loosen: (adjuster-nuts|generator-bolts|rod-bolts|cover-screws)\)$/,
    why: 'a fastener that is torqued again without being taken off ends the build exactly as it would have: tight and locked',
  },
  {
    kind: /^drop a (step|tag)$/,
    fault: /\(alter: guide-\d+\)$/,
    why: 'these parts are altered for one job only, and a job makes the alteration of its substitutes a step of the sheet where no step of the procedure does it',
  },
  {
    kind: /^drop a caution$/,
    fault: /10-ancillaries\.md:\d+: .*\(hazard: fire, vapour\)$/,
    why: 'the solvent is warned of at the head of the same procedure, and one warning of a material speaks for the whole of it',
  },
];

export const excuse: Excuse = (_, fault, described) =>
  REVIEWED.find((one) => one.kind.test(fault.kind) && one.fault.test(described))?.why;
