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
  readonly ahead: Node[] = [];
  #passed = new Set<string>();

  procedure(nodes: readonly Node[]): void {
    this.#passed = new Set();
    this.#nodes(nodes, false);
  }

  /** Returns whether the way comes out below. */
  #nodes(nodes: readonly Node[], inBranch: boolean): boolean {
    let open = true;
    let stretch: [Node, ...Node[]] | undefined;
    for (const node of nodes) {
      if (!open && inBranch) {
        if (stretch === undefined) {
          stretch = [node];
          this.unreachable.push(stretch);
        } else stretch.push(node);
      }
      open = this.#node(node, inBranch) && open;
    }
    return open;
  }

  #node(node: Node, inBranch: boolean): boolean {
    const {id} = node.step.step;
    if (id !== undefined) this.#passed.add(id);
    const branch = node.when !== undefined;
    const open = this.#nodes(node.below, inBranch || branch);
    const leaves = this.#repeat(node, inBranch || branch);
    return branch || (open && leaves);
  }

  #repeat(node: Node, inBranch: boolean): boolean {
    if (node.repeat === undefined) return true;
    if (!this.#passed.has(node.repeat.id)) {
      this.ahead.push(node);
      return true;
    }
    if (!inBranch) this.endless.push(node);
    return false;
  }
}
