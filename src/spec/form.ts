/**
 * Holds a YAML tree against the shape of its file, and says of every misfit where it stands, what is due there
 * and what was likely meant.
 */
import type * as z from 'zod';
import {addAll} from '../text/add-all.js';
import {alternatives} from '../text/alternatives.js';
import {clipped} from '../text/clipped.js';
import {nearest} from '../text/nearest.js';
import type {Problem} from '../text/problem.js';
import type {Source, Where} from '../text/source.js';
import {noSuchDay} from './dates.js';
import {keysAt} from './shapes/keys.js';
import {isScalar, type ListNode, type Node, plainValue} from './tree.js';
import {colonMissing} from './yaml-faults.js';

type Issue = z.core.$ZodIssue;
type Path = readonly PropertyKey[];

/** A file with more misfits than this was written for something else. */
const MISFITS_SHOWN = 200;

/** Every misfit of the tree, in no order. */
export function formProblems(from: Source, tree: Node, shape: z.ZodType): Problem[] {
  const plain = plainValue(tree);
  const result = shape.safeParse(plain);
  const issues = result.success ? [] : result.error.issues;
  const context = {from, tree, plain, shape};
  const problems: Problem[] = [];
  for (const issue of issues) {
    if (problems.length >= MISFITS_SHOWN) break;
    addAll(problems, problemsOf(context, issue, issue.path));
  }
  return problems.slice(0, MISFITS_SHOWN);
}

interface Context {
  readonly from: Source;
  readonly tree: Node;
  readonly plain: unknown;
  readonly shape: z.ZodType;
}

function problemsOf(context: Context, issue: Issue, path: Path): Problem[] {
  if (issue.code === 'unrecognized_keys')
    return issue.keys.slice(0, MISFITS_SHOWN).map((key) => unknownKey(context, path, key));
  if (issue.code === 'invalid_key') return [badName(context, path, 'key')];
  const place = placeAt(context.tree, path);
  // Zod tells of a key that is not there as of a value of the wrong kind; the tree knows better.
  if (place.value === undefined) return [missing(context, path)];
  if (issue.code === 'invalid_format') return [badFormat(context, path, issue.format)];
  if (issue.code === 'invalid_union' && issue.errors.length > 0) return unionProblems(context, issue, path);
  return mismatch(context, path, [issue]);
}

/**
 * Of the ways in which a value could be written, goes on with the one that was meant, where that is plain: the one of the
 * right kind with the fewest misfits. Else the writer hears of all ways at once, which helps only where there are few.
 */
function unionProblems(context: Context, issue: z.core.$ZodIssueInvalidUnion, path: Path): Problem[] {
  const branches = branchesOf(issue);
  const meant = branches
    .filter((branch) => !branch.some(isOfAnotherKind))
    .sort((one, other) => one.length - other.length)[0];
  if (meant === undefined) return mismatch(context, path, branches.flat().filter(isOfAnotherKind));
  return meant
    .slice(0, MISFITS_SHOWN)
    .flatMap((inner) => problemsOf(context, inner, [...path, ...inner.path]));
}

/** The branches of a union, those of the unions in it among them. */
function branchesOf(issue: z.core.$ZodIssueInvalidUnion): Issue[][] {
  return issue.errors.flatMap((branch) => {
    const [only] = branch;
    const nested = branch.length === 1 && only?.code === 'invalid_union' && only.path.length === 0;
    return nested && only.errors.length > 0 ? branchesOf(only) : [branch];
  });
}

function isOfAnotherKind(issue: Issue): boolean {
  return issue.path.length === 0 && (issue.code === 'invalid_type' || issue.code === 'invalid_value');
}

function mismatch(context: Context, path: Path, issues: readonly Issue[]): Problem[] {
  const {value} = placeAt(context.tree, path);
  if (value === undefined) return [];
  if (isPoint(path) && value.type === 'list') return [badPoint(context, path, value)];
  const dues = [...new Set(issues.flatMap(duesOf))];
  // YAML takes `85` for a number; the readers of text and of amounts see to it with its text as written.
  if (value.type === 'number' && dues.includes(TEXT)) return [];
  const says = `${titleOf(path)} is ${foundSays(value)} where ${listed(dues)} is due`;
  return [problem(path, {where: valueWhere(context, path), says, ...hintFor(value, dues, issues)})];
}

/** Of a layout of fasteners, where one of them stands. */
function isPoint(path: Path): boolean {
  return path.length === 4 && path[0] === 'fasteners' && path[2] === 'layout';
}

function badPoint(context: Context, path: Path, {items}: ListNode): Problem {
  const id = titleOf(path);
  const [across, up] = items.map(scalarText);
  const has =
    items.length === 0 ? 'no number' : items.length === 1 ? 'one number' : `${items.length} numbers`;
  return problem(path, {
    where: valueWhere(context, path),
    says: `${id} stands in the layout with ${has} where two are due, how far across and how far up`,
    hint: `write ${id}: [${across ?? 0}, ${up ?? 0}]`,
  });
}

const TEXT = 'text';
const LIST = 'a list';

const DUE: Readonly<Record<string, string>> = {
  string: TEXT,
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  array: LIST,
  tuple: LIST,
  object: 'keys with values',
  record: 'keys with values',
};

/** What one branch wants, in words; `null` is never offered, for it drops an item. */
function duesOf(issue: Issue): string[] {
  if (issue.code === 'invalid_value') return wordsOf(issue);
  if (issue.code === 'invalid_type') return issue.expected in DUE ? [DUE[issue.expected] ?? ''] : [];
  if (issue.code === 'too_small') return [leastSays(issue)];
  if (issue.code === 'too_big')
    return [`at most ${issue.maximum}${issue.origin === 'array' ? ' entries' : ''}`];
  if (issue.code === 'invalid_union') return wordsOf(issue);
  return ['something else'];
}

/** The words out of which one is due; zod leaves those of a discriminated union out of its types. */
function wordsOf(issue: Issue): string[] {
  if (issue.code === 'invalid_value') return issue.values.map(String);
  return 'options' in issue && Array.isArray(issue.options) ? issue.options.map(String) : [];
}

function leastSays(issue: z.core.$ZodIssueTooSmall): string {
  if (issue.origin === 'string') return 'at least one character';
  if (issue.origin === 'array' && issue.minimum === 1) return 'at least one entry';
  return `at least ${issue.minimum}${issue.origin === 'array' ? ' entries' : ''}`;
}

function foundSays(value: Node): string {
  if (value.type === 'map') return 'a map of keys';
  if (value.type === 'list') return value.items.length === 0 ? 'an empty list' : LIST;
  if (value.type === 'empty' || value.text === '') return 'empty';
  return clipped(value.text, 40);
}

function listed(words: readonly string[]): string {
  return words.length === 0 ? 'something else' : alternatives(words);
}

function hintFor(value: Node, dues: readonly string[], issues: readonly Issue[]): {hint?: string} {
  if (!isScalar(value) || value.type === 'empty') return {};
  const near = nearest(value.text, issues.flatMap(wordsOf));
  if (near !== undefined) return {hint: `did you mean ${near}?`};
  if (dues.includes(LIST)) return {hint: `put it in brackets: [${value.text}]`};
  if (dues.includes(TEXT)) return {hint: `put it in quotes: '${value.text}'`};
  return {};
}

function unknownKey(context: Context, path: Path, key: string): Problem {
  const known = keysAt(context.shape, path, context.plain);
  const near = nearest(key, known);
  const isThere = near !== undefined && placeAt(context.tree, [...path, near]).value !== undefined;
  const where = placeAt(context.tree, [...path, key]).key ?? valueWhere(context, path);
  // In brackets a key without its colon goes on to the next comma: `{on: block, assembly clean}`.
  const [word = ''] = key.split(' ');
  const forgotten = word !== key && known.includes(word) ? colonMissing(key) : undefined;
  if (forgotten !== undefined) return problem([...path, key], {where, ...forgotten});
  const says =
    path.length === 0 ? `${key} is not a key of this file` : `${titleOf(path)} takes no key ${key}`;
  const meant = isThere ? `${near} stands here already: take one out` : `did you mean ${near}?`;
  const hint = near === undefined ? `it takes ${listed(known)}` : meant;
  return problem([...path, key], {where, says, hint});
}

function missing(context: Context, path: Path): Problem {
  const owner = path.slice(0, -1);
  const key = String(path.at(-1));
  const where = placeAt(context.tree, owner).key ?? {file: context.from.file, span: {start: 0, end: 0}};
  const says = owner.length === 0 ? `the key ${key} is missing` : `${titleOf(owner)} has no ${key}`;
  return problem(path, {where, says, hint: `add ${key}: …`});
}

function badFormat(context: Context, path: Path, format: string): Problem {
  if (format !== 'date') return badName(context, path, 'value');
  const day = noSuchDay(scalarText(placeAt(context.tree, path).value));
  if (day !== undefined) {
    const {says, hint} = day;
    return problem(path, {where: valueWhere(context, path), says: `${titleOf(path)}: ${says}`, hint});
  }
  const says = `${titleOf(path)} is not a date`;
  return problem(path, {where: valueWhere(context, path), says, hint: 'write it as 2026-03-01'});
}

function badName(context: Context, path: Path, what: 'key' | 'value'): Problem {
  const place = placeAt(context.tree, path);
  const written = what === 'key' ? String(path.at(-1)) : scalarText(place.value);
  const where = (what === 'key' ? place.key : undefined) ?? valueWhere(context, path);
  const says = `${written} is not a kebab-case name: lower-case letters, digits and single hyphens`;
  const several = written.split(/,| and /).map(kebabOf);
  if (what === 'value' && several.length > 1 && path.includes('lock'))
    return problem(path, {where, says, hint: `write several as a list: [${several.join(', ')}]`});
  const kebab = kebabOf(written);
  return problem(path, {where, says, ...(kebab !== '' && {hint: `write ${kebab}`})});
}

function kebabOf(written: string): string {
  const spaced = written.replace(/([a-z])([A-Z])/g, '$1-$2').toLowerCase();
  return spaced
    .split(/[^a-z0-9]/)
    .filter((word) => word !== '')
    .join('-');
}

function scalarText(value: Node | undefined): string {
  return value !== undefined && isScalar(value) ? value.text : '';
}

/** A problem of the value at a path, with the item that it stands in. */
export function problem(path: Path, rest: Omit<Problem, 'name'>): Problem {
  const [section, id] = path;
  const isItem = typeof id === 'string' && path.length > 2 && section !== 'shop' && section !== 'engine';
  return {name: 'spec-form', ...rest, ...(isItem && section !== 'severity' && {item: id})};
}

/** What a message calls the value at a path: its key, or its number in the list of that key. */
function titleOf(path: Path): string {
  const last = path.at(-1);
  if (last === undefined) return 'the file';
  if (typeof last !== 'number') return String(last);
  return `entry ${last + 1} of ${titleOf(path.slice(0, -1))}`;
}

interface Place {
  readonly key?: Where;
  readonly value?: Node;
}

/** The value at a path, and the key that it or the list around it stands under. */
function placeAt(tree: Node, path: Path): Place {
  let place: Place = {value: tree};
  for (const step of path) {
    const {value, key} = place;
    if (value?.type === 'list' && typeof step === 'number') {
      const item = value.items[step];
      place = {...(key && {key}), ...(item && {value: item})};
    } else {
      const entry = value?.type === 'map' ? value.entries.find((one) => one.key === String(step)) : undefined;
      if (entry === undefined) return {};
      place = {key: entry.keyWhere, value: entry.value};
    }
  }
  return place;
}

/** The span of the value; of its key where the value is empty or runs over several lines. */
function valueWhere(context: Context, path: Path): Where {
  const {key, value} = placeAt(context.tree, path);
  if (value === undefined) return key ?? {file: context.from.file, span: {start: 0, end: 0}};
  const {start, end} = value.where.span;
  const awkward = start === end || context.from.text.slice(start, end).includes('\n');
  return awkward && key ? key : value.where;
}
