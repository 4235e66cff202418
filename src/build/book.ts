/** A book: one engine's specification and its procedures in build order. Plain values; the host reads them from disk. */
import type {Procedure} from '../procedure/model.js';
import type {Job} from '../spec/job.js';
import type {Located, Specification} from '../spec/model.js';
import type {Problem} from '../text/problem.js';

export interface Book {
  readonly spec: Specification;
  /** In the order of `build:`; one that could not be read is left out and is a problem. */
  readonly procedures: readonly Procedure[];
  /** The engine on the stand, where it is one job that is looked at and not the procedure for all. */
  readonly job?: Job;
  /** Names in `build:` of procedures that could not be read. What they may do is not missed. */
  readonly unread?: readonly Located<string>[];
  /** What the host met on the way: files missing, unreadable, out of bounds. */
  readonly problems: readonly Problem[];
}
