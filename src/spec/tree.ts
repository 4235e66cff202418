/** A YAML text as a tree of plain data in which every key and value knows where it stands. */
import type {Where} from '../text/source.js';

export type Node = MapNode | ListNode | ScalarNode;

export interface MapNode {
  readonly type: 'map';
  readonly where: Where;
  /** Each key once, in the order of the text. */
  readonly entries: readonly Entry[];
}

export interface Entry {
  readonly key: string;
  readonly keyWhere: Where;
  readonly value: Node;
}

export interface ListNode {
  readonly type: 'list';
  readonly where: Where;
  readonly items: readonly Node[];
}

/** What YAML 1.2 takes for a number or a yes-or-no keeps its text as written: `012` stays `012`. */
export interface ScalarNode {
  readonly type: 'text' | 'number' | 'boolean' | 'empty';
  readonly where: Where;
  readonly text: string;
  /** Offset in the file at which `text` stands unaltered; undefined where it was folded or escaped. */
  readonly exact?: number;
}

/** Whether the node is a single word or text, which may be empty. */
export function isScalar(node: Node): node is ScalarNode {
  return node.type !== 'map' && node.type !== 'list';
}

/** The entry of a key; undefined too where the node is no map. */
export function entryOf(node: Node | undefined, key: string): Entry | undefined {
  if (node?.type !== 'map') return undefined;
  for (const entry of node.entries) if (entry.key === key) return entry;
  return undefined;
}

/** The value of a key; undefined where the map lacks it, or the node is no map. */
export function valueAt(node: Node | undefined, key: string): Node | undefined {
  return entryOf(node, key)?.value;
}

/** The text of a scalar that says something. */
export function textOf(node: Node | undefined): string | undefined {
  return node !== undefined && isScalar(node) && node.type !== 'empty' ? node.text : undefined;
}

/** What the shapes are held against: maps without a prototype, so that a key of a stranger reaches none; numbers as numbers. */
export function plainValue(node: Node): unknown {
  if (node.type === 'map') return plainMap(node);
  if (node.type === 'list') return node.items.map(plainValue);
  if (node.type === 'number') return Number(node.text);
  if (node.type === 'boolean') return node.text.toLowerCase() === 'true';
  return node.type === 'empty' ? null : node.text;
}

function plainMap(node: MapNode): Record<string, unknown> {
  const result: Record<string, unknown> = Object.create(null);
  for (const entry of node.entries) result[entry.key] = plainValue(entry.value);
  return result;
}
