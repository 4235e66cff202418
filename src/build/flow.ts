/** The shape of a program's branches and repeats, judged without walking it. */
import type {Node, Program} from './program.js';

export interface Flow {
  /**
   * Steps of a branch that no way leads to, a stretch at a time: they stand after a repeat. What stands after one that
   * is in no branch is not among them, for there the repeat is what is wrong.
   */
  readonly unreachable: readonly (readonly [Node, ...Node[]])[];
  /** Repeats outside any branch: there is no way out of them. */
  readonly endless: readonly Node[];
  /** Repeats that go back to a step of their own branch: nothing is asked again on the way round. */
  readonly inside: readonly Node[];
  /** Repeats that name a step which does not stand before them. */
  readonly ahead: readonly Node[];
}

export function flowOf({parts}: Program): Flow {
  const reader = new FlowReader();
  for (const {nodes} of parts) reader.procedure(nodes);
  return reader;
}

/** Lives while the shape is read. */
class FlowReader implements Flow {
  readonly unreachable: [Node, ...Node[]][] = [];
  readonly endless: Node[] = [];
  readonly inside: Node[] = [];
  readonly ahead: Node[] = [];
  #passed: Ids = new Set();

  procedure(nodes: readonly Node[]): void {
    this.#passed = new Set();
    this.#nodes(nodes, []);
  }

  /** `branches` are the branches around, the innermost first: the ids of their steps so far. Returns whether the way comes out below. */
  #nodes(nodes: readonly Node[], branches: Branches): boolean {
    let open = true;
    let stretch: [Node, ...Node[]] | undefined;
    for (const node of nodes) {
      if (!open && branches.length > 0) {
        if (stretch === undefined) {
          stretch = [node];
          this.unreachable.push(stretch);
        } else stretch.push(node);
      }
      open = this.#node(node, branches) && open;
    }
    return open;
  }

  #node(node: Node, branches: Branches): boolean {
    const {id} = node.step.step;
    for (const ids of [this.#passed, ...branches]) ids.add(id);
    const branch = node.when !== undefined;
    const around: Branches = branch ? [new Set(), ...branches] : branches;
    const open = this.#nodes(node.below, around);
    const leaves = this.#repeat(node, around);
    return branch || (open && leaves);
  }

  #repeat(node: Node, branches: Branches): boolean {
    if (node.repeat === undefined) return true;
    if (!this.#passed.has(node.repeat.id)) {
      this.ahead.push(node);
      return true;
    }
    const [innermost] = branches;
    if (innermost === undefined) this.endless.push(node);
    else if (innermost.has(node.repeat.id)) this.inside.push(node);
    return false;
  }
}

/** Of steps; one without a name is noted as such, which nothing asks for. */
type Ids = Set<string | undefined>;
type Branches = readonly Ids[];
