/**
 * A corpus of sentences as shop manuals write them, each labelled with the actions it commands and with whether
 * its numbers agree with the step's tag. The part here is what the rules are tuned on.
 */
import type {Verb} from '../../src/procedure/verbs.js';

export interface ProseCase {
  readonly says: string;
  /** Verbs of the actions that the sentence commands. */
  readonly commands: readonly Verb[];
  /** The tag of the step that the sentence stands in, for its numbers. */
  readonly tag?: string;
  /** How the numbers of the prose stand to the values of the tag: none of them may be about it. */
  readonly number?: 'agrees' | 'disagrees' | 'none';
}

/** The engine that the tags of the corpus speak of. Every value is invented. */
export const CORPUS_ENGINE = `
parts:
  block: {given: true}
  cylinder-head: {}
  timing-gear: {}
  crankshaft: {}
fasteners:
  main-cap-bolts: {holds: [block], torque: 85 lbf·ft, threads: dry, lock: wire-032}
  rod-nuts: {holds: [block], torque: 45 lbf·ft, passes: [15 lbf·ft, 30 lbf·ft, 45 lbf·ft], threads: dry, lock: {value: none, because: stretch}}
  head-bolts: {holds: [cylinder-head], torque: 40 N·m, angle: 90°, threads: dry, lock: {value: none, because: stretch}}
  drain-plug-thread: {holds: [block], torque: 25 lbf·ft, threads: dry, lock: {value: none, because: gasket grips}}
fits:
  main-clearance: {between: [block, crankshaft], limits: 0.0015–0.0035 in, by: strip}
  end-play: {between: [block, crankshaft], limits: 0.004–0.008 in}
  ring-gap: {between: [block, crankshaft], limits: 0.012–0.020 in}
checks:
  crank-drag: {limits: max 5 lbf·ft}
joints:
  sump-joint: {between: [block, crankshaft], seal: [liquid-gasket]}
systems:
  lubrication: {joints: [sump-joint], with: [engine-oil], amount: 7 qt}
`;
