/** Moves the positions of a tree, so that parts that were parsed alone stand where they are in the whole text. */
import type {Nodes} from 'mdast';

export interface Shift {
  /** Whole lines above; columns stay as they are. */
  readonly line: number;
  readonly offset: number;
}

/** Changes the nodes in place: the tree was made for this, and copying it would cost as much as parsing. */
export function shiftPositions(tree: Nodes, by: Shift): void {
  const open: Nodes[] = [tree];
  for (let node = open.pop(); node !== undefined; node = open.pop()) {
    const {position} = node;
    // New points, since nothing says that two nodes may not share theirs.
    if (position) node.position = {start: shifted(position.start, by), end: shifted(position.end, by)};
    if ('children' in node) for (const child of node.children) open.push(child);
  }
}

interface Point {
  line: number;
  column: number;
  offset?: number | undefined;
}

function shifted({line, column, offset}: Point, by: Shift): Point {
  return {line: line + by.line, column, offset: (offset ?? 0) + by.offset};
}
