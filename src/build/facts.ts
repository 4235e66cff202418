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
  /** The action that undid it since. */
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

const NEVER: Fact = {holds: false};

export class State {
  readonly #facts = new Map<string, Fact>();
  readonly #journal: [key: string, before: Fact | undefined][] = [];

  get(kind: FactKind, item: string, place: string): Fact {
    return this.#facts.get(keyOf(kind, item, place)) ?? NEVER;
  }

  holds(kind: FactKind, item: string, place: string): boolean {
    return this.get(kind, item, place).holds;
  }

  set(kind: FactKind, item: string, place: string, by: Action, detail?: Detail): void {
    this.#write(keyOf(kind, item, place), {kind, holds: true, by, ...(detail && {detail})});
  }

  /** The fact holds no longer; nothing happens where it did not hold. */
  undo(kind: FactKind, item: string, place: string, undone: Action): boolean {
    const key = keyOf(kind, item, place);
    const fact = this.#facts.get(key);
    if (!fact?.holds) return false;
    const {by, detail} = fact;
    this.#write(key, {kind, holds: false, undone, ...(by && {by}), ...(detail && {detail})});
    return true;
  }

  /** As `undo`, and remembered also where the fact did not hold. */
  spoil(kind: FactKind, item: string, place: string, undone: Action): void {
    if (!this.undo(kind, item, place, undone)) {
      this.#write(keyOf(kind, item, place), {kind, holds: false, undone});
    }
  }

  /** Adds a finding that counts only if the fact lasts. The fact must hold. */
  fault(kind: FactKind, item: string, place: string, found: Found): void {
    const key = keyOf(kind, item, place);
    const fact = this.#facts.get(key);
    if (fact?.holds) this.#write(key, {...fact, faults: [...(fact.faults ?? []), found]});
  }

  /** Every fault of a fact that holds now, each once. */
  faults(): Found[] {
    const all = new Set<Found>();
    for (const fact of this.#facts.values()) {
      if (fact.holds) for (const found of fact.faults ?? []) all.add(found);
    }
    return [...all];
  }

  /** A mark to come back to with `takeBack` or to compare with by `lostSince`. */
  mark(): number {
    return this.#journal.length;
  }

  /** What was set or undone since the mark, each time that it was. */
  changesSince(mark: number): Change[] {
    return this.#journal.slice(mark).flatMap(([key]) => {
      const fact = this.#facts.get(key);
      const [kind, item = '', ...place] = key.split(' ');
      // A fault noted on a fact that stays as it is changes nothing in its life.
      if (fact?.kind === undefined || fact.kind !== kind) return [];
      return [{kind: fact.kind, item, place: place.join(' '), holds: fact.holds}];
    });
  }

  /** Facts of a kind that hold now and did not at the mark. */
  gainedSince(mark: number, kind: FactKind): Change[] {
    const seen = new Set<string>();
    return this.#journal.slice(mark).flatMap(([key, before]) => {
      const first = !seen.has(key);
      seen.add(key);
      const [own, item = '', ...place] = key.split(' ');
      const gained = first && own === kind && before?.holds !== true && this.#facts.get(key)?.holds === true;
      return gained ? [{kind, item, place: place.join(' '), holds: true}] : [];
    });
  }

  /** What holds of an item at a place. */
  held(item: string, place: string): FactKind[] {
    return FACT_KINDS.filter((kind) => this.holds(kind, item, place));
  }

  /** Undoes everything since the mark and returns how the touched facts stood before that. */
  takeBack(mark: number): Map<string, Fact> {
    const after = new Map<string, Fact>();
    while (this.#journal.length > mark) {
      const [key, before] = this.#journal.pop() ?? ['', undefined];
      if (!after.has(key)) after.set(key, this.#facts.get(key) ?? NEVER);
      if (before === undefined) this.#facts.delete(key);
      else this.#facts.set(key, before);
    }
    return after;
  }

  /** Two ways meet: what holds afterwards is what holds on both. */
  meet(other: ReadonlyMap<string, Fact>): void {
    for (const [key, there] of other) {
      const here = this.#facts.get(key) ?? NEVER;
      const met = meetFacts(here, there);
      if (met !== here) this.#write(key, met);
    }
  }

  /** How facts touched since the mark stood then and stand now, where the two ways would not meet as they stood then. */
  lostSince(mark: number): Map<string, Fact> {
    const then = new Map<string, Fact | undefined>();
    for (const [key, before] of this.#journal.slice(mark)) if (!then.has(key)) then.set(key, before);
    const lost = new Map<string, Fact>();
    for (const [key, before] of then) {
      const now = this.#facts.get(key) ?? NEVER;
      const met = meetFacts(before ?? NEVER, now);
      if (before?.holds && !sameStanding(met, before)) lost.set(key, now);
    }
    return lost;
  }

  #write(key: string, fact: Fact): void {
    this.#journal.push([key, this.#facts.get(key)]);
    this.#facts.set(key, fact);
  }
}

function keyOf(kind: FactKind, item: string, place: string): string {
  return `${kind} ${item} ${place}`;
}

function meetFacts(here: Fact, there: Fact): Fact {
  if (!here.holds) return here;
  if (!there.holds) return there;
  const faults = union(here.faults, there.faults);
  const weaker = here.detail?.final === true && there.detail?.final !== true ? there : here;
  return faults === here.faults && weaker === here ? here : {...weaker, ...(faults && {faults})};
}

function union(here: readonly Found[] | undefined, there: readonly Found[] | undefined) {
  const added = there?.filter((found) => !here?.includes(found)) ?? [];
  return added.length === 0 ? here : [...(here ?? []), ...added];
}

function sameStanding(a: Fact, b: Fact): boolean {
  return a.holds === b.holds && a.detail?.final === b.detail?.final && a.faults === b.faults;
}
