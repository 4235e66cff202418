/**
 * Reads the fields of one item: every function takes a key and gives the value with its place, and leaves what it
 * cannot accept, and the names that must be looked up later, in the reader's lists. Names are looked up only when all
 * items are there, for an item may name one that stands further down.
 */
import type {Amount, AmountFault, Dimension} from '../quantity/model.js';
import {readAmount} from '../quantity/parse.js';
import {nearest} from '../text/nearest.js';
import type {Problem} from '../text/problem.js';
import type {Where} from '../text/source.js';
import {defined} from './defined.js';
import type {ItemKind, Located, Specified} from './model.js';
import type {OptionReference} from './options.js';
import {type Field, type RawItem, statedOf} from './raw.js';
import type {Reference, SourceReference} from './references.js';
import {MOST_COUNT} from './shapes/values.js';
import {isScalar, type Node, type ScalarNode, textOf} from './tree.js';

/** What reading leaves behind beside the items. */
export interface Gathered {
  readonly problems: Problem[];
  readonly references: Reference[];
  readonly sources: SourceReference[];
  readonly options: OptionReference[];
}

export interface ItemReader extends Gathered {
  readonly raw: RawItem;
}

/** A plain text of the item; numbers read as they are written. */
export function text(reader: ItemReader, key: string): string | undefined {
  const field = reader.raw.fields.get(key);
  const stated = field && statedOf(field.value);
  if (stated) noteSource(reader, stated.source);
  return textOf(stated?.value);
}

/** A text with its place. */
export function located(reader: ItemReader, key: string): Located<string> | undefined {
  const value = reader.raw.fields.get(key)?.value;
  const found = textOf(value);
  return found === undefined || value === undefined ? undefined : {value: found, where: value.where};
}

/** The name of another item. */
export function reference(
  reader: ItemReader,
  key: string,
  kinds: readonly ItemKind[],
): Located<string> | undefined {
  const found = located(reader, key);
  if (found) refer(reader, found, kinds);
  return found;
}

/** A list of names of other items; a single name stands for a list of one. */
export function references(
  reader: ItemReader,
  key: string,
  kinds: readonly ItemKind[],
): readonly Located<string>[] {
  const found = words(reader, key);
  for (const one of found) refer(reader, one, kinds);
  return found;
}

/** A list of words with their places. */
export function words(reader: ItemReader, key: string): readonly Located<string>[] {
  const field = reader.raw.fields.get(key);
  const stated = field && statedOf(field.value);
  if (stated === undefined) return [];
  noteSource(reader, stated.source);
  return wordsIn(stated.value);
}

/** Whether the field says `true`; what says neither that nor `false` is a misfit, which the shape has told. */
export function flag(reader: ItemReader, key: string): boolean {
  return text(reader, key)?.toLowerCase() === 'true';
}

/** A whole number from 1 to `MOST_COUNT`; 1 where there is none. */
export function whole(reader: ItemReader, key: string): number {
  const found = Number(text(reader, key) ?? 1);
  return Number.isInteger(found) && found >= 1 && found <= MOST_COUNT ? found : 1;
}

/** One of a few words. */
export function choice<T extends string>(
  reader: ItemReader,
  key: string,
  among: readonly T[],
): T | undefined {
  const found = text(reader, key);
  return among.find((word) => word === found);
}

/** A specified value, as `read` makes it from the node; undefined where it cannot be read. */
export function specified<T>(
  reader: ItemReader,
  key: string,
  read: (node: Node) => T | undefined,
): Specified<T> | undefined {
  const field = reader.raw.fields.get(key);
  return field && specifiedField(reader, field, read, key);
}

/** The same for a field that is not the item's own key, such as one of its `sizes`. */
export function specifiedField<T>(
  reader: ItemReader,
  field: Field,
  read: (node: Node) => T | undefined,
  title: string,
): Specified<T> | undefined {
  const stated = statedOf(field.value);
  if (stated === undefined) return undefined;
  noteSource(reader, stated.source);
  const said = textOf(stated.value);
  if (said === 'unknown') reader.problems.push(unknownValue(reader, title, stated.value.where));
  const value = read(stated.value);
  if (value === undefined) return undefined;
  const source = textOf(stated.source) ?? sourceOf(reader, field);
  const sourced = source !== undefined || said === 'unknown' || said === 'none';
  if (!sourced) reader.problems.push(unsourced(reader, field, title, stated.value.where));
  const rest = {source, note: textOf(stated.note), because: textOf(stated.because)};
  return {value, where: stated.value.where, ...defined(rest), ...(field.practice && {fromPractice: true})};
}

/** What stands in where a value names no source: practice's for what practice states, the item's, the file's. */
function sourceOf(reader: ItemReader, field: Field): string | undefined {
  return field.practice?.source ?? textOf(reader.raw.fields.get('source')?.value) ?? field.fileSource;
}

/** An amount of the dimension; of any, where none is due. */
export function amount(reader: ItemReader, due?: Dimension): (node: Node) => Amount | undefined {
  return amountOr<never>(reader, due, []);
}

/** An amount of the dimension, or one of the words that may stand in its place. */
export function amountOr<const W extends string>(
  reader: ItemReader,
  due: Dimension | undefined,
  instead: readonly W[],
): (node: Node) => Amount | W | undefined {
  return (node) => {
    const said = textOf(node);
    if (said === undefined || !isScalar(node)) return undefined;
    const word = instead.find((one) => one === said);
    // `unknown` is a problem of its own already, and no amount.
    return word ?? (said === 'unknown' ? undefined : amountAt(reader, node, due, instead));
  };
}

function amountAt(
  reader: ItemReader,
  node: ScalarNode,
  due: Dimension | undefined,
  instead: readonly string[],
): Amount | undefined {
  const reading = readAmount(node.text, due);
  if (reading.ok) return reading.amount;
  const problem = amountProblem(node, reading.fault, reader.raw.id);
  // With a digit in it, it was meant for an amount; without, for a word.
  const meant = /\d/.test(node.text) ? undefined : nearest(node.text, instead);
  reader.problems.push(meant === undefined ? problem : {...problem, hint: `did you mean ${meant}?`});
  return undefined;
}

/** What is wrong with the text of an amount, as a problem of the item. */
export function amountProblem(node: ScalarNode, fault: AmountFault, item: string): Problem {
  return {
    name: fault.name === 'amount-form' ? 'spec-form' : fault.name,
    where: faultWhere(node, fault),
    says: fault.says,
    ...defined({hint: fault.hint}),
    item,
  };
}

/** The fault's own place, where the text stands in the file as it was read; else the whole value. */
function faultWhere(node: ScalarNode, fault: AmountFault): Where {
  if (node.exact === undefined || fault.span.start >= fault.span.end) return node.where;
  const {file} = node.where;
  return {file, span: {start: node.exact + fault.span.start, end: node.exact + fault.span.end}};
}

/** The scalars of a list, or the scalar itself. */
export function scalarsOf(node: Node): ScalarNode[] {
  const scalars: ScalarNode[] = [];
  for (const one of node.type === 'list' ? node.items : [node]) {
    if (isScalar(one) && one.type !== 'empty') scalars.push(one);
  }
  return scalars;
}

/** The words of a list, or the one that stands in its place, with their places; none where there is no node. */
export function wordsIn(node: Node | undefined): readonly Located<string>[] {
  return node ? scalarsOf(node).map(({text: value, where}) => ({value, where})) : [];
}

/** Notes that the item names another of one of these kinds, or one of the words that may stand there instead. */
export function refer(
  reader: ItemReader,
  {value: id, where}: Located<string>,
  kinds: readonly ItemKind[],
  instead?: readonly string[],
): void {
  reader.references.push({id, where, kinds, ...(instead && {words: instead}), item: reader.raw.id});
}

function noteSource(reader: ItemReader, source: Node | undefined): void {
  const id = textOf(source);
  if (source && id !== undefined) reader.sources.push({id, where: source.where, item: reader.raw.id});
}

function unknownValue(reader: ItemReader, title: string, where: Where): Problem {
  const {id} = reader.raw;
  return {
    name: 'spec-silent',
    where,
    says: `${title} of ${id} is unknown`,
    hint: 'find out, and write it down with its source',
    item: id,
  };
}

function unsourced(reader: ItemReader, field: Field, title: string, where: Where): Problem {
  if (field.practice) {
    const hint = 'give the practice, or the whole file, a source';
    return {name: 'source-missing', where, says: `${title} in practice has no source`, hint};
  }
  const {id} = reader.raw;
  const hint = 'write {value: …, source: …}, or give the item or the whole file a source';
  return {name: 'source-missing', where, says: `${title} of ${id} has no source`, hint, item: id};
}
