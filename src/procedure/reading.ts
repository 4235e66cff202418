/** What is known while a procedure is read: the text, its definitions, and what was found so far. */
import type {Definition, Nodes, Root} from 'mdast';
import type {Problem, ProblemName} from '../text/problem.js';
import type {Source, Span} from '../text/source.js';
import type {Block, Caution, Step} from './model.js';
import type {Flat} from './nesting.js';
import {type Definitions, spanOf} from './prose.js';

/** Lives while one procedure is read. */
export interface Reading {
  readonly source: Source;
  readonly definitions: Definitions;
  readonly problems: Problem[];
  /** In reading order. */
  readonly steps: Step[];
  /** Cautions that wait for the step after them, with the content that keeps those for which none comes. */
  readonly waiting: {readonly caution: Caution; readonly home: Block[]}[];
  /** Where the names of steps were given. */
  readonly names: Map<string, Span>;
  /** Steps that were begun, for their places in `steps`. */
  begun: number;
  /** Steps of the outermost lists, for their numbers. */
  counted: number;
}

/** Prunes the tree where it is too deep to be walked, and begins the reading of it. `deep` was not even parsed. */
export function beginReading(source: Source, root: Root, deep: Flat['deep']): Reading {
  const problems: Problem[] = deep === undefined ? [] : [tooDeep(source, deep.at, deep.most)];
  const definitions = new Map<string, Definition>();
  const open: {node: Nodes; depth: number}[] = [{node: root, depth: 0}];
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    const {node, depth} = next;
    if (node.type === 'definition') collect(definitions, node);
    if (!('children' in node)) continue;
    if (depth < DEPTH) {
      for (const child of node.children) open.push({node: child, depth: depth + 1});
    } else if (node.children.length > 0) {
      node.children = [];
      if (problems.length === 0) problems.push(tooDeep(source, spanOf(node).start, DEPTH));
    }
  }
  return {source, definitions, problems, steps: [], waiting: [], names: new Map(), begun: 0, counted: 0};
}

/** Ten lists in each other are twenty levels. Everything here may recurse to this depth. */
const DEPTH = 100;

/** The tree is walked from its end, so the first definition of a label is the last to be set, and stays. */
function collect(definitions: Map<string, Definition>, node: Definition): void {
  definitions.set(node.identifier, node);
}

function tooDeep(source: Source, at: number, most: number): Problem {
  return {
    name: 'file-unreadable',
    where: {file: source.file, span: {start: at, end: Math.min(at + 1, source.text.length)}},
    says: `lists, quotes, brackets or emphasis stand more than ${most} deep in each other, and what is deeper was not read`,
    hint: 'take the text apart',
  };
}

export function report(
  reading: Reading,
  name: ProblemName,
  span: Span,
  more: Pick<Problem, 'says' | 'hint' | 'related'>,
): void {
  reading.problems.push({name, where: {file: reading.source.file, span}, ...more});
}
