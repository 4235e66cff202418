/**
 * The specification as the rest of the project sees it: shop.yaml and engine.yaml read, joined with what they
 * extend, practice filled in, and every value with the place where it was written. `shapes/` holds the shapes that
 * people write. Each list of words that a file may choose from stands here once, and its type is made of it.
 */
import type {Amount} from '../quantity/model.js';
import type {Problem} from '../text/problem.js';
import type {Source, Where} from '../text/source.js';

/** A value and where it stands. */
export interface Located<T> {
  readonly value: T;
  readonly where: Where;
}

/** A specified value: where it comes from, why it departs from practice, and whether practice supplied it. */
export interface Specified<T> extends Located<T> {
  /** Id of a source of the book; the item's own source, then the practice's, stand in for a missing one. */
  readonly source?: string;
  readonly note?: string;
  readonly because?: string;
  readonly fromPractice?: boolean;
}

/** `unknown` is an honest answer, and a finding until somebody finds out. */
export type Unknown = 'unknown';
export type None = 'none';

export type ItemKind =
  | 'part'
  | 'surface'
  | 'joint'
  | 'fastener'
  | 'fit'
  | 'mark'
  | 'check'
  | 'hold-point'
  | 'system'
  | 'alteration'
  | 'tool'
  | 'consumable';

interface ItemBase {
  readonly id: string;
  /** As a person would say it; the id with spaces where none was given. */
  readonly name: string;
  /** Place names in order; empty where the item is in one place only. */
  readonly at: readonly string[];
  /** A word of the shop's own that practice can aim at: `plain-bearing`, `drilled-head`. */
  readonly type?: string;
  readonly source?: string;
  /** What the reader and the sheet should know of it. */
  readonly note?: string;
  /** Options of which an engine must have one to have this item; empty: every engine has it. */
  readonly only: readonly Located<string>[];
  /** Where its id is written. */
  readonly where: Where;
}

/** Something that goes into the engine. The engine's own block, already there, has `given: true`. */
export interface Part extends ItemBase {
  readonly kind: 'part';
  /** Surfaces and joints that can no longer be reached once the part is in. */
  readonly closes: readonly Located<string>[];
  /**
   * What must come before it: parts in, joints sealed and cured, fasteners tight and locked, fits measured, checks made,
   * hold points witnessed, marks recorded, systems filled.
   */
  readonly after: readonly Located<string>[];
  /** It is there from the start (a block on the stand): never installed, never missed. */
  readonly given: boolean;
  /** It goes in for a while only, and is out again at the end. */
  readonly temporary: boolean;
  /** Shafts that cannot be turned while it is in: a locking pin. */
  readonly blocks: readonly Located<string>[];
  /** It must be renewed before every lasting install. */
  readonly singleUse: boolean;
  /** It has run before: inspected before it goes in. */
  readonly reused: boolean;
  /** Alterations that it needs before it goes in. */
  readonly alterations: readonly Located<string>[];
  /** Tools of which the install must name one. */
  readonly using: readonly Located<string>[];
  /** It is turned as it goes in. */
  readonly turning: boolean;
  /** Nominal size, where it must match the surface that it seats in. */
  readonly size?: Specified<Amount>;
  readonly seatsIn?: Located<string>;
  readonly hazards: readonly Located<string>[];
  readonly quantity: number;
  /** Parts of other engines that a job may fit in its place, by the name that jobs use. */
  readonly substitutes: ReadonlyMap<string, Substitute>;
}

/** A part of another engine, and what it needs before it fits this one. */
export interface Substitute {
  readonly name: string;
  /** Empty where it fits as it comes. */
  readonly alterations: readonly Located<string>[];
  readonly note?: string;
  readonly where: Where;
}

export const SURFACE_STATES = ['clean', 'dry', 'lubed'] as const;

export type SurfaceState = (typeof SURFACE_STATES)[number];

export interface Surface extends ItemBase {
  readonly kind: 'surface';
  /** The part that it is on. */
  readonly on?: Located<string>;
  /** How it goes together. `dry` is clean and kept free of lubricant. */
  readonly assembly?: Specified<SurfaceState | Unknown>;
  /** Consumables of which one lubes it. Empty: any lubricant. */
  readonly lubricants: readonly Located<string>[];
  /** Nominal size by place (or under '' for all places). */
  readonly sizes: ReadonlyMap<string, Specified<Amount>>;
  /** Undersizes to which it may be ground; empty where the specification names none. */
  readonly grinds: readonly Located<Amount>[];
  /** How the sizes go along `at`; a spec that says otherwise contradicts itself. */
  readonly order?: Located<'rising' | 'falling'>;
}

export interface Joint extends ItemBase {
  readonly kind: 'joint';
  readonly between: readonly Located<string>[];
  /** Consumables or gaskets of which one makes it up; `none` takes a reason. */
  readonly seal?: Specified<readonly string[] | None | Unknown>;
}

export const LOCKS = [
  'safety-wire',
  'cotter-pin',
  'tab-washer',
  'threadlocker',
  'spring-washer',
  'self-locking-nut',
  'lock-nut',
  'staking',
] as const;

export type LockKind = (typeof LOCKS)[number];

export interface Fastener extends ItemBase {
  readonly kind: 'fastener';
  readonly count: number;
  readonly holds: readonly Located<string>[];
  /**
   * What must come before every tightening of it: parts in (a locking pin too), fasteners at their torque, joints sealed
   * and cured. Running it down snug may come first, unless snug is all that it is asked to be.
   */
  readonly after: readonly Located<string>[];
  /** Thread and grade as the shop writes them, read by `src/trade`. */
  readonly thread?: Specified<string>;
  readonly grade?: Specified<string>;
  readonly torque?: Specified<Amount | 'snug' | None | Unknown>;
  /** Angle to turn on after the torque. */
  readonly angle?: Specified<Amount>;
  readonly passes?: Specified<readonly Amount[]>;
  /** `dry`, or the consumables of which one is on the threads. */
  readonly threads?: Specified<'dry' | readonly string[] | Unknown>;
  /** Kinds of lock, or consumables that are one, all of which go on; `none` takes a reason. */
  readonly lock?: Specified<readonly string[] | None | Unknown>;
  /** A stripe of paint is drawn across it once it is tight: the witness mark. */
  readonly stripe: boolean;
  readonly singleUse: boolean;
  /** Diameter of the hole for wire or pin. */
  readonly hole?: Specified<Amount>;
  /** Length of full threads in engagement. */
  readonly engagement?: Specified<Amount>;
  /** The metal that the thread is tapped in, as the shop says it, read by `src/trade`. */
  readonly into?: Specified<string>;
  /** Where the fasteners sit, for tightening order and wire runs: [x, y] in the unit of `layoutUnit`. */
  readonly layout: readonly {readonly id: string; readonly x: number; readonly y: number}[];
  readonly layoutUnit: 'in' | 'mm';
  /** Fasteners that one safety wire joins, by layout id, in the order in which it goes through them. */
  readonly runs: readonly Located<readonly string[]>[];
  /** Tightening order by layout id (or 1-based number where there is no layout), where the shop states it. */
  readonly order: readonly string[];
}

export interface Fit extends ItemBase {
  readonly kind: 'fit';
  /** Surfaces or parts that it lies between. */
  readonly between: readonly Located<string>[];
  readonly limits?: Specified<Amount | Unknown>;
  /** Read with a gauging strip (crushed under the fasteners of `tight`) or by a gauge. */
  readonly by: 'strip' | 'gauge';
  /** Tools or gauging strips of which one reads it. */
  readonly using: readonly Located<string>[];
  /** Fits along which it is the taper: of sizes read in one direction, the largest less the smallest. */
  readonly taperOf: readonly Located<string>[];
  /** Fits of which it is the out-of-round: of sizes read across at one place, the largest less the smallest. */
  readonly outOfRoundOf: readonly Located<string>[];
  /** Fasteners and parts after whose moving the reading counts no longer: see `src/build/disturbed.ts`. */
  readonly disturbedBy: readonly Located<string>[];
  /** The procedures must say what to do when a reading is out of its limits. */
  readonly rework: boolean;
  /** When it is measured: parts in, fasteners at their final torque. Undefined: the specification is silent. */
  readonly when?: {
    readonly installed: readonly Located<string>[];
    readonly tight: readonly Located<string>[];
    readonly where: Where;
  };
}

export interface Mark extends ItemBase {
  readonly kind: 'mark';
  /** Where on the engine it is stamped. */
  readonly stamped?: string;
  /** Another mark that must read the same. */
  readonly matches?: Located<string>;
}

export interface Check extends ItemBase {
  readonly kind: 'check';
  readonly limits?: Specified<Amount>;
  /** What is expected where it is not a number: "turns freely by hand". */
  readonly expect?: string;
  /** What must come before it is made, whenever it is: as of a part. */
  readonly after: readonly Located<string>[];
  /** Fasteners and parts after whose moving the reading counts no longer: see `src/build/disturbed.ts`. */
  readonly disturbedBy: readonly Located<string>[];
  /** The procedures must say what to do when it fails. */
  readonly rework: boolean;
  readonly using: readonly Located<string>[];
  readonly hazards: readonly Located<string>[];
}

export interface HoldPoint extends ItemBase {
  readonly kind: 'hold-point';
  /** Items that must be as specified by then. */
  readonly asks: readonly Located<string>[];
  /** The role that signs. */
  readonly by?: string;
}

export interface System extends ItemBase {
  readonly kind: 'system';
  readonly joints: readonly Located<string>[];
  /** Parts that close it, and fasteners that do (a drain plug). */
  readonly closedBy: readonly Located<string>[];
  /** What must come before every filling: as of a part. */
  readonly after: readonly Located<string>[];
  readonly with: readonly Located<string>[];
  readonly amount?: Specified<Amount>;
  readonly hazards: readonly Located<string>[];
}

export interface Alteration extends ItemBase {
  readonly kind: 'alteration';
  readonly of: readonly Located<string>[];
  /** What is done, for the sheet. */
  readonly does?: string;
  readonly using: readonly Located<string>[];
  readonly hazards: readonly Located<string>[];
}

export interface Tool extends ItemBase {
  readonly kind: 'tool';
  readonly range?: Specified<Amount>;
  readonly resolution?: Specified<Amount>;
  readonly accuracy?: Specified<string>;
  /** ISO 8601 dates. */
  readonly calibrated?: Located<string>;
  readonly due?: Located<string>;
  readonly gauge: boolean;
  readonly serial?: string;
}

export const CONSUMABLE_USES = [
  'lubricant',
  'sealant',
  'gasket',
  'cleaner',
  'lock',
  'strip',
  'fluid',
  'other',
] as const;

export type ConsumableUse = (typeof CONSUMABLE_USES)[number];

export interface Consumable extends ItemBase {
  readonly kind: 'consumable';
  readonly use: ConsumableUse;
  /** For `use: lock`: which kind of lock it is. */
  readonly lock?: LockKind;
  readonly hazards: readonly Located<string>[];
  readonly cure?: Specified<Amount>;
  /** For what goes on threads: the nut factor K that the shop knows for it, 0.09 to 0.35. */
  readonly k?: Specified<number>;
  /** For a gauging strip: what it can read. */
  readonly range?: Specified<Amount>;
  readonly size?: Specified<Amount>;
}

export type Item =
  | Part
  | Surface
  | Joint
  | Fastener
  | Fit
  | Mark
  | Check
  | HoldPoint
  | System
  | Alteration
  | Tool
  | Consumable;

export type ItemOf<K extends ItemKind> = Extract<Item, {kind: K}>;

/** What may not be used, on what, and why. */
export interface Bar {
  /** Ids of consumables, tools or parts, or a kind of lock. */
  readonly what: readonly Located<string>[];
  /** Ids of items; empty bars it everywhere in the engine. */
  readonly on: readonly Located<string>[];
  readonly because: string;
  readonly source?: string;
  readonly where: Where;
}

export interface SourceNote {
  readonly id: string;
  readonly title: string;
  readonly date?: string;
  readonly note?: string;
  readonly where: Where;
}

/** What some engines of this kind have and others have not: raw-water cooling, a second alternator. */
export interface EngineOption {
  readonly id: string;
  /** As a person would say it; the id with spaces where none was given. */
  readonly name: string;
  readonly note?: string;
  readonly where: Where;
}

export const SEVERITIES = ['error', 'warning', 'information', 'off'] as const;

export type Severity = (typeof SEVERITIES)[number];

/** BCP 47 tags of the languages that sheets and reports are printed in; the first where a shop names none. */
export const LANGUAGE_TAGS = ['en', 'de'] as const;

export type Language = (typeof LANGUAGE_TAGS)[number];

/** The first where a shop names none. */
export const PAPERS = ['A4', 'Letter'] as const;

export type Paper = (typeof PAPERS)[number];

/** Of units; the first where a shop names none. */
export const SYSTEMS = ['inch', 'metric'] as const;

export interface Shop {
  readonly name: string;
  readonly paper: Paper;
  /** Which system is printed first. */
  readonly units: (typeof SYSTEMS)[number];
  /** In which language sheets and build reports are printed. */
  readonly language: Language;
  readonly severity: ReadonlyMap<string, Located<Severity>>;
  readonly where: Where;
}

export interface Engine {
  readonly id: string;
  readonly name: string;
  readonly note?: string;
  readonly where: Where;
}

/** Everything that a book's YAML says, resolved. Always there, as far as it could be understood. */
export interface Specification {
  readonly shop: Shop;
  readonly engine: Engine;
  /** Every item by id; ids are unique across kinds, tools and consumables included. */
  readonly items: ReadonlyMap<string, Item>;
  readonly sources: ReadonlyMap<string, SourceNote>;
  readonly bars: readonly Bar[];
  /** By id, in the order in which they are listed. */
  readonly options: ReadonlyMap<string, EngineOption>;
  /** Procedure files in build order, as written, relative to the file that names them. */
  readonly build: readonly Located<string>[];
  /** The YAML texts that were read, by file name. */
  readonly files: ReadonlyMap<string, Source>;
  readonly problems: readonly Problem[];
  /** Second keys of one name in a section: what these items are called is not known. */
  readonly writtenOver?: readonly {readonly kind: ItemKind; readonly where: Where}[];
  /** A file of it could not be read whole: what it seems to lack may well be written, so nothing is judged by it. */
  readonly broken?: true;
}
