/**
 * The state of the engine: which facts hold of which item at which place, each with the action that set it or
 * undid it. The state changes in place and keeps a journal, so that a branch is tried and taken back at the
 * cost of what it touched, whatever the size of the book.
 */
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
  /** Undefined where it never was. */
  fact: Fact | undefined;
}

/** Facts as they stand on one way, by where the state keeps them. */
export type Facts = ReadonlyMap<Slot, Fact>;

const NEVER: Fact = {holds: false};

/** Lives while a build is walked. */
export class State {
  /** By item and place: a handful each. */
  readonly #slots = new Map<string, Map<string, Slot[]>>();
  /** Those with a fact, in the order in which it was first set or undone. */
  readonly #known = new Set<Slot>();
  readonly #journal: [slot: Slot, before: Fact | undefined][] = [];

  get(kind: FactKind, item: string, place: string): Fact {
    return this.#find(kind, item, place)?.fact ?? NEVER;
  }

  holds(kind: FactKind, item: string, place: string): boolean {
    return this.#find(kind, item, place)?.fact?.holds === true;
  }

  set(kind: FactKind, item: string, place: string, by: Action, detail?: Detail): void {
    const fact = detail === undefined ? {kind, holds: true, by} : {kind, holds: true, by, detail};
    this.#write(this.#slot(kind, item, place), fact);
  }

  /** The fact holds no longer; nothing happens where it did not hold. */
  undo(kind: FactKind, item: string, place: string, undone: Action): boolean {
    const slot = this.#find(kind, item, place);
    if (!slot?.fact?.holds) return false;
    const {by, detail} = slot.fact;
    this.#write(slot, {kind, holds: false, undone, ...(by && {by}), ...(detail && {detail})});
    return true;
  }

  /** As `undo`, and remembered also where the fact did not hold. */
  spoil(kind: FactKind, item: string, place: string, undone: Action): void {
    if (!this.undo(kind, item, place, undone)) {
      this.#write(this.#slot(kind, item, place), {kind, holds: false, undone});
    }
  }

  /** Of a fact that was just undone this much still holds. */
  keep(kind: FactKind, item: string, place: string, undone: Action, detail: Detail): void {
    const slot = this.#slot(kind, item, place);
    const by = slot.fact?.by;
    this.#write(slot, {kind, holds: true, undone, detail, ...(by && {by})});
  }

  /** Adds a finding that counts only if the fact lasts. The fact must hold. */
  fault(kind: FactKind, item: string, place: string, found: Found): void {
    const slot = this.#find(kind, item, place);
    const fact = slot?.fact;
    if (slot && fact?.holds) this.#write(slot, {...fact, faults: [...(fact.faults ?? []), found]});
  }

  /** Every fault of a fact that holds now, each once. */
  faults(): Found[] {
    const all = new Set<Found>();
    for (const {fact} of this.#known) {
      if (fact?.holds) for (const found of fact.faults ?? []) all.add(found);
    }
    return [...all];
  }

  /** A mark to come back to with `takeBack` or to compare with by `lostSince`. */
  mark(): number {
    return this.#journal.length;
  }

  /** What was set or undone since the mark, each time that it was. */
  changesSince(mark: number): Change[] {
    return this.#journal.slice(mark).flatMap(([{kind, item, place, fact}]) => {
      // A fault noted on a fact that stays as it is changes nothing in its life.
      if (fact?.kind !== kind) return [];
      return [{kind, item, place, holds: fact.holds && fact.undone === undefined}];
    });
  }

  /** Facts of a kind that hold now and did not at the mark. */
  gainedSince(mark: number, kind: FactKind): Change[] {
    const seen = new Set<Slot>();
    return this.#journal.slice(mark).flatMap(([slot, before]) => {
      const first = !seen.has(slot);
      seen.add(slot);
      const gained = first && slot.kind === kind && before?.holds !== true && slot.fact?.holds === true;
      return gained ? [{kind, item: slot.item, place: slot.place, holds: true}] : [];
    });
  }

  /** The fact holds, and lacks nothing. */
  whole(kind: FactKind, item: string, place: string): boolean {
    const fact = this.#find(kind, item, place)?.fact;
    return fact?.holds === true && fact.detail?.lacks === undefined;
  }

  /** What holds of an item at a place. */
  held(item: string, place: string): FactKind[] {
    return FACT_KINDS.filter((kind) => this.whole(kind, item, place));
  }

  /** Undoes everything since the mark and returns how the touched facts stood before that. */
  takeBack(mark: number): Facts {
    const after = new Map<Slot, Fact>();
    for (let last = this.#popAfter(mark); last !== undefined; last = this.#popAfter(mark)) {
      const [slot, before] = last;
      if (!after.has(slot)) after.set(slot, slot.fact ?? NEVER);
      slot.fact = before;
      if (before === undefined) this.#known.delete(slot);
    }
    return after;
  }

  /** Two ways meet: what holds afterwards is what holds on both. */
  meet(other: Facts): void {
    for (const [slot, there] of other) {
      const here = slot.fact ?? NEVER;
      const met = meetFacts(here, there);
      if (met !== here) this.#write(slot, met);
    }
  }

  /** How facts touched since the mark stood then and stand now, where the two ways would not meet as they stood then. */
  lostSince(mark: number): Facts {
    const then = new Map<Slot, Fact | undefined>();
    for (const [slot, before] of this.#journal.slice(mark)) if (!then.has(slot)) then.set(slot, before);
    const lost = new Map<Slot, Fact>();
    for (const [slot, before] of then) {
      const now = slot.fact ?? NEVER;
      const met = meetFacts(before ?? NEVER, now);
      if (before?.holds && !sameStanding(met, before)) lost.set(slot, now);
    }
    return lost;
  }

  #popAfter(mark: number): [slot: Slot, before: Fact | undefined] | undefined {
    return this.#journal.length > mark ? this.#journal.pop() : undefined;
  }

  #write(slot: Slot, fact: Fact): void {
    const before = slot.fact;
    if (before === undefined) this.#known.add(slot);
    this.#journal.push([slot, before]);
    slot.fact = fact;
  }

  #find(kind: FactKind, item: string, place: string): Slot | undefined {
    const slots = this.#slots.get(item)?.get(place);
    if (slots === undefined) return undefined;
    for (const slot of slots) if (slot.kind === kind) return slot;
    return undefined;
  }

  #slot(kind: FactKind, item: string, place: string): Slot {
    const found = this.#find(kind, item, place);
    if (found !== undefined) return found;
    const slot: Slot = {kind, item, place, fact: undefined};
    const places = this.#slots.get(item) ?? new Map<string, Slot[]>();
    this.#slots.set(item, places);
    const slots = places.get(place);
    if (slots === undefined) places.set(place, [slot]);
    else slots.push(slot);
    return slot;
  }
}

function meetFacts(here: Fact, there: Fact): Fact {
  if (!here.holds) return here;
  if (!there.holds) return there;
  const faults = union(here.faults, there.faults);
  const weaker = here.detail?.final === true && there.detail?.final !== true ? there : here;
  const detail = ADDS_UP.has(here.kind) ? meetDetails(here.detail, there.detail) : weaker.detail;
  const same = faults === here.faults && weaker === here && detail === here.detail;
  return same ? here : {...weaker, ...(detail && {detail}), ...(faults && {faults})};
}

/** Facts to which one action adds to what others did: only what was done on both ways is done. */
const ADDS_UP: ReadonlySet<FactKind | undefined> = new Set(['locked', 'altered'] as const);

function meetDetails(here: Detail | undefined, there: Detail | undefined): Detail | undefined {
  const ids = here?.ids?.filter((id) => there?.ids?.includes(id)) ?? [];
  const lacks = [...new Set([...(here?.lacks ?? []), ...(there?.lacks ?? [])])];
  if (ids.length === (here?.ids ?? []).length && lacks.length === (here?.lacks ?? []).length) return here;
  return {ids, ...(lacks.length > 0 && {lacks})};
}

function union(here: readonly Found[] | undefined, there: readonly Found[] | undefined) {
  const added = there?.filter((found) => !here?.includes(found)) ?? [];
  return added.length === 0 ? here : [...(here ?? []), ...added];
}

function sameStanding(a: Fact, b: Fact): boolean {
  const sameDetail = !ADDS_UP.has(a.kind) || a.detail === b.detail;
  return a.holds === b.holds && a.detail?.final === b.detail?.final && a.faults === b.faults && sameDetail;
}
