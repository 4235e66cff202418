/**
 * What the readers (specification, procedure) could not understand or accept. They return problems as data
 * beside what they did understand; a finding of the same name in `src/findings` makes the text of it.
 */
import type {Fix} from './edit.js';
import type {Where} from './source.js';

/** The names of findings that readers report; each is a file in `src/findings`. */
export type ProblemName =
  | 'tag-form'
  | 'unknown-verb'
  | 'unknown-item'
  | 'wrong-kind'
  | 'clause-not-taken'
  | 'front-matter'
  | 'tag-outside-step'
  | 'unit-missing'
  | 'unit-wrong-kind'
  | 'spec-form'
  | 'source-missing'
  | 'tool-not-in-shop'
  | 'spec-contradiction'
  | 'spec-silent'
  | 'file-unreadable'
  | 'picture-missing'
  | 'not-in-build';

export interface Problem {
  readonly name: ProblemName;
  readonly where: Where;
  /** What is wrong here, a clause without capital or full stop: "torque takes no `with`". */
  readonly says: string;
  /** What to do about it, likewise: "did you mean main-caps?". */
  readonly hint?: string;
  /** The item that it is about, where there is one. */
  readonly item?: string;
  readonly related?: readonly {readonly where: Where; readonly says: string}[];
  readonly fix?: Fix;
  /** Where something else stands that is wrong, and must be mended first: it is told there, and not here. */
  readonly cause?: Where;
}
