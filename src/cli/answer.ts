/** What the check says of one found book: plain data, so that it can be kept, sent and put together with others. */
import type {HouseFinding} from '../findings/house.js';
import type {Failure} from '../host/failure.js';
import type {CheckJson} from './check-shape.js';
import type {HouseFaultJson} from './house-faults.js';

export type FindingJson = CheckJson['findings'][number];

/** Of a book as it holds for all engines of its kind, or for one job. */
export interface BookReport {
  readonly counts: {
    readonly jobs: number;
    readonly procedures: number;
    readonly steps: number;
    readonly tags: number;
    readonly items: number;
    readonly covered: number;
    /** 1 where its specification cannot be read whole, so that none of its items is counted. */
    readonly unjudged: number;
  };
  /** Ids of the items that no step deals with. */
  readonly uncovered: readonly string[];
  /** Names of the files of its procedures, in build order. */
  readonly procedures: readonly string[];
  /** Names of all files that were judged: of a book asked for in part, those of that part. */
  readonly files: readonly string[];
  readonly findings: readonly FindingJson[];
}

/** All that outlives a book when it has been checked. */
export interface Answer {
  /** Several where a book was asked about once for each of its jobs, none where it lacks the job or is only a base. */
  readonly reports: readonly BookReport[];
  /** The numbers of all its jobs. */
  readonly jobs: readonly string[];
  /** It was come upon in a search and has no `build:`, so it is no book. */
  readonly base?: true;
  /** Why it could not be read. */
  readonly failure?: Failure;
  /** What went wrong in rules of the house. */
  readonly houseFaults?: readonly HouseFaultJson[];
}

/** What an answer hangs on beside the files of its book. */
export interface AnswerOptions {
  readonly cwd: string;
  /** Today's ISO 8601 date. */
  readonly date: string;
  /** Number of a job, or `all`. */
  readonly job?: string | undefined;
  /** Rules of the house. What they say is never kept: nobody knows what else it hangs on. */
  readonly rules?: readonly HouseFinding[] | undefined;
}
