/**
 * Values in braces that a comma took apart: `{limits: 0,9–1,2 mm}` is a key and two more to YAML. They are put together
 * again as they were meant, so that nothing follows from the pieces, and told once, with the right spelling.
 */
import type * as z from 'zod';
import {clipped} from '../text/clipped.js';
import {nearest} from '../text/nearest.js';
import type {Problem} from '../text/problem.js';
import type {Source} from '../text/source.js';
import {problem} from './form.js';
import {keysAt} from './shapes/keys.js';
import {type Entry, isScalar, type MapNode, type Node, plainValue} from './tree.js';
import {colonMissing} from './yaml-faults.js';

export interface Joined {
  readonly tree: MapNode;
  readonly problems: readonly Problem[];
}

/** The tree with such values whole, and what is wrong with how they are written. */
export function joinedAtCommas(from: Source, tree: MapNode, shape: z.ZodType): Joined {
  const problems: Problem[] = [];
  const reader = {from, tree, shape, problems};
  const joined = joinedIn(reader, tree, []);
  return {tree: joined.type === 'map' ? joined : tree, problems};
}

interface Reader {
  readonly from: Source;
  readonly tree: MapNode;
  readonly shape: z.ZodType;
  readonly problems: Problem[];
}

type Path = readonly PropertyKey[];

/** Maps in which no comma took anything apart are kept as they are. */
function joinedIn(reader: Reader, node: Node, path: Path): Node {
  if (node.type === 'list') {
    const items = node.items.map((item, at) => joinedIn(reader, item, [...path, at]));
    return items.every((item, at) => item === node.items[at]) ? node : {...node, items};
  }
  if (node.type !== 'map') return node;
  const whole = node.entries.map((entry) => {
    const value = joinedIn(reader, entry.value, [...path, entry.key]);
    return value === entry.value ? entry : {...entry, value};
  });
  const entries = whole.some((entry) => isBare(entry, reader.from)) ? together(reader, whole, path) : whole;
  const same = entries.length === node.entries.length && entries.every((one, at) => one === node.entries[at]);
  return same ? node : {...node, entries};
}

/** A key without a colon behind it. */
function isBare({keyWhere, value}: Entry, {text}: Source): boolean {
  const {end} = keyWhere.span;
  return (
    value.type === 'empty' && value.where.span.end === end && !/^["']?\s*:/.test(text.slice(end, end + 80))
  );
}

function together(reader: Reader, entries: readonly Entry[], path: Path): Entry[] {
  const known = keysAt(reader.shape, path, plainValue(reader.tree));
  const result: Entry[] = [];
  for (let at = 0; at < entries.length; at++) {
    const entry = entries[at] as Entry;
    const pieces: Entry[] = [];
    for (let next = entries[at + 1]; next && isPiece(next, reader.from, known); next = entries[at + 1]) {
      pieces.push(next);
      at++;
    }
    const value = known.includes(entry.key) ? joinedValue(reader, entry, pieces, path) : undefined;
    if (value === undefined) result.push(entry, ...pieces);
    else result.push({...entry, value});
  }
  return result;
}

/** What no key of the place could be meant by: not one that is misspelt, nor one that lacks its colon. */
function isPiece(entry: Entry, from: Source, known: readonly string[]): boolean {
  const {key} = entry;
  const [word = ''] = key.split(' ');
  if (!isBare(entry, from) || known.includes(key) || nearest(key, known) !== undefined) return false;
  return !(word !== key && known.includes(word) && colonMissing(key) !== undefined);
}

function joinedValue(
  {from, problems}: Reader,
  {key, value}: Entry,
  pieces: readonly Entry[],
  path: Path,
): Node | undefined {
  const last = pieces.at(-1);
  if (last === undefined || !isScalar(value) || value.exact === undefined) return undefined;
  const where = {file: from.file, span: {start: value.where.span.start, end: last.keyWhere.span.end}};
  const written = from.text.slice(where.span.start, where.span.end);
  // A comment or a line between the pieces is none of the value.
  if (/[\n\r#]/.test(written)) return undefined;
  const {says, right, meant} = rightly(key, written);
  const shown = clipped(right ?? '', 60);
  const fix = {title: `Write ${shown}`, file: from.file, edits: [{span: where.span, text: right ?? ''}]};
  problems.push(
    problem([...path, key], {
      where,
      says: `${key}: a comma parts the entries of these brackets, and ${clipped(written, 60)} falls apart at it`,
      hint: right === undefined ? says : `${says}: ${shown}`,
      ...(right !== undefined && {fix}),
    }),
  );
  if (meant !== undefined) return {type: 'text', where, text: meant};
  const words = pieces.map((piece) => ({where: piece.keyWhere, text: piece.key}));
  const items = words.map((word) => ({type: 'text' as const, ...word, exact: word.where.span.start}));
  return {type: 'list', where, items: [value, ...items]};
}

/** Keys whose values are words, so that a comma in them is one of a sentence. */
const WORDS: ReadonlySet<string> = new Set(['name', 'note', 'because', 'does', 'expect', 'stamped', 'title']);

/** What to do, the right spelling where there is but one, and the text that is meant where it is no list. */
function rightly(key: string, written: string): {says: string; right?: string; meant?: string} {
  if (!WORDS.has(key) && /\d,\d/.test(written)) {
    const meant = written.replace(/(\d),(?=\d)/g, '$1.');
    if (/(?<![\d.,])[1-9]\d{0,2},\d{3}(?!\d)/.test(written)) {
      return {says: 'write a decimal with a point, and a large number without a comma', meant};
    }
    if (!meant.includes(',')) return {says: 'write decimals with a point', right: meant, meant};
  }
  if (!WORDS.has(key) && /^[a-z0-9-]+(?:, *[a-z0-9-]+)+$/.test(written)) {
    return {says: 'put a list in square brackets', right: `[${written}]`};
  }
  const meant = /^“[^“”]*”$/.test(written) ? written.slice(1, -1) : written;
  const right = /["\\]/.test(meant) ? `'${meant.replaceAll("'", "''")}'` : `"${meant}"`;
  return {says: 'put a text with a comma in quotes', right, meant};
}
