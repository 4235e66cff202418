/**
 * A sheet as plain data: everything that is printed, worked out as text, and nothing of how it is laid out. The
 * HTML, PDF and Markdown renderings all start from here; it survives a round trip through JSON unchanged.
 */
import type {PhrasingContent} from 'mdast';
import type {Branch} from '../build/form.js';
import type {Signal} from '../procedure/model.js';
import type {Verb} from '../procedure/verbs.js';
import type {Paper} from '../spec/model.js';
import type {Words} from './words.js';

/** One procedure as the apprentice follows it. */
export interface Sheet {
  readonly paper: Paper;
  /** The printed words of the sheet's language. */
  readonly words: Words;
  readonly head: Head;
  readonly identity: Identity;
  readonly before: Before;
  readonly sections: readonly SheetSection[];
  readonly waivers: readonly Waiver[];
}

/** What stands at the head of the sheet and, in part, on every page. */
export interface Head {
  readonly shop: string;
  readonly engine: string;
  readonly engineNote?: string;
  /** Number of the job; a line to write on where there is none. */
  readonly job?: string;
  /** Stamped number of the engine; a line to write on where it is not known. */
  readonly engineNumber?: string;
  readonly title: string;
  readonly revision: string;
  /** ISO 8601. */
  readonly date: string;
  readonly author?: string;
  readonly approved?: string;
  /** The digits that are printed. */
  readonly fingerprint: string;
  /** Place in the build order, counted from 1. */
  readonly turn?: {readonly number: number; readonly of: number};
}

/** What a record says that it followed. */
export interface Identity {
  /** Id of the engine. */
  readonly engine: string;
  /** File name of the sheet without its ending. */
  readonly procedure: string;
  /** All 64 hexadecimal digits. */
  readonly fingerprint: string;
}

/** Prose as Markdown nodes: text, code, emphasis, line breaks and web links, without positions, HTML or pictures. */
export type Prose = readonly PhrasingContent[];

/** What is laid out before the first step. Each line says at which steps it is needed. */
export interface Before {
  readonly tools: readonly ToolLine[];
  readonly consumables: readonly ConsumableLine[];
  readonly parts: readonly PartLine[];
  /** Single-use parts and fasteners: a new one every time. */
  readonly newParts: readonly PartLine[];
  /** One drawing for each list of places that the procedure's items have. */
  readonly places: readonly PlaceNames[];
}

export interface ToolLine {
  /** More than one where any of them will do. */
  readonly names: readonly string[];
  readonly serial?: string;
  readonly range?: Value;
  /** ISO 8601 date until which its calibration holds. */
  readonly due?: string;
  readonly steps: readonly string[];
}

/** Something used up: the names of which any one will do, and what it does to who handles it. */
export interface ConsumableLine {
  readonly names: readonly string[];
  readonly hazards: readonly string[];
  readonly cure?: Value;
  readonly steps: readonly string[];
}

/** A part or fastener to fit; `quantity` is for the places that these steps fit. */
export interface PartLine {
  readonly name: string;
  readonly quantity: number;
  readonly hazards: readonly string[];
  readonly steps: readonly string[];
}

/** A value in the shop's units, and in the other system where the two differ. */
export interface Value {
  readonly text: string;
  readonly also?: string;
}

/** What stands below one heading of the procedure. */
export interface SheetSection {
  /** Empty for what stands before the first heading. */
  readonly title: string;
  /** 2 for a section, 3 for a part of it, and so on; never skips one on the way down. */
  readonly level: number;
  readonly content: readonly SheetBlock[];
}

export type SheetBlock =
  | {readonly type: 'row'; readonly row: Row}
  | {readonly type: 'prose'; readonly prose: Prose}
  | {readonly type: 'notice'; readonly notice: Notice}
  | {readonly type: 'figure'; readonly figure: Figure}
  | {readonly type: 'list'; readonly items: readonly ListItem[]}
  /** Code, a table, or what else is printed as it was typed. */
  | {readonly type: 'typed'; readonly text: string};

export interface ListItem {
  /** 0 for the outermost list. */
  readonly depth: number;
  readonly prose: Prose;
}

/** A step or sub-step: one box, one set of initials. */
export interface Row {
  /** As printed, `3` or `3b`; unique in the sheet. */
  readonly number: string;
  /** Key of its box. */
  readonly key: string;
  /** Stand above the row, never parted from it. */
  readonly notices: readonly Notice[];
  readonly prose: Prose;
  readonly entries: readonly Entry[];
  readonly more: readonly SheetBlock[];
  readonly holds: readonly Hold[];
  /** Set where the sub-steps are followed only in one case: "Only if the main clearance is out of limits". */
  readonly onlyIf?: string;
  /** The same case, for whoever reads what was measured. */
  readonly branch?: Branch;
  /** Number of the step that it sends the work back to. */
  readonly backTo?: string;
  readonly rows: readonly Row[];
}

/** A caution before a step. */
export interface Notice {
  readonly signal: Signal;
  readonly prose: Prose;
  /** As words: "hot metal". */
  readonly hazards: readonly string[];
}

/** A picture: `url` is where the author found it, or the picture itself where it lies in the sheet. */
export interface Figure {
  readonly url: string;
  readonly alt: string;
  readonly caption?: string;
}

/** What one tag adds to the prose of its step: values, and boxes or blanks to fill. */
export interface Entry {
  readonly verb: Verb;
  /** "Torque". */
  readonly title: string;
  /** "main cap bolts", with the places where the tag names them. */
  readonly subject: string;
  readonly facts: readonly Fact[];
  readonly blanks?: Blanks;
  /** Runs of safety wire, or where the gauging strips lie. */
  readonly drawing?: Drawing;
}

/** A value beside a step, with what it is called and what must be said of it. */
export interface Fact extends Value {
  readonly label: string;
  readonly note?: string;
}

/** What the hand fills in beside a step. Every box, line and blank has a key (`keys.ts`), in the same order. */
export type Blanks =
  /** One small box a place. */
  | {readonly type: 'ticks'; readonly labels: readonly string[]; readonly keys: readonly string[]}
  | ReadingBlanks
  /** Lines to write on. */
  | {
      readonly type: 'lines';
      /** Id of the mark, joint or whatever else it is about. */
      readonly item: string;
      readonly labels: readonly string[];
      readonly keys: readonly string[];
      /** What the job says must stand there. */
      readonly expected?: string;
      /** They are the times between which something is left to itself, and for how many minutes at the least. */
      readonly times?: {readonly minutes?: number};
    }
  | TighteningBlanks;

/** One reading a place, in `unit`, and room for those of later rounds where the step can come round again. */
export interface ReadingBlanks {
  readonly type: 'readings';
  /** Id of the fit or check. */
  readonly item: string;
  readonly unit: string;
  readonly limits?: Value;
  /** The limits as numbers in `unit`; an end that is open, or not known, is left out. */
  readonly least?: number;
  readonly most?: number;
  /** As in the box of a reading. */
  readonly figures?: number;
  /** How far the gauge may be out, plus or minus, in `unit`. */
  readonly doubt?: number;
  /** It can be no less than nought. */
  readonly fromNought?: true;
  readonly labels: readonly string[];
  /** Ids of the places; a single empty one where the item has but one. */
  readonly places: readonly string[];
  readonly again: boolean;
  /** A key a place. */
  readonly keys: readonly string[];
}

/** A box a pass, for each fastener in turn where the order is known, otherwise for each place or the whole set. */
export interface TighteningBlanks {
  readonly type: 'tightening';
  readonly passes: readonly {readonly label: string; readonly value?: Value}[];
  /** In tightening order where `ordered`; a single empty name stands for the whole set. */
  readonly positions: readonly string[];
  /** For each pass a key a position. */
  readonly keys: readonly (readonly string[])[];
  readonly ordered: boolean;
  /** Said of the order where the shop does not state it. */
  readonly note?: string;
  readonly drawing?: Drawing;
}

/** A drawing in a frame `width` × `height` with y downwards; the longer side is 1. */
export interface Drawing {
  /** Fasteners and wires are to scale; places and gauging strips stand in a row, in the order of their list. */
  readonly kind: 'fasteners' | 'wire' | 'strips' | 'places';
  readonly width: number;
  readonly height: number;
  /** `number` is the place in the tightening order, from 1, where it is known. */
  readonly points: readonly {
    readonly name: string;
    readonly x: number;
    readonly y: number;
    readonly number?: number;
  }[];
  /** For each safety wire the points that it joins, as indexes, in the order in which it goes. */
  readonly wires?: readonly (readonly number[])[];
  /** The threads tighten to the left, so that the wires pull the other way. */
  readonly leftHanded?: boolean;
}

/** What the places of some items are called, and in which order they are listed. */
export interface PlaceNames {
  readonly items: readonly string[];
  /** There are more items than are named. */
  readonly more: boolean;
  readonly drawing: Drawing;
}

/** Work stops until a second person has signed. */
export interface Hold {
  readonly id: string;
  readonly key: string;
  readonly name: string;
  /** The role that signs. */
  readonly by?: string;
  /** What that person looks at by name, the same with its value ("sump plug: 40 lbf·ft"), and the keys of their boxes. */
  readonly asks: readonly string[];
  readonly asked: readonly string[];
  readonly askKeys: readonly string[];
  /** Numbers of the steps whose work is looked at: whoever signs did none of it. */
  readonly steps: readonly string[];
}

/** A finding that is let stand, for a reason that somebody answers for. */
export interface Waiver {
  readonly step: string;
  readonly finding: string;
  readonly reason: string;
  readonly approvedBy?: string;
}
