/** The lists of a book or a job as plain data: what is laid out, bought, tightened and waited for over the whole build. */
import type {ConsumableLine, PartLine, ToolLine, Value} from './model.js';
import type {Words} from './words.js';

/** The lists by the names that the command takes, in the order in which they are told. */
export const LIST_NAMES = ['tools', 'consumables', 'parts', 'new-parts', 'torques', 'time'] as const;

export type ListName = (typeof LIST_NAMES)[number];

/** Steps are named by sheet and step: `4.12` is step 12 of the fourth procedure of the build. */
export interface BookLists {
  readonly words: Words;
  readonly shop: string;
  readonly engine: string;
  readonly job?: string;
  readonly engineNumber?: string;
  /** The digits that are printed. */
  readonly fingerprint: string;
  readonly tools: readonly BookTool[];
  readonly consumables: readonly BookConsumable[];
  readonly parts: readonly PartLine[];
  /** New every time: to be ordered. */
  readonly newParts: readonly PartLine[];
  readonly torques: readonly TorqueLine[];
  /** Left out where nobody states a time and nothing cures. */
  readonly time?: TimeList;
}

export interface BookTool extends ToolLine {
  /** Its calibration has run out on the day asked about. */
  readonly overdue: boolean;
}

export interface BookConsumable extends ConsumableLine {
  /** Amounts that the specification states, and pieces that can be counted; empty where it is used as needed. */
  readonly quantities: readonly Value[];
  /** At how many steps it is used. */
  readonly uses: number;
}

/** One fastener, or set of them, of the torque table. */
export interface TorqueLine {
  readonly id: string;
  readonly name: string;
  readonly count: number;
  readonly thread?: string;
  readonly grade?: string;
  /** What is on the threads. */
  readonly threads?: string;
  readonly passes: readonly Value[];
  /** The final torque, or a word for it. */
  readonly torque: Value;
  /** Turned on through this after it. */
  readonly angle?: Value;
  readonly lock?: string;
  /** A stripe of paint goes across it after the torque. */
  readonly stripe?: true;
  /** Where the torque comes from. */
  readonly source?: string;
  readonly note?: string;
  readonly steps: readonly string[];
}

/** The time plan. Times are printed values: minutes up to three hours, hours beyond. */
export interface TimeList {
  readonly stretches: readonly StretchLine[];
  readonly handsOn: Value;
  readonly waits: Value;
  /** By the longest chain of work and waits, whatever the number of hands. */
  readonly earliest: Value;
  /** That chain, by the ids of stretches. */
  readonly path: readonly string[];
  readonly alone: {readonly finish: Value; readonly order: readonly string[]};
  /** Sheets that state no time, by title. */
  readonly untimed: readonly string[];
  /** Things that cure for nobody says how long. */
  readonly unknownWaits: readonly string[];
}

/** A procedure, or a part of one that ends with a cure. */
export interface StretchLine {
  readonly id: string;
  readonly title: string;
  readonly hands?: Value;
  readonly wait?: Value;
  readonly curing: readonly string[];
  /** Counted from the start of the build. */
  readonly start: Value;
  readonly end: Value;
  /** How much later it may start without putting off the finish. */
  readonly slack: Value;
  /** Stretches that can go on while it waits, by id. */
  readonly during: readonly string[];
}
