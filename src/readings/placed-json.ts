/**
 * Reads JSON (RFC 8259) with the place of every value, so that what is wrong with a file can be pointed at. Stricter
 * than the standard in two things: a key may stand once only, and nothing may be nested deeper than records are.
 */
import type {Span} from '../text/source.js';

export type JsonNode = JsonObject | JsonArray | JsonScalar;

export interface JsonObject {
  readonly type: 'object';
  readonly span: Span;
  readonly entries: ReadonlyMap<string, {readonly key: Span; readonly value: JsonNode}>;
}

export interface JsonArray {
  readonly type: 'array';
  readonly span: Span;
  readonly items: readonly JsonNode[];
}

export interface JsonScalar {
  readonly type: 'scalar';
  readonly span: Span;
  readonly value: string | number | boolean | null;
}

/** What keeps the text from being JSON, where it was first seen. */
export interface JsonFault {
  readonly type: 'fault';
  readonly span: Span;
  /** A clause without capital or full stop. */
  readonly says: string;
}

/** The value, or the first fault. Never throws; time in proportion to the text. */
export function readJson(text: string): JsonNode | JsonFault {
  const cursor = {text, at: 0};
  const node = valueAt(cursor, 0);
  if (node.type === 'fault') return node;
  skipBlanks(cursor);
  return cursor.at === text.length ? node : fault(cursor, 'there is more after the end of the value');
}

/** The plain value, as `JSON.parse` would give it. */
export function plainJson(node: JsonNode): unknown {
  if (node.type === 'scalar') return node.value;
  if (node.type === 'array') return node.items.map(plainJson);
  // `fromEntries` defines every key as its own, `__proto__` too.
  return Object.fromEntries([...node.entries].map(([key, {value}]) => [key, plainJson(value)]));
}

interface Cursor {
  readonly text: string;
  at: number;
}

/** A record is five levels deep. */
const DEEPEST = 16;

function valueAt(cursor: Cursor, depth: number): JsonNode | JsonFault {
  skipBlanks(cursor);
  const next = cursor.text[cursor.at];
  if (next === undefined) return fault(cursor, 'the file breaks off here');
  if (depth > DEEPEST) return fault(cursor, 'it is nested too deeply');
  if (next === '{') return objectAt(cursor, depth);
  if (next === '[') return arrayAt(cursor, depth);
  return next === '"' ? stringAt(cursor) : wordAt(cursor);
}

function objectAt(cursor: Cursor, depth: number): JsonObject | JsonFault {
  const start = cursor.at++;
  const entries = new Map<string, {readonly key: Span; readonly value: JsonNode}>();
  while (!ends(cursor, '}')) {
    const key = stringAt(cursor);
    if (key.type === 'fault') return key;
    const name = String(key.value);
    if (entries.has(name)) return {type: 'fault', span: key.span, says: `${name} stands twice`};
    skipBlanks(cursor);
    if (cursor.text[cursor.at] !== ':') return fault(cursor, 'a colon is due here');
    cursor.at++;
    const value = valueAt(cursor, depth + 1);
    if (value.type === 'fault') return value;
    entries.set(name, {key: key.span, value});
    const missing = separator(cursor, '}');
    if (missing) return missing;
  }
  return {type: 'object', span: {start, end: ++cursor.at}, entries};
}

function arrayAt(cursor: Cursor, depth: number): JsonArray | JsonFault {
  const start = cursor.at++;
  const items: JsonNode[] = [];
  while (!ends(cursor, ']')) {
    const item = valueAt(cursor, depth + 1);
    if (item.type === 'fault') return item;
    items.push(item);
    const missing = separator(cursor, ']');
    if (missing) return missing;
  }
  return {type: 'array', span: {start, end: ++cursor.at}, items};
}

function ends(cursor: Cursor, close: string): boolean {
  skipBlanks(cursor);
  return cursor.text[cursor.at] === close;
}

function separator(cursor: Cursor, close: string): JsonFault | undefined {
  skipBlanks(cursor);
  const next = cursor.text[cursor.at];
  if (next === close) return undefined;
  if (next !== ',') {
    return fault(cursor, next === undefined ? 'the file breaks off here' : `a comma or ${close} is due here`);
  }
  cursor.at++;
  skipBlanks(cursor);
  return cursor.text[cursor.at] === close ? fault(cursor, 'a comma stands before this end') : undefined;
}

function stringAt(cursor: Cursor): JsonScalar | JsonFault {
  const {text, at: start} = cursor;
  if (text[start] !== '"') return fault(cursor, 'a text in double quotes is due here');
  let end = start + 1;
  while (end < text.length && text[end] !== '"') end += text[end] === '\\' ? 2 : 1;
  if (end >= text.length) return {type: 'fault', span: {start, end: start + 1}, says: 'this text never ends'};
  cursor.at = end + 1;
  const span = {start, end: cursor.at};
  try {
    return {type: 'scalar', span, value: String(JSON.parse(text.slice(start, cursor.at)))};
  } catch {
    return {type: 'fault', span, says: 'this text holds a line break, another control or an unknown escape'};
  }
}

const WORD = /^(?:-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null)$/;

function wordAt(cursor: Cursor): JsonScalar | JsonFault {
  let end = cursor.at;
  while (end < cursor.text.length && !' \t\n\r,:[]{}"'.includes(cursor.text[end] ?? '')) end++;
  const word = cursor.text.slice(cursor.at, end);
  if (!WORD.test(word)) return fault(cursor, 'no value of JSON begins like this');
  const start = cursor.at;
  cursor.at += word.length;
  const value: unknown = JSON.parse(word);
  const known = typeof value === 'number' || typeof value === 'boolean' ? value : null;
  return {type: 'scalar', span: {start, end: cursor.at}, value: known};
}

function skipBlanks(cursor: Cursor): void {
  while (' \t\n\r'.includes(cursor.text[cursor.at] ?? '.')) cursor.at++;
}

function fault({text, at}: Cursor, says: string): JsonFault {
  return {type: 'fault', span: {start: Math.min(at, text.length), end: Math.min(at + 1, text.length)}, says};
}
