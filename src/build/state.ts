/**
 * The state of the engine: which facts hold of which item at which place, each with the action that set it or
 * undid it. The state changes in place and keeps a journal, so that a branch is tried and taken back at the
 * cost of what it touched, whatever the size of the book.
 */
import {
  type Change,
  type Detail,
  FACT_KINDS,
  type Fact,
  type FactKind,
  type Facts,
  NEVER,
  type Slot,
} from './facts.js';
import type {Found} from './found.js';
import {meetFacts} from './meet-facts.js';
import type {Action} from './program.js';

/** Lives while a build is walked. */
export class State {
  /** By item and place: a handful each. */
  readonly #slots = new Map<string, Map<string, Slot[]>>();
  readonly #journal: [slot: Slot, before: Fact][] = [];

  get(kind: FactKind, item: string, place: string): Fact {
    return this.#find(kind, item, place)?.fact ?? NEVER;
  }

  holds(kind: FactKind, item: string, place: string): boolean {
    return this.get(kind, item, place).holds;
  }

  /** What is named with a fact that holds: the locks that are on, the alterations made, what a joint is sealed with. */
  named(kind: FactKind, item: string, place: string): readonly string[] {
    const {holds, detail} = this.get(kind, item, place);
    return holds ? (detail?.ids ?? []) : [];
  }

  set(kind: FactKind, item: string, place: string, by: Action, detail?: Detail): void {
    this.#write(this.#slot(kind, item, place), {kind, holds: true, by, ...(detail && {detail})});
  }

  /** The fact holds no longer; nothing happens where it did not hold. */
  undo(kind: FactKind, item: string, place: string, undone: Action): boolean {
    const {holds, by} = this.get(kind, item, place);
    if (holds) this.#write(this.#slot(kind, item, place), {kind, holds: false, undone, ...(by && {by})});
    return holds;
  }

  /** As `undo`, and remembered also where the fact did not hold. */
  spoil(kind: FactKind, item: string, place: string, undone: Action): void {
    if (!this.undo(kind, item, place, undone)) {
      this.#write(this.#slot(kind, item, place), {kind, holds: false, undone});
    }
  }

  /** Of a fact that was just undone this much still holds. */
  keep(kind: FactKind, item: string, place: string, detail: Detail): void {
    const slot = this.#slot(kind, item, place);
    this.#write(slot, {...slot.fact, holds: true, detail});
  }

  /** Adds a finding that counts only if the fact lasts; it counts for nothing where the fact does not hold. */
  fault(kind: FactKind, item: string, place: string, found: Found): void {
    const fact = this.get(kind, item, place);
    if (!fact.holds) return;
    this.#write(this.#slot(kind, item, place), {...fact, faults: [...(fact.faults ?? []), found]});
  }

  /** Every fault of a fact that holds now, each once. */
  faults(): Found[] {
    const all = [...this.#slots.values()].flatMap((places) => [...places.values()].flat());
    return [...new Set(all.flatMap(({fact}) => fact.faults ?? []))];
  }

  /** A mark to come back to with `takeBack` or to compare with by `lostSince`. */
  mark(): number {
    return this.#journal.length;
  }

  /** What was set or undone since the mark, each time that it was. */
  changesSince(mark: number): Change[] {
    return this.#journal.slice(mark).map(
      ([
        {
          kind,
          item,
          place,
          fact: {holds, undone},
        },
      ]) => ({
        kind,
        item,
        place,
        holds: holds && undone === undefined,
      }),
    );
  }

  /** Facts of a kind that hold now and did not at the mark. */
  gainedSince(mark: number, kind: FactKind): Change[] {
    const seen = new Set<Slot>();
    return this.#journal.slice(mark).flatMap(([slot, before]) => {
      const first = !seen.has(slot);
      seen.add(slot);
      const gained = first && slot.kind === kind && !before.holds && slot.fact.holds;
      return gained ? [{kind, item: slot.item, place: slot.place, holds: true}] : [];
    });
  }

  /** The fact holds, and lacks nothing. */
  whole(kind: FactKind, item: string, place: string): boolean {
    const {holds, detail} = this.get(kind, item, place);
    return holds && detail?.lacks === undefined;
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
      if (!after.has(slot)) after.set(slot, slot.fact);
      slot.fact = before;
    }
    return after;
  }

  /** Two ways meet: what holds afterwards is what holds on both. */
  meet(other: Facts): void {
    for (const [slot, there] of other) {
      const met = meetFacts(slot.fact, there);
      if (met !== slot.fact) this.#write(slot, met);
    }
  }

  /** How facts touched since the mark stood then and stand now, where the two ways would not meet as they stood then. */
  lostSince(mark: number): Facts {
    const then = new Map<Slot, Fact>();
    for (const [slot, before] of this.#journal.slice(mark)) if (!then.has(slot)) then.set(slot, before);
    const lost = new Map<Slot, Fact>();
    for (const [slot, before] of then) {
      if (meetFacts(before, slot.fact) !== before) lost.set(slot, slot.fact);
    }
    return lost;
  }

  #popAfter(mark: number): [slot: Slot, before: Fact] | undefined {
    return this.#journal.length > mark ? this.#journal.pop() : undefined;
  }

  #write(slot: Slot, fact: Fact): void {
    this.#journal.push([slot, slot.fact]);
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
    const slot: Slot = {kind, item, place, fact: NEVER};
    const places = this.#slots.get(item) ?? new Map<string, Slot[]>();
    this.#slots.set(item, places);
    const slots = places.get(place);
    if (slots === undefined) places.set(place, [slot]);
    else slots.push(slot);
    return slot;
  }
}
