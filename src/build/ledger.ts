/**
 * Walks a program from a bare block to the end of the build, changing the state action by action, and lets a
 * visitor look just before each. At a branch what holds afterwards is what holds on both ways; a repeat takes
 * the procedure round again with less taken for granted at the step that it goes back to, until nothing changes.
 */
import type {Book} from './book.js';
import {apply} from './effects.js';
import {type Change, type Fact, type Slot, State} from './facts.js';
import {
  type Action,
  type Branch,
  type Node,
  type Program,
  program,
  readPart,
  type StepRef,
} from './program.js';
import {type Relations, relations} from './relations.js';

export interface Visitor {
  step?(step: StepRef, state: State): void;
  /** Before the action changes the state. */
  before?(action: Action, state: State): void;
  after?(action: Action, state: State): void;
  /** When a branch is reached, after the step's own actions. */
  branch?(node: Node & {readonly when: Branch}, state: State): void;
  /** At a repeat: which parts are in, and which fasteners tight, that were not when the step gone back to was first come to. */
  repeat?(node: Node, state: State, gained: readonly Change[]): void;
  end?(state: State): void;
  /** While a loop is settled the visitor is called too, so that it can leave its marks in the state, but must report nothing. */
  settling?(on: boolean): void;
}

export interface Ledger {
  readonly program: Program;
  readonly relations: Relations;
  /** Walks the build; each visitor method is called once for each step and action. */
  walk(visitor: Visitor): void;
}

/** What a ledger is made of, one thing of each specification or procedure: the same for the same, so that it may be kept. */
export interface Pieces {
  readonly part: typeof readPart;
  readonly relations: typeof relations;
}

export function ledger(book: Book, pieces: Pieces = {part: readPart, relations}): Ledger {
  const read = program(book, pieces.part);
  const known = {...pieces.relations(book.spec), lastTorques: read.lastTorques};
  return {program: read, relations: known, walk: (visitor) => walk(read, known, visitor)};
}

function walk(read: Program, known: Relations, visitor: Visitor): void {
  const state = new State();
  for (const part of read.parts) {
    const losses = settle(part.nodes, state, known, visitor);
    new Walk(state, known, visitor, losses).nodes(part.nodes);
  }
  visitor.end?.(state);
}

/** What each step that is gone back to cannot take for granted; found by going round until no more is lost. */
type Losses = Map<string, Map<Slot, Fact>>;

function settle(nodes: readonly Node[], state: State, known: Relations, visitor: Visitor): Losses {
  const losses: Losses = new Map();
  if (!repeats(nodes)) return losses;
  visitor.settling?.(true);
  for (let changed = true; changed; ) {
    const mark = state.mark();
    const round = new Walk(state, known, visitor, losses);
    round.nodes(nodes);
    state.takeBack(mark);
    changed = round.lost;
  }
  visitor.settling?.(false);
  return losses;
}

function repeats(nodes: readonly Node[]): boolean {
  return nodes.some((node) => node.repeat !== undefined || repeats(node.below));
}

/** One walk over one procedure. */
class Walk {
  /** A repeat came back with less than its step took for granted. */
  lost = false;
  readonly #state: State;
  readonly #known: Relations;
  readonly #visitor: Visitor;
  readonly #losses: Losses;
  readonly #marks = new Map<string, number>();

  constructor(state: State, known: Relations, visitor: Visitor, losses: Losses) {
    this.#state = state;
    this.#known = known;
    this.#visitor = visitor;
    this.#losses = losses;
  }

  /** Returns false when the way ends in a repeat and never comes out below. */
  nodes(nodes: readonly Node[]): boolean {
    let open = true;
    for (const node of nodes) open = this.#node(node) && open;
    return open;
  }

  #node(node: Node): boolean {
    this.#enter(node);
    const mark = this.#state.mark();
    this.#visitor.step?.(node.step, this.#state);
    for (const action of node.actions) {
      this.#visitor.before?.(action, this.#state);
      apply(action, this.#state, this.#known);
      this.#visitor.after?.(action, this.#state);
    }
    if (node.when === undefined) {
      const open = this.nodes(node.below) && this.#leave(node);
      // Out of a repeat that is always taken there is no way; what stands below it is judged as if it were a branch.
      if (!open) this.#state.takeBack(mark);
      return open;
    }
    if (this.#visitor.branch !== undefined) this.#visitor.branch({...node, when: node.when}, this.#state);
    return this.#branch(node);
  }

  #branch(node: Node): boolean {
    const mark = this.#state.mark();
    const open = this.nodes(node.below) && this.#leave(node);
    const after = this.#state.takeBack(mark);
    if (open) this.#state.meet(after);
    return true;
  }

  #enter(node: Node): void {
    const {id} = node.step.step;
    if (id === undefined) return;
    const losses = this.#losses.get(id);
    if (losses !== undefined) this.#state.meet(losses);
    this.#marks.set(id, this.#state.mark());
  }

  /** At a repeat: compare with how things stood at the step that is gone back to. */
  #leave(node: Node): boolean {
    if (node.repeat === undefined) return true;
    const {id} = node.repeat;
    const mark = this.#marks.get(id);
    if (mark === undefined) return true;
    const gained = (['installed', 'tight'] as const).flatMap((kind) => this.#state.gainedSince(mark, kind));
    this.#visitor.repeat?.(node, this.#state, gained);
    const known = this.#losses.get(id) ?? new Map<Slot, Fact>();
    for (const [slot, fact] of this.#state.lostSince(mark)) {
      if (known.has(slot)) continue;
      known.set(slot, fact);
      this.lost = true;
    }
    this.#losses.set(id, known);
    return false;
  }
}
