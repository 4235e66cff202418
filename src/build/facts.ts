/** What can be known of the engine: the facts, what is remembered with each, and the changes that a step makes. */
import type {Amount} from '../quantity/model.js';
import type {Found} from './found.js';
import type {Action} from './program.js';

export const FACT_KINDS = [
  'clean',
  'lubed',
  'strip',
  'crushed',
  'inspected',
  'installed',
  'turned',
  'altered',
  'fresh',
  'threads',
  'tight',
  'locked',
  'striped',
  'measured',
  'sealed',
  'cured',
  'filled',
  'checked',
  'recorded',
  'witnessed',
] as const;

export type FactKind = (typeof FACT_KINDS)[number];

/** What is known beyond that a fact holds: materials by id, or how tight. */
export interface Detail {
  /** Materials, locks or alterations named. */
  readonly ids?: readonly string[];
  /** For `locked`: the locks asked for that are not on. */
  readonly lacks?: readonly string[];
  /** For `tight`: the torque reached (undefined for snug), and whether that is the specified end of it. */
  readonly torque?: Amount;
  readonly final?: boolean;
}

export interface Fact {
  /** Left out of a fact that never was. */
  readonly kind?: FactKind;
  readonly holds: boolean;
  /** The action that set it last; kept when it is undone. */
  readonly by?: Action;
  /** The action that undid it since, or part of it where it still holds. */
  readonly undone?: Action;
  readonly detail?: Detail;
  /** Findings that count only if the fact lasts to the end of the build: a trial fit may be undone. */
  readonly faults?: readonly Found[];
}

/** A fact that was set or undone. */
export interface Change {
  readonly kind: FactKind;
  readonly item: string;
  readonly place: string;
  readonly holds: boolean;
}

/** Where the state keeps one fact of one item at one place. */
export interface Slot {
  readonly kind: FactKind;
  readonly item: string;
  readonly place: string;
  fact: Fact;
}

/** Facts as they stand on one way, by where the state keeps them. */
export type Facts = ReadonlyMap<Slot, Fact>;

/** Of a fact that was neither set nor undone so far. */
export const NEVER: Fact = {holds: false};
