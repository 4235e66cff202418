/** Reads a record file: JSON text to a record, or what is wrong with it and where. */

import type * as z from 'zod';
import {alternatives} from '../text/alternatives.js';
import type {Source, Span} from '../text/source.js';
import {type JsonNode, plainJson, readJson} from './placed-json.js';
import {type BuildRecord, ENTRY, RECORD} from './record.js';

export type RecordRead =
  | {readonly ok: true; readonly record: BuildRecord}
  | {readonly ok: false; readonly problems: readonly RecordProblem[]};

/** What keeps a file from being a record. */
export interface RecordProblem {
  readonly span: Span;
  /** A clause without capital or full stop. */
  readonly says: string;
  readonly hint?: string;
}

/** More would only say that it is another kind of file. */
const PROBLEMS_SHOWN = 10;

/** Never throws; how large the text may be is the caller's care. */
export function readRecord({text}: Pick<Source, 'text'>): RecordRead {
  const tree = readJson(text);
  if (tree.type === 'fault') {
    const {span, says} = tree;
    return {ok: false, problems: [{span, says, hint: 'export the record from its sheet again'}]};
  }
  const result = RECORD.safeParse(withFewFaults(plainJson(tree)));
  if (result.success) return {ok: true, record: result.data};
  return {
    ok: false,
    problems: result.error.issues.slice(0, PROBLEMS_SHOWN).map((issue) => told(issue, tree)),
  };
}

/**
 * What comes after enough entries that are none is left out: it would tell nothing new, and the shape's own reader
 * cannot carry the faults of a hundred thousand of them.
 */
function withFewFaults(value: unknown): unknown {
  if (!isObject(value) || !Array.isArray(value.sheets)) return value;
  let left = PROBLEMS_SHOWN;
  const cut = (list: readonly unknown[], isGood: (one: unknown) => boolean) => {
    const end = list.findIndex((one) => !isGood(one) && left-- <= 0);
    return end === -1 ? list : list.slice(0, end);
  };
  const sheets = value.sheets.map((sheet: unknown) => {
    if (!isObject(sheet) || !Array.isArray(sheet.entries)) return sheet;
    return {...sheet, entries: cut(sheet.entries, (one) => ENTRY.safeParse(one).success)};
  });
  return {...value, sheets: cut(sheets, (sheet) => isObject(sheet) && Array.isArray(sheet.entries))};
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function told(issue: z.core.$ZodIssue, tree: JsonNode): RecordProblem {
  const {node, span} = placeOf(issue.path, tree);
  const name = issue.path.map(String).join('.') || 'the file';
  if (issue.code === 'unrecognized_keys') {
    const [key = ''] = issue.keys;
    return {span: keySpan(node, key) ?? span, says: `${name} takes no key ${key}`};
  }
  const missing = node === undefined;
  return {span, says: missing ? `${name} is missing` : `${name} is not ${dueOf(issue)}`};
}

function dueOf(issue: z.core.$ZodIssue): string {
  switch (issue.code) {
    case 'invalid_type':
      return DUE[issue.expected] ?? 'what it must be';
    case 'invalid_value':
      return alternatives(issue.values.map(String));
    case 'too_small':
      return 'at least one character long';
    case 'too_big':
      return `at most ${issue.maximum} characters long`;
    case 'invalid_format':
      return issue.format === 'datetime' ? 'a time like 2026-03-01T09:30:00Z' : '64 hexadecimal digits';
    default:
      return 'what it must be';
  }
}

const DUE: Readonly<Record<string, string>> = {
  string: 'a text in quotes',
  array: 'a list in brackets',
  object: 'keys with values in braces',
};

/** The node at the path, and where to point: at it, or at what should hold it. */
function placeOf(
  path: readonly PropertyKey[],
  tree: JsonNode,
): {readonly node?: JsonNode; readonly span: Span} {
  let node = tree;
  for (const step of path) {
    const next = node.type === 'array' ? node.items[Number(step)] : undefined;
    const inner = node.type === 'object' ? node.entries.get(String(step))?.value : next;
    if (inner === undefined) return {span: {start: node.span.start, end: node.span.start + 1}};
    node = inner;
  }
  return {node, span: node.span};
}

function keySpan(node: JsonNode | undefined, key: string): Span | undefined {
  return node?.type === 'object' ? node.entries.get(key)?.key : undefined;
}
