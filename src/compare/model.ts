/** What a comparison of two revisions of a book is: changes placed by what they do to the engine, each with both sides. */
import type {Remark} from '../build/found.js';
import type {StepRef} from '../build/program.js';
import type {Finding} from '../findings/model.js';

/** What a change does to the engine, worst first. */
export const EFFECTS = ['weakened', 'strengthened', 'changed', 'reworded'] as const;

/**
 * `weakened`: something is asked, done, checked or warned of less than before; `strengthened`: more; `changed`:
 * otherwise (a value, a material); `reworded`: no tag or value changed, and a person has to read the words.
 */
export type Effect = (typeof EFFECTS)[number];

/** One side of a change. */
export interface Side {
  /** What the specification asks for on this side: "safety-wire", "nothing". Left out where the change is not about an item. */
  readonly required?: string;
  /** Where to look on this side: steps in build order, or the specification. */
  readonly at: readonly Remark[];
}

/** Something that is otherwise now, by what it does to the engine. */
export interface Change {
  readonly effect: Effect;
  /** What it is about: an item with its places, `caution: fire`, `severity of left-slack`. */
  readonly subject: string;
  /** Id of the item, as the new side calls it, where it is about one. */
  readonly item?: string;
  /** What of the subject: `lock`, `torque`, `limits`, a verb, or the name of a finding. */
  readonly aspect: string;
  /** One line without a full stop, beginning with the subject. */
  readonly message: string;
  readonly before: Side;
  readonly now: Side;
  /** Findings that came with it. */
  readonly brings: readonly Finding[];
}

/** A step of both sides, or of one. */
export interface StepPair {
  readonly before?: StepRef;
  readonly now?: StepRef;
  /** It stands in another order among its neighbours, or in another procedure. */
  readonly moved: boolean;
}

export interface Comparison {
  /** Weakened first; within an effect in the order of the build, then of the specification. */
  readonly changes: readonly Change[];
  /** In the order of the new side, dropped steps where they stood. */
  readonly steps: readonly StepPair[];
  /** Findings that only the new side has, and those that only the old side had. */
  readonly brought: readonly Finding[];
  readonly settled: readonly Finding[];
}

/** What a judge saw, before pieces about the same thing are joined. */
export interface Piece {
  readonly effect: Effect;
  readonly subject: string;
  readonly item?: string;
  readonly place?: string;
  readonly aspect: string;
  /** Without the subject: "no longer locked". */
  readonly says: string;
  readonly before: readonly Remark[];
  readonly now: readonly Remark[];
  readonly brings?: readonly Finding[];
  /** Of what the specification asks for, and not of what the steps do. */
  readonly asks?: true;
}
