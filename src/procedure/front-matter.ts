/** Reads the YAML at the head of a procedure: what it is called, and which revision of which date it is. */
import * as z from 'zod';
import type {Quantity} from '../quantity/model.js';
import {readAmount} from '../quantity/parse.js';
import {noSuchDay} from '../spec/dates.js';
import {entryOf, type Node, plainValue, textOf, valueAt} from '../spec/tree.js';
import {readYaml, type YamlCaps} from '../spec/yaml.js';
import {addAll} from '../text/add-all.js';
import {nearest} from '../text/nearest.js';
import type {Problem} from '../text/problem.js';
import type {Source, Span} from '../text/source.js';
import type {Front} from './model.js';
import {shown} from './tag-fault.js';

/** Front matter is a handful of lines; more than this is somebody trying. */
const CAPS: YamlCaps = {size: 64 * 1024, depth: 64};

const filled = z.string().trim().min(1);
const shape = z.strictObject({
  title: filled,
  revision: z.union([filled, z.number()]),
  date: z.iso.date(),
  author: filled.optional(),
  approved: filled.optional(),
  only: z.union([filled, z.array(filled).min(1)]).optional(),
  untagged: z.union([filled, z.array(filled).min(1)]).optional(),
  time: z
    .string()
    .refine((text) => timeOf(text) !== undefined)
    .optional(),
});

type Key = keyof typeof shape.shape;

/** What each key takes, as hints and completion say it. */
export const FRONT_KEYS: {readonly [key in Key]: string} = {
  title: 'the name of the procedure, in words',
  revision: 'a letter or a number, such as 3',
  date: 'a day as year, month and day: 2026-01-15',
  author: 'a name',
  approved: 'a name',
  only: 'the engines or options that it is for, as a list: [one, other]',
  untagged: 'what its prose speaks of and no tag needs to, as a list: [the drip tray]',
  time: 'how long somebody works on it, without its waits, with a unit: 90 min',
};

/** `span` is where the parser found front matter, from its first hyphen to its last; undefined where there is none. */
export function readFront(
  from: Source,
  span: Span | undefined,
): {front: Front; problems: readonly Problem[]} {
  if (span === undefined) return {front: blank({start: 0, end: 0}), problems: [absent(from)]};
  // YAML's lines may end as Markdown's do, but its reader does not know a CR that stands alone.
  const yaml = from.text.slice(0, lastLine(from.text, span)).replace(/\r(?!\n)/g, '\n');
  const inside = {...from, text: yaml};
  if (inside.text.length > CAPS.size)
    return {front: blank(span), problems: [oversize(from, inside.text.length)]};
  const {tree, broken, problems} = readYaml(inside, CAPS);
  const found: Problem[] = problems.map((problem) => ({...problem, name: 'front-matter'}));
  const result = shape.safeParse(tree === undefined || tree.type === 'empty' ? {} : plainValue(tree));
  const at = {file: from.file, opening: {start: 0, end: openingEnd(from.text)}, tree};
  for (const issue of result.error?.issues ?? []) addAll(found, problemsOf(at, issue, broken));
  return {front: frontOf(tree, span), problems: found};
}

function blank(span: Span): Front {
  return {title: '', revision: '', date: '', span};
}

function absent(from: Source): Problem {
  const opened = /^---[ \t]*(?:[\r\n]|$)/.test(from.text);
  const span = {start: 0, end: opened ? openingEnd(from.text) : 0};
  return {
    name: 'front-matter',
    where: {file: from.file, span},
    says: opened ? 'the front matter is never closed' : 'the procedure has no front matter',
    hint: opened
      ? 'end it with a line of three hyphens'
      : 'begin the file with title, revision and date between two lines of three hyphens',
  };
}

function oversize(from: Source, length: number): Problem {
  return {
    name: 'front-matter',
    where: {file: from.file, span: {start: 0, end: openingEnd(from.text)}},
    says: `the front matter holds ${length} characters where at most ${CAPS.size} are read`,
    hint: 'move what is not a key below its closing line',
  };
}

function openingEnd(text: string): number {
  return /^-*/.exec(text)?.[0].length ?? 0;
}

/** Where the closing line starts: YAML would take it for the start of another document. */
function lastLine(text: string, span: Span): number {
  return Math.max(text.lastIndexOf('\n', span.end - 1), text.lastIndexOf('\r', span.end - 1)) + 1;
}

interface At {
  readonly file: string;
  /** Where a missing key is reported. */
  readonly opening: Span;
  readonly tree: Node | undefined;
}

function problemsOf(at: At, issue: z.core.$ZodIssue, broken: boolean): Problem[] {
  // Of a text that is not YAML, a key of several words is a line without its colon, which is told already.
  if (issue.code === 'unrecognized_keys')
    return issue.keys.filter((key) => !broken || !/\s/.test(key)).map((key) => unknownKey(at, key));
  const key = keyOf(issue.path[0]);
  const where = {file: at.file, span: at.opening};
  if (key === undefined) {
    return broken
      ? []
      : [{name: 'front-matter', where, says: 'the front matter is no list of keys and values'}];
  }
  const entry = entryOf(at.tree, key);
  const hint = `it takes ${FRONT_KEYS[key]}`;
  // What a broken text lacks may well be written in it.
  if (entry === undefined)
    return broken ? [] : [{name: 'front-matter', where, says: `${key} is missing`, hint}];
  return [wrongValue(key, entry.value, hint)];
}

function keyOf(found: PropertyKey | undefined): Key | undefined {
  return KEYS.find((key) => key === found);
}

const KEYS = shape.keyof().options;

function unknownKey(at: At, key: string): Problem {
  const where = entryOf(at.tree, key)?.keyWhere ?? {file: at.file, span: at.opening};
  const near = nearest(key.toLowerCase(), KEYS);
  const says = `${shown(key)} is no key of the front matter`;
  if (near === undefined) return {name: 'front-matter', where, says, hint: `the keys are ${KEYS.join(', ')}`};
  const fix = {title: `Write ${near}`, file: at.file, edits: [{span: where.span, text: near}]};
  return {name: 'front-matter', where, says, hint: `did you mean ${near}?`, fix};
}

function wrongValue(key: Key, value: Node, hint: string): Problem {
  const {where} = value;
  const text = textOf(value);
  const says =
    text === undefined ? `${key} says nothing that it takes` : `${key} does not take ${shown(text)}`;
  const day = key === 'date' && text !== undefined ? dayOf(text) : undefined;
  const none = key === 'date' && text !== undefined ? noSuchDay(text) : undefined;
  if (none !== undefined)
    return {name: 'front-matter', where, says: `${says}: ${none.says}`, hint: none.hint};
  if (day === undefined) return {name: 'front-matter', where, says, hint};
  const fix = {title: `Write ${day}`, file: where.file, edits: [{span: where.span, text: day}]};
  return {name: 'front-matter', where, says, hint: `write ${day}`, fix};
}

/** A day in the right order that lacks a nought or has other marks; any other order could be two days. */
function dayOf(text: string): string | undefined {
  const [, year, month = '', day = ''] = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})$/.exec(text) ?? [];
  const iso = `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
  return year !== undefined && iso !== text && isDate(iso) ? iso : undefined;
}

function isDate(text: string): boolean {
  return shape.shape.date.safeParse(text).success;
}

/** Texts as they are written, so that revision 1.10 does not become 1.1. */
function frontOf(tree: Node | undefined, span: Span): Front {
  const text = (key: Key) => textOf(valueAt(tree, key))?.trim();
  const author = text('author');
  const approved = text('approved');
  const only = listOf(valueAt(tree, 'only'));
  const untagged = listOf(valueAt(tree, 'untagged'))?.map(({id, span: at}) => ({words: id, span: at}));
  const time = timeOf(text('time') ?? '');
  const date = text('date') ?? '';
  return {
    title: text('title') ?? '',
    revision: text('revision') ?? '',
    date: isDate(date) ? date : '',
    ...(author !== undefined && {author}),
    ...(approved !== undefined && {approved}),
    ...(only !== undefined && {only}),
    ...(untagged !== undefined && {untagged}),
    ...(time !== undefined && {time}),
    span,
  };
}

/** One time; neither limits nor a time that is less than nothing. */
function timeOf(text: string): Quantity | undefined {
  const reading = readAmount(text, 'time');
  const time = reading.ok && reading.amount.form === 'single' ? reading.amount.value : undefined;
  return time !== undefined && time.value >= 0 ? time : undefined;
}

function listOf(node: Node | undefined): Front['only'] {
  const nodes = node?.type === 'list' ? node.items : node === undefined ? [] : [node];
  const names = nodes.flatMap((one) => {
    const id = textOf(one)?.trim();
    return id === undefined ? [] : [{id, span: one.where.span}];
  });
  return node?.type === 'list' || names.length > 0 ? names : undefined;
}
