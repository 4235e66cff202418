/**
 * The blanks of a sheet by name: what a person ticks, signs or writes down while following it. Sheets print them,
 * records answer them, and neither knows the other.
 */
import type {BranchState} from '../procedure/verbs.js';

/** Everything on one sheet that waits for an answer, in the order of the page. */
export interface Form {
  /** Id of the engine. */
  readonly engine: string;
  readonly job?: string;
  /** What is stamped on the engine, where that is known before the sheet is printed. */
  readonly engineNumber?: string;
  /** File name of the procedure without folder and ending, as its sheet is called. */
  readonly procedure: string;
  readonly title: string;
  readonly revision: string;
  /** All 64 hexadecimal digits. */
  readonly fingerprint: string;
  readonly boxes: readonly Box[];
}

export type Box = TickBox | ReadingBox | LineBox | TimeBox | HoldBox | AcceptBox;

interface BoxBase {
  /**
   * Unique in the sheet and the same each time that it is compiled: `3b:done`, `3b:1:front`, `3b:hold:crank-in`. In a
   * later round the number of the round stands behind it: `3b:done@2`.
   */
  readonly key: string;
  /** Number of the step as printed; empty for what belongs to no step: things to lay out, sections, the sign-off. */
  readonly step: string;
  /** What is asked for, in the words of the sheet. */
  readonly label: string;
  /** The branches that it stands in, from the outermost: it need be answered only if all of them are called for. */
  readonly onlyIf: readonly Branch[];
  /** How often the work has come to it, from 2; left out the first time, which is what a sheet asks for. */
  readonly round?: number;
}

/** Steps that are followed only if a reading of the item is out of its limits, on one side or either (or all of them are within). */
export interface Branch {
  /** Id of the fit or check. */
  readonly item: string;
  readonly is: BranchState;
  /** Keys of the readings that decide it, in their first round; empty where the sheet asks for none and people decide. */
  readonly boxes: readonly string[];
}

/** A step done, a place done or a pass made: ticked and initialled. */
export interface TickBox extends BoxBase {
  readonly kind: 'tick';
  /** Ticked, it sends the work back: everything from that step to this one comes round again. */
  readonly goesBack?: GoesBack;
  /** What it ends, and so vouches for. */
  readonly ends?: Ends;
}

export interface GoesBack {
  /** Number of the step. */
  readonly to: string;
  /** Keys of all boxes from there on, its own among them. */
  readonly boxes: readonly string[];
}

/** The boxes since the end of the section before, or all of the sheet. */
export type Ends = 'section' | 'sheet';

export interface ReadingBox extends BoxBase {
  readonly kind: 'reading';
  /** Id of the fit or check, and its place; empty where it has none. */
  readonly item: string;
  readonly place: string;
  /** Symbol of the unit that the reading is written in. */
  readonly unit: string;
  /** Inclusive, in `unit`. */
  readonly least?: number;
  readonly most?: number;
  /** Figures behind the point with which the limits are stated, where their numbers alone have fewer: 3 for 0.050. */
  readonly figures?: number;
  /** How far the gauge may be out, plus or minus, in `unit`; half its resolution at the least where it is known. */
  readonly doubt?: number;
  /** It can be no less than nought: a length with an upper limit alone. */
  readonly fromNought?: true;
}

/** A stamped number or another line to write on. */
export interface LineBox extends BoxBase {
  readonly kind: 'line';
  /** Id of the mark. */
  readonly item: string;
  /** What the job says must stand there. */
  readonly expected?: string;
}

/** When something was left to itself, or taken up again: a date and a time of day. */
export interface TimeBox extends BoxBase {
  readonly kind: 'time';
  /** Id of what cures. */
  readonly item: string;
  /** Of the end: key of the beginning, and for how many minutes it must be left at the least, where that is known. */
  readonly since?: string;
  readonly minutes?: number;
}

/**
 * A reading out of its limits that somebody stands by, with the reason as its value. It is not printed: a round of a
 * sheet has it only where a reading is out.
 */
export interface AcceptBox extends BoxBase {
  readonly kind: 'accept';
  /** Key of the reading. */
  readonly reading: string;
}

/** A second signature; the initials must be of somebody who did none of the `steps`. */
export interface HoldBox extends BoxBase {
  readonly kind: 'hold';
  readonly item: string;
  /** The role that signs. */
  readonly by?: string;
  /** Keys of the boxes that the same initials must not have answered. */
  readonly not: readonly string[];
  readonly ends?: Ends;
}
